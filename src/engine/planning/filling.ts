/** When a tube is too full to be heated or shaken: the fault in words, or nothing. */
import * as say from "#words/bench.ts";
import { tubeSize } from "#words/bench-plan.ts";
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
  const solid = room > 0 ? printed(room) : undefined;
  return say.tooFullToHeat(printed(cm3 + room), solid, cell, printedDown(limit), tubeSize(size.name));
}

export function tooMuchSolidToHeat(g: number, size: TubeSize, cell: string): string | undefined {
  const limit = heatedSolidLimit(size);
  const room = tidy(g * BENCH_PRACTICE.looseSolid.value);
  if (room <= limit) return undefined;
  return say.tooMuchSolid(printed(g), printed(room), cell, printedDown(limit), tubeSize(size.name));
}

export function tooFullToShake(cm3: number, size: TubeSize): string | undefined {
  const brim = brimCapacity(size);
  if (cm3 > brim) return say.tooFull(printed(cm3), tubeSize(size.name), printedDown(brim));
  if (cm3 <= brim * BENCH_PRACTICE.shakenFill.value) return undefined;
  return say.tooFullToShake(printed(cm3), tubeSize(size.name));
}
