/**
 * The instruction sentences of a paper as parts, tests and steps: a small grammar over what practical papers say. Every stretch of a
 * sentence comes back with the steps it was read as, what was taken for granted, and what must be asked; nothing is left out in silence.
 * Work is bounded: the text is cut at a length, each stretch is looked at once by each of a few patterns without nested repeats.
 */
import { MOST } from "../practical/bounds.ts";
import { Lines, type ReadPart } from "./instruction/lines.ts";
import { sentencesOf } from "./instruction/split.ts";

export type { ReadPart, ReadTest, UnderstoodStretch } from "./instruction/lines.ts";

export interface ReadInstruction {
  parts: ReadPart[];
  /** What was wrong with the text as a whole. */
  faults: string[];
}

/** Longest text that is read: a whole paper of tests is shorter. */
export const LONGEST_INSTRUCTION = 6000;
/** A sentence longer than this is no instruction. */
const LONGEST_SENTENCE = 400;

/**
 * @example readInstruction("To 1 cm3 of solution K add aqueous ammonia drop by drop, then in excess.").parts[0].tests.map((t) => t.steps)
 * // [[{ take: "1 cm3" }, { add: "NH3(aq)", drops: 5 }], [{ add: "NH3(aq)", until: "in excess" }]]
 */
export function readInstruction(pasted: string): ReadInstruction {
  const faults: string[] = [];
  if (pasted.length > LONGEST_INSTRUCTION) {
    faults.push(`The text is ${pasted.length} letters long; only the first ${LONGEST_INSTRUCTION} were read.`);
  }
  const reading = new Lines();
  for (const { words, mark } of sentencesOf(pasted.slice(0, LONGEST_INSTRUCTION))) {
    if (mark?.part) reading.underMark(mark.part, words);
    else if (mark?.line) reading.newTest();
    if (words.length > LONGEST_SENTENCE) {
      faults.push(`A sentence of ${words.length} letters was left out: "${words.slice(0, 40)}…"`);
      continue;
    }
    reading.sentence(words);
  }
  const parts = reading.finished();
  if (parts.length > MOST.parts) faults.push(`${parts.length} parts were found; only ${MOST.parts} are kept.`);
  return { parts: parts.slice(0, MOST.parts), faults };
}
