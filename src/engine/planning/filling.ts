/** When a tube is too full to be heated or shaken: the fault in words, or nothing. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import type { TubeSize } from "./bench-plan.ts";
import { brimCapacity } from "./geometry.ts";
import { printed, printedDown, tidy } from "./portions.ts";

/** Most liquid that may be warmed or boiled in this tube, cm3: one tenth of the brim. */
export const heatedLiquidLimit = (size: TubeSize): number =>
  tidy(brimCapacity(size) * BENCH_PRACTICE.heatedLiquidFill.value);

/** Most solid that may be heated in this tube, cm3 as it lies: one fifth of the brim. */
export const heatedSolidLimit = (size: TubeSize): number =>
  tidy(brimCapacity(size) * BENCH_PRACTICE.heatedSolidFill.value);

/** `solidG`: solid under the liquid, which takes up room as it lies: what has dissolved is not known here, so none is counted as gone. */
export function tooFullToHeat(cm3: number, solidG: number, size: TubeSize, cell: string): string | undefined {
  const limit = heatedLiquidLimit(size);
  const room = tidy(solidG * BENCH_PRACTICE.looseSolid.value);
  if (tidy(cm3 + room) <= limit) return undefined;
  const solid = room > 0 ? `, ${printed(room)} cm3 of it the solid,` : "";
  return (
    `the tubes may hold ${printed(cm3 + room)} cm3${solid} when heated in ${cell}, above the safe filling of ${printedDown(limit)} cm3 ` +
    `(one tenth of a ${size.name}). Take less of the sample, add no more than is needed, or use a larger boiling tube.`
  );
}

export function tooMuchSolidToHeat(g: number, size: TubeSize, cell: string): string | undefined {
  const limit = heatedSolidLimit(size);
  const room = tidy(g * BENCH_PRACTICE.looseSolid.value);
  if (room <= limit) return undefined;
  return (
    `${printed(g)} g of solid fills about ${printed(room)} cm3 when heated in ${cell}, above the safe filling of ` +
    `${printedDown(limit)} cm3 (one fifth of a ${size.name}). Take less.`
  );
}

export function tooFullToShake(cm3: number, size: TubeSize): string | undefined {
  const brim = brimCapacity(size);
  if (cm3 > brim) {
    return `the tests may need ${printed(cm3)} cm3, but a ${size.name} holds ${printedDown(brim)} cm3. Use a larger tube.`;
  }
  if (cm3 <= brim * BENCH_PRACTICE.shakenFill.value) return undefined;
  return `the tubes may hold ${printed(cm3)} cm3, more than half of a ${size.name}, too full to shake. Use a larger tube.`;
}
