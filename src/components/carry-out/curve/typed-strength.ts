/** The strength of a solution as a reader types it or slides to it. */
import type { StrengthRange } from "../../../build/live-curves.ts";
import { CONCENTRATION, readAmount } from "../../../engine/practical/amount.ts";

/** A bare figure is taken in the unit printed beside the field. */
const BARE = /^[\d.]+$/;

/** Reads "0.1", "0.1 mol/dm3" or "100 mmol/dm3" into mol/dm3. Returns the fault in words when it cannot, or when no school would make it up. */
export function readStrength(text: string, { from, to }: StrengthRange): number | { fault: string } {
  const typed = text.trim();
  const range = `${from} to ${to} mol/dm3`;
  if (typed === "") return { fault: `found nothing, expected a strength of ${range}` };
  const read = readAmount(BARE.test(typed) ? `${typed} mol/dm3` : typed, CONCENTRATION);
  if (typeof read !== "number")
    return { fault: `found "${typed.slice(0, 30)}", expected a strength of ${range}, such as "${to} mol/dm3"` };
  return read >= from && read <= to ? read : { fault: `found ${read} mol/dm3, expected ${range}` };
}

/** Stops of a slider at least. */
const STOPS = 20;

/** A round distance between the stops of a slider over the range, mol/dm3. */
export function stopsApart({ from, to }: StrengthRange): number {
  const most = (to - from) / STOPS;
  const power = 10 ** Math.floor(Math.log10(most));
  const round = [5, 2].find((n) => n * power <= most) ?? 1;
  return Number((round * power).toPrecision(1));
}
