/** Reads a practical and words every fault alike: where, what was found, what was expected. */
import type * as z from "zod/mini";
import { type Paper, type Practical, paper, practical } from "../practical.ts";
import { plainWords } from "./plain-words.ts";

/** A fault in what an author (or a link, or a file) says. */
export interface PracticalFault {
  /** Where in the practical: ["record", "P", "a(ii)", "precipitate"]. */
  path: (string | number)[];
  /** What was found and what was expected. */
  message: string;
}

export type ReadPractical = { practical: Practical } | { faults: PracticalFault[] };
export type ReadPaper = { paper: Paper } | { faults: PracticalFault[] };

/** Reads any input as a practical; reports all faults at once. */
export function readPractical(input: unknown): ReadPractical {
  const read = practical.safeParse(input, { error: plainWords });
  return read.success ? { practical: read.data } : { faults: faultsOf(read.error) };
}

/** Reads any input as a paper whose answer is not known; reports all faults at once. */
export function readPaper(input: unknown): ReadPaper {
  const read = paper.safeParse(input, { error: plainWords });
  return read.success ? { paper: read.data } : { faults: faultsOf(read.error) };
}

const faultsOf = ({ issues }: z.core.$ZodError): PracticalFault[] =>
  issues.map(({ path, message }) => ({ path: path as (string | number)[], message }));
