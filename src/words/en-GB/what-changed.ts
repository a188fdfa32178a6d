/** Conclude: what a reader's changes to the walkthrough's record come to, shown and spoken. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

export const HEADING = "What changed";
export const placeOf = (cell: string, sample: string) => `${cell} for ${sample}`;
/** What stood there and what stands there. */
export const WAS = "was:";
export const NOW = "; now:";
export const moreMarked = (count: number) => `${count} more, each marked in the record.`;
export const HEADS = { sample: "Sample", was: "Walkthrough", now: "Now", why: "Why" };
export const notDecided = (samples: readonly string[]) =>
  `Not decided before the record agrees again: ${list(samples)}.`;
export const AS_IT_WAS = "The conclusion stays as it was.";
export const asBefore = (samples: readonly string[]) => `As before: ${list(samples)}.`;

/** What a sample may hold, in a cell of the table. */
export const oneOf = (count: number) => `one of ${count} salts`;
export const these = (formulas: readonly string[]) => list(formulas, OR);
export const UNDECIDED = "not decided";
export const NO_SALT = "no salt";

/** Why, in sentences. */
export const wouldShow = (cell: string, formula: string, sight: string) =>
  `At ${cell} ${formula} would show: ${sight}.`;
export const NO_OTHER_FITS = "No other salt fits all its tests.";
export const othersFitAlone = (statement: string) =>
  `Other salts fit its tests, but not what the paper says: ${statement}.`;
export const isOut = (ion: string, why: string) => `${ion} is out: ${why}.`;
export const moreOut = (count: number) => `${count} more ions are out.`;
/** What kept ions out and no longer does: tests, a statement of the paper, or the other samples. */
export type Keeper = { tests: readonly string[] } | { statement: string } | undefined;
/** @param ions by formula, or so many that they are only counted */
export function openAgain(ions: readonly string[] | number, by: Keeper): string {
  const several = typeof ions === "number" || ions.length > 1;
  const who = typeof ions === "number" ? `${ions} ions` : list(ions);
  return `${who} ${several ? "are" : "is"} possible: ${noLonger(by)} ${several ? "them" : "it"} out.`;
}
function noLonger(by: Keeper): string {
  if (!by) return "the other samples no longer rule";
  if ("statement" in by) return `the paper (${by.statement}) no longer rules`;
  return `${list(by.tests)} no longer ${by.tests.length > 1 ? "rule" : "rules"}`;
}

/** Spoken in half a sentence. */
export const STAYS = "the conclusion stays as it was";
export const STILL_FITS_NOTHING = "the record still fits no salts: Conclude says what to repeat first";
/** After the first sample's verdict, of the others; `wait` where they wait for it. */
export const others = (samples: readonly string[], wait: boolean) =>
  `; ${list(samples)} ${(wait ? ["waits", "wait"] : ["changes too", "change too"])[Math.min(samples.length, 2) - 1]}`;
/** A sentence as it goes on within another. */
export const within = (sentence: string) => sentence.replace(/^(?:By|No|The) /, (word) => word.toLowerCase());
/** The word before a salt's name, which the formula follows: "K holds zinc sulfate, ZnSO4: ...". */
export const HOLDS = "holds";
