/** The marked practice: the marks of the conclusion and their reasons, where the own record leads, what to practise next. */
import type { CreditFor } from "../../engine/wording/credit.ts";
import { list, OR } from "./language.ts";

type Kind = "cations" | "anions";

/** Beside the number of the set. */
export const set = (seed: number) => `set ${seed}`;
/** How hard a set is; nothing is said of one that the tests do not decide. */
export const STANDINGS = { easy: "easy", middling: "middling", hard: "hard" };
export const UNKNOWNS_WERE = "The unknowns were";
export const CONCLUSION = "Conclusion";
export const LINES = "Your record, line by line";
export const LEADS = "Where your own record leads";
export const NEXT = "What to practise next";
export const SAVE = "Save as a file";
export const PRINT = "Print";
export const CLEAR = "Clear and draw another set";
export const TO_WALKTHROUGH = "To the walkthrough";
export const earned = (marks: number, of: number) => `${marks} of ${of}`;
export const MODEL = "Model:";
export const notSeenThere = (words: string) => `Not to be seen there: ${words}.`;

/** Where the own record leads. */
export const ENOUGH =
  "From your record alone, with what the paper says, the unknowns follow: it is enough to conclude from.";
export const FOLLOWS = "From your record, as it was read, this follows:";
export const SAY_WRONG = "These lines say something the tube did not show:";
/** Of a line: what was written, what the tube showed. */
export const YOU_WROTE = "you wrote";
export const IT_SHOWED = "it showed";
export const andMore = (count: number) => `And ${count} more: they are marked above.`;
export const NOTHING_WRONG = "No line says anything wrong; what is missing leaves it open.";
export const TOO_MUCH =
  "Your record leaves so much open, and the paper says so much of the samples, that it cannot be followed here.";
export const fitsNone = (sample: string) => `${sample} fits no salt the paper allows.`;
export const fitsAlone = (sample: string) =>
  `${sample} fits salts of its own, but not together with the other samples and what the paper says.`;
export const holds = (sample: string, salt: string, formula: string) => `${sample} holds ${salt}, ${formula}.`;
/** @param more salts besides those named */
export const open = (sample: string, salts: readonly string[], more: number) =>
  `${sample} is still open: ${more > 0 ? `${salts.join(", ")} or ${more} more` : list(salts, OR)}.`;

/** The marks of the conclusion: what is marked, what was answered, why the mark is earned or not. */
export const ION = { cations: "cation", anions: "anion" };
export const proofOf = (kind: Kind) => `proof of the ${ION[kind]}`;
export const NOTHING = "nothing";
export const LEFT_OPEN = "left open";
export const both = (ions: readonly string[]) => ions.join(" and ");
export const testsLeave = (ions: readonly string[]) => `These tests leave ${list(ions, OR)}.`;
export const notProved = (ions: readonly string[], right: readonly string[]) =>
  `These tests do not prove it: ${list(ions, OR)} would give the same record. It was ${both(right)}.`;
export const RIGHT = "Right.";
export const itWas = (ions: readonly string[]) => `It was ${both(ions)}.`;
export const ONLY_WITH_ION = "Only with the right ion.";
export const NOTHING_ELSE_LEFT = "The paper and the other samples leave nothing else.";
export const NO_TEST = "No test is named.";
/** @param more ions besides those named */
export const couldAlsoBe = (ions: readonly string[], more: number) =>
  `With these alone it could also be ${list(ions, OR)}${more > 0 ? ` or ${more} more` : ""}.`;
export const idle = (tests: readonly string[]) =>
  `They do prove it, but ${list(tests)} add nothing: name only what decides.`;
export const PROVED = "Nothing else would give these observations.";

/** What to do about marks that were lost. */
export const ADVICE: Readonly<Record<CreditFor | "conclusion" | "empty", string>> = {
  none: 'Write "no visible change" where nothing happens: an empty line earns nothing, and "no reaction" is a conclusion.',
  precipitate: "For every solid that appears write the word precipitate and its colour.",
  fate: "When a reagent is added in excess, or to a solid, say what becomes of the solid: it dissolves, dissolves in part, or remains.",
  solution: "When a solid is gone, name the colour of the solution: colourless, not clear.",
  effervescence: "Look for bubbles at once when acid goes in, and write effervescence.",
  "gas test":
    "A gas earns its mark by its test: name the paper, splint or limewater and what it did. That it showed nothing is an observation too.",
  "gas name": "After the test of a gas, name the gas.",
  indicator: "Write down the colour of the indicator.",
  residue: "After heating, say whether anything is left.",
  hot: "Look at a heated residue while it is hot, and write its colour down.",
  cold: "Look at a heated residue once more when it is cold.",
  fumes: "When a solid is heated, look above it for coloured fumes.",
  sublimate: "When a solid is heated, look at the cool glass for a solid that settles there.",
  droplets: "When a solid is heated, look at the cool glass for drops.",
  flame: "Name the colour of the flame in the trade's words: lilac, brick red, light green.",
  conclusion: "For each ion ask which other ions the paper allows, and name the tests that rule those out.",
  empty: "Write something for every tube: where nothing happens, that is the observation.",
};
export const advice = (words: string, times: number) => `${words} (${times === 1 ? "one mark" : `${times} times`})`;
