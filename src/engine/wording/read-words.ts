/**
 * Words into an observation: what somebody wrote on a record sheet, read, completed or questioned. Every reading takes its words out of the
 * sentence; what is left over was not understood and is said back. Nothing is guessed: where words leave something open, a question stands
 * beside what was read.
 */
import * as say from "#words/reading.ts";
import type { Gas, Observation } from "../practical.ts";
import type { AskedOf } from "./asked-of.ts";
import { complete } from "./reading/complete.ts";
import { readDecolourised } from "./reading/decolourised.ts";
import { readDenied } from "./reading/denied.ts";
import { readDry } from "./reading/dry.ts";
import { readGas } from "./reading/gas.ts";
import { readLiquid } from "./reading/liquid.ts";
import { readNothing } from "./reading/nothing.ts";
import type { Missing, Reading } from "./reading/reading.ts";
import { readSolids } from "./reading/solids.ts";
import { DENIAL, Sentence } from "./sentence.ts";

export type { AskedOf } from "./asked-of.ts";
export type { Missing } from "./reading/reading.ts";

export interface ReadWords {
  /** Absent when nothing was understood. */
  seen?: Observation;
  /** What is missing, doubtful or not understood: short sentences to the writer. */
  questions: string[];
  /** Of these, what the test shows and the words leave out. A gas named without its test is in `seen` with its usual evidence all the same. */
  missing: Missing[];
  /** The gas that is named; its sign alone names none. */
  named?: Gas;
}

/** Entries in the order in which the language of practicals has them. */
const ORDER: readonly (keyof Observation)[] = [
  "none",
  "stays",
  "precipitate",
  "fate",
  "solution",
  "effervescence",
  "gas",
  "indicator",
  "residue",
  "fumes",
  "sublimate",
  "droplets",
  "flame",
];
const inOrder = (seen: Observation): Observation =>
  Object.fromEntries(ORDER.flatMap((key) => (seen[key] === undefined ? [] : [[key, seen[key]]])));

/** Each takes its words before those that follow. */
const READERS = [readGas, readDenied, readDry, readDecolourised, readSolids, readLiquid, readNothing, complete];

/** Longest text that is read: a line of a record is far shorter, and nothing can make a page work for long. */
const LONGEST = 300;

/**
 * @example readWords("white ppt sol in xs giving colourless soln").seen
 * // { precipitate: { colour: "white", amount: "plain" }, fate: "dissolves", solution: "colourless" }
 * @example readWords("clear solution").questions // ["\"Clear\" is not a colour: ..."]
 * @example readWords("ammonia given off").questions // ["How was ammonia shown? ..."]
 */
export function readWords(text: string, asked: AskedOf = {}): ReadWords {
  if (text.length > LONGEST) {
    return {
      questions: [say.tooLong(text.length, LONGEST)],
      missing: [],
    };
  }
  const words = new Sentence(text);
  if (words.isEmpty()) return { questions: [say.NOTHING_WRITTEN], missing: [] };
  const reading: Reading = { words, asked, seen: {}, questions: [], missing: [] };
  for (const read of READERS) read(reading);
  const { seen, questions, missing, named } = reading;
  const left = words.left();
  // A denial that no reading took may be of anything that was read: "bubbles that do not turn limewater milky".
  if (DENIAL.test(left)) return { questions: [`${say.notUnderstood(words.asTyped(left))} ${say.DENIED}`], missing: [] };
  if (Object.keys(seen).length === 0 && questions.length === 0 && !left) questions.push(say.NAMES_NOTHING);
  return {
    ...(Object.keys(seen).length > 0 && { seen: inOrder(seen) }),
    questions: [...questions, ...words.doubts, ...(left ? [say.notUnderstood(words.asTyped(left))] : [])],
    missing,
    ...(named && { named }),
  };
}
