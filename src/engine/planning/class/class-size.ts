/** How big the class is: checked, and read from what somebody typed or from the address of a page. */
import { ENTRIES, notThat } from "#words/class-sheet.ts";
import { NOTHING, quote } from "#words/found.ts";
import { typedFigures } from "#words/language.ts";
import { CLASS_LIMITS } from "../../constants/class-practice.ts";

/** A class for which bottles are made ready. */
export interface ClassSize {
  /** Places at which somebody works alone or as a pair, each with bottles of its own. */
  groups: number;
  /** Made on top of what is used, per cent. */
  sparePercent: number;
  /** Given to each group of every sample in solution, cm3; what the bench plan sets out where absent. */
  sampleCm3?: number;
  /** Given to each group of every solid sample, g; what the bench plan sets out where absent. */
  sampleG?: number;
}

export type ClassEntry = keyof ClassSize;

const faultOf = (entry: ClassEntry, value: number, found = String(value)): string | undefined => {
  const { least, most, unit } = CLASS_LIMITS[entry];
  const whole = entry === "groups";
  if (Number.isFinite(value) && value >= least && value <= most && (!whole || Number.isInteger(value)))
    return undefined;
  return notThat(ENTRIES[entry], found, whole, least, most, unit);
};

/** @throws RangeError that names every entry out of bounds, what was found and what was expected */
export function checkClassSize(size: ClassSize): void {
  const faults = (Object.keys(CLASS_LIMITS) as ClassEntry[]).flatMap((entry) => {
    const value = size[entry];
    if (value === undefined && entry !== "groups" && entry !== "sparePercent") return [];
    return faultOf(entry, Number(value)) ?? [];
  });
  if (faults.length > 0) throw new RangeError(`class size: ${faults.join("; ")}`);
}

/** Longest text of an entry that is quoted back. */
const QUOTED = 20;
/** A plain decimal figure: no hexadecimal, no exponent. */
const FIGURE = /^\d{1,6}(\.\d{1,4})?$/;

/** Reads what somebody typed, or a link carries. @returns the number, or half a sentence on what is wrong */
export function readEntry(entry: ClassEntry, text: string): number | { fault: string } {
  const typed = text.trim();
  const quoted = quote(typed.length > QUOTED ? `${typed.slice(0, QUOTED)}…` : typed);
  const figure = typedFigures(typed);
  const fault = faultOf(entry, FIGURE.test(figure) ? Number(figure) : Number.NaN, typed === "" ? NOTHING : quoted);
  return fault === undefined ? Number(figure) : { fault };
}
