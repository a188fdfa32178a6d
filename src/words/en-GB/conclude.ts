/** Conclude: the verdict on each sample and the evidence behind it. Names and formulas come as text, formulas in mhchem notation. */
import { AND, list, OR } from "./language.ts";

export const TOO_MUCH =
  "The paper makes too many statements about its samples at once to follow here: leave some out, or record more tests.";
export const ALL_KEPT = "All that you entered is kept.";
export const NOTHING_YET = "Nothing is recorded yet.";
export const NOTHING_YET_ABOUT =
  "This is what the paper alone leaves open. Enter what you saw, and every ion that does not fit is struck out.";
export const PAPER_ADDS = "What the paper adds:";
/** In how many ways every sample can have a salt. */
export function ways(count: number): string {
  if (count === 0) return "There is no way to give every sample a salt that agrees with the record and the paper.";
  return count === 1
    ? "This is the only way to give every sample a salt that agrees with the record and the paper."
    : `${count} ways to give every sample a salt still agree with the record and the paper.`;
}

/** The signs of the evidence. */
export const LEGEND = {
  fits: "fits,",
  clashes: "clashes,",
  nothing: "says nothing: not done, or all ions look the same there.",
  border:
    "only just fits: seen where a bottle is weaker or stronger than usual, or at the limit of what our figures can tell.",
};
/** A sign in a word. */
export const MARK = { fits: "fits", border: "only just fits", clashes: "clashes", nothing: "says nothing" };
export const NOT_DONE = "not done";
export const evidenceFor = (sample: string) => `Evidence for ${sample}`;
export const ION = "Ion";
export const STANDING = "Standing";
export const STILL_POSSIBLE = "still possible";
export const CERTAIN = "certain";
/** Before the reason. */
export const OUT = "out:";
export const waitsFor = (sample: string) => `waits for ${sample}`;
export const SIDE_BY_SIDE = "The samples side by side";
export const STANDINGS = { certain: "certain", possible: "possible", out: "out" };
export const OUT_OF_ALL = "Out of every sample:";

/** The verdict on a sample whose tests or whose paper disagree. */
export const fitsNothing = (sample: string) => `No salt the paper allows fits all that is recorded for ${sample}.`;
export const nothingAgrees = (sample: string) => `${sample}: nothing agrees with what the paper says.`;
export const waitsUntil = (sample: string, others: readonly string[]) =>
  `${sample} waits until ${list(others, OR)} is put right.`;
export const fitsAlone = (sample: string, statement: string) =>
  `By its own tests ${sample} fits some salt, but not together with the other samples: the paper says ${statement}.`;
/** What its own tests leave of a sample, for the sentence below. */
export const ALONE = {
  holds: (sample: string, name: string, formula: string) => `${sample} holds ${name}, ${formula}`,
  mayBe: (sample: string, formulas: readonly string[]) => `${sample} may be ${list(formulas, OR)}`,
  oneOf: (sample: string, count: number) => `${sample} may be one of ${count} salts`,
};
export const butFirst = (alone: string, stuck: readonly string[]) =>
  `By its own tests ${alone}, but ${list(stuck)} must be put right first.`;

/** The verdict on a sample whose tests agree. */
export const holdsSalt = (sample: string, name: string, formula: string, ions: readonly string[]) =>
  `${sample} holds ${name}, ${formula}: ${list(ions)}.`;
export const holdsIon = (sample: string, ions: string, open: string) => `${sample} holds ${ions}; ${open}.`;
export const stillOpen = (sample: string, count: number, all: boolean, open: readonly string[]) =>
  `${sample} is still open, ${all ? "all " : ""}${count} salts: ${open.join("; ")}.`;
const KINDS = { cations: "cation", anions: "anion" };
/** What is left of a kind of ion: "the cation is calcium (Ca^2+) or magnesium (Mg^2+)". */
export const left = (kind: "cations" | "anions", several: boolean, words: string) =>
  several ? `the ${kind} are ${words}` : `the ${KINDS[kind]} is ${words}`;
const NUMBERS = ["none", "one", "two"];
const number = (count: number) => NUMBERS[count] ?? String(count);
/** "one or two of 7", "two of sodium (Na+), potassium (K+) and zinc (Zn^2+)" */
export const outOf = (sizes: readonly number[], ions: number | readonly string[]) =>
  `${list(sizes.map(number), OR)} of ${typeof ions === "number" ? ions : list(ions, AND)}`;
export const withOthers = (certain: readonly string[], others: string) => `${list(certain)}, with ${others}`;

/** Why an ion is out, in clauses. */
export const notWithPaper = (statement: string) => `its own tests fit, but the paper says: ${statement}`;
export const notTogether = (statement: string) =>
  `its own tests fit, but not together with the other samples: the paper says ${statement}`;
export const waitsUntilRight = (sample: string) => `waits until ${sample} is put right`;
/** @param as the salt that would show it, where not all of the ion would */
export const wouldShow = (cell: string, sight: string, as: string | undefined) =>
  `${as === undefined ? "" : `as ${as}, `}at ${cell} it would show: ${sight}`;
export const othersElsewhere = (clause: string) => `${clause}; its other salts clash elsewhere`;

/**
 * "certain from a(ii) and b(ii)".
 * @param from tests that prove it, those of another sample with its letter
 * @param several other tests would prove it as well
 * @param statement of the paper, where it does the rest
 */
export function certain(from: readonly { cell: string; sample?: string }[], several: boolean, statement?: string) {
  const places = from.map(({ cell, sample }) => (sample === undefined ? cell : `${cell} for ${sample}`));
  const tests = places.length > 0 ? ` from ${list(places)}` : "";
  const way = several ? `, for example${tests}` : tests;
  if (statement) return `certain${way}${tests ? ", as" : " as"} the paper says: ${statement}`;
  return tests ? `certain${way}` : "certain: the paper allows no other";
}
