/** The strength of a solution as a reader types it or slides to it. */
import { giveStrength, withPoint } from "#words/curves.ts";
import { typedFigures } from "#words/language.ts";
import type { StrengthRange } from "../../../build/live-curves.ts";
import { CONCENTRATION, readAmount } from "../../../engine/practical/amount.ts";

/** A bare figure is taken in the unit printed beside the field. */
const BARE = /^[\d.]+$/;

/** A figure with a comma where the point should be, in a language that has a point there. */
const COMMA = /^\d*,\d+/;

/** Reads "0.1", "0.1 mol/dm3" or "100 mmol/dm3" into mol/dm3. Returns what to do, in a sentence, when it cannot, or when no school would make it up. */
export function readStrength(text: string, { from, to }: StrengthRange): number | { fault: string } {
  const typed = typedFigures(text.trim());
  if (COMMA.test(typed)) return { fault: withPoint(typed.slice(0, 30).replace(",", ".")) };
  const read = readAmount(BARE.test(typed) ? `${typed} mol/dm3` : typed, CONCENTRATION);
  return typeof read === "number" && read >= from && read <= to
    ? read
    : { fault: giveStrength(String(from), String(to)) };
}

/** Stops of a slider at least. */
const STOPS = 20;

/** A round distance between the stops of a slider over the range, mol/dm3. One strength alone leaves nowhere to go: any distance does. */
export function stopsApart({ from, to }: StrengthRange): number {
  if (from === to) return to;
  const most = (to - from) / STOPS;
  const power = 10 ** Math.floor(Math.log10(most));
  const round = [5, 2].find((n) => n * power <= most) ?? 1;
  return Number((round * power).toPrecision(1));
}
