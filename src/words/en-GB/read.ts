/** Read: what is given, what the paper says, what each test is for. */
import { AND, list, OR } from "./language.ts";

export const HEADING = "Read";
export const ABOUT = "before anything is opened";
export const GIVEN = "What is given";
export const PAPER_SAYS = "What the paper says";
export const notEveryPair = (all: number, possible: number, samples: string) =>
  `Not every pair of these ions can be such a sample: of ${all} pairs, ${possible} can be ${samples}. A record is held against these alone.`;
export const IMPOSSIBLE_PAIRS = "Pairs that cannot be such a sample, and why";
export const HOW_TO_READ = "How to read a test list";
export const ASK =
  "Ask of every line: which ions would look different here? A test that shows the same for all of them can wait; a test that gives off a gas needs its paper or splint ready first.";
export const PURPOSES = "What each test is for";
export const TEST = "Test";
export const SEEN = "What may be seen, and for which ions";
export const GAS_HEAD = "Gas that may come off";
export const GAS = "Gas";
export const NO_GAS = "none";
export const andMore = (names: string, more: number) => `${names} and ${more} more`;
/** Of ions and salts whose sight here is not predicted. */
export const NOT_FORETOLD = "nothing foretold";
export const moreSights = (count: number) => `${count} more ${count === 1 ? "sight" : "sights"}`;
export const theSights = (count: number) => `the ${count} sights`;
/** After a count of sights, for those who hear it alone. */
export const ofTest = (cell: string) => `of ${cell}`;

const FORM = { solid: "a solid", solution: "a solution", both: "a solid and a solution" };
/** A strength that the paper does not give. */
export const about = (strength: string) => `about ${strength}, for the paper gives none`;
/** "K: a solution, 0.1 mol/dm3" */
export const given = (label: string, form: keyof typeof FORM, strength: string | undefined) =>
  `${label}: ${FORM[form]}${strength ? `, ${strength}` : ""}`;
const counted = (count: number, kind: string): string =>
  count === 1 ? `one ${kind}` : `${count === 2 ? "two" : count} ${kind}s`;
/** How many ions a sample holds; by it samples are gathered. */
export const held = (cations: number, anions: number) =>
  `${counted(cations, "cation")} and ${counted(anions, "anion")}`;
export const eachHolds = (what: string) => `Each sample holds ${what}.`;
export const theyHold = (labels: readonly string[], what: string) =>
  labels.length === 1 ? `${labels[0]} holds ${what}.` : `${list(labels, AND)} each hold ${what}.`;
export const cationIsOne = (names: readonly string[]) => `The cation is one of ${list(names, OR)}.`;
export const anionIsOne = (names: readonly string[]) => `The anion is one of ${list(names, OR)}.`;
export const allHold = (what: string) => `All samples together hold ${what}.`;

/** Which kind of ion a test tells apart: "Tells apart which cation and which anion." */
export const tellsApart = (kinds: readonly ("cation" | "anion")[]) => `Tells apart which ${kinds.join(" and which ")}.`;
export const TELLS_SALTS = "Tells no ion by itself, but some salts.";
export const TELLS_NOTHING = "Nothing: all allowed salts look the same.";
export const orSeen = (seen: string) => `, or ${seen}`;
export const except = (ion: string, salts: readonly string[]) => `${ion} (not ${list(salts, OR)})`;
