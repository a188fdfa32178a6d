/** Conclude: standard tests that are not on the paper, where its own leave something open. */
import { list } from "./language.ts";

export const NOT_FETCHED = "The list of standard tests could not be fetched. Check the connection.";
export const LOOKING = "Looking through the standard tests …";
export const TOO_OPEN = "Too much is still open to look for another test here.";
export const COULD_SETTLE = "A test that is not on the paper could settle more";
export const WOULD_NOT_HELP = "Other tests would not help";
export const ASK_FIRST = "Not part of this practical: ask your teacher first, and take a fresh portion for each test.";
export const titleFor = (title: string, sample: string) => `${title} for ${sample}`;
export const TAKE_CARE = "Take care.";

/** A bench that has every bottle, and one sample on it. */
export const THE_SAMPLE = "the sample";

/** What has to be told apart: by their formulas, or so many that they are only counted. */
type Alike = readonly string[] | number;
/** "no test on our list that is safe on both tells NH4Cl from NH4NO3". @param onlySafe one that is unsafe on some of them might */
export function noneTells(alike: Alike, onlySafe: boolean): string {
  const two = typeof alike !== "number" && alike.length === 2;
  const safe = onlySafe ? ` that is safe on ${two ? "both" : "all of them"}` : "";
  return `no test on our list${safe} ${tells(alike)}`;
}
function tells(alike: Alike): string {
  if (typeof alike === "number") return `tells these ${alike} salts apart`;
  return alike.length === 2 ? `tells ${alike[0]} from ${alike[1]}` : `tells ${list(alike)} apart`;
}
/** The name of a test within a sentence. */
export const within = (title: string) => title.toLowerCase();
/** "Then the flame test and, if need be, the limewater test" */
export const nextIs = (first: string, more: readonly string[]) =>
  `Then ${first}${more.length > 0 ? ` and, if need be, ${list(more)}` : ""}`;
export const thenSettled = (next: string) => `${next}: that settles it.`;
export const thenOpen = (next: string, noneTells: string, others: boolean) =>
  `${next}; but ${noneTells}${others ? ", nor some others" : ""}.`;
export const staysOpen = (noneTells: string, sample: string) => `${noneTells}, so ${sample} stays open.`;
