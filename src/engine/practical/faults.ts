/** Reads a practical and words every fault alike: where, what was found, what was expected. */
import { type Practical, practical } from "../practical.ts";
import { plainWords } from "./plain-words.ts";

/** A fault in what an author (or a link, or a file) says. */
export interface PracticalFault {
  /** Where in the practical: ["record", "P", "a(ii)", "precipitate"]. */
  path: (string | number)[];
  /** What was found and what was expected. */
  message: string;
}

export type ReadPractical = { practical: Practical } | { faults: PracticalFault[] };

/** Reads any input as a practical; reports all faults at once. */
export function readPractical(input: unknown): ReadPractical {
  const read = practical.safeParse(input, { error: plainWords });
  if (read.success) return { practical: read.data };
  return {
    faults: read.error.issues.map(({ path, message }) => ({ path: path as (string | number)[], message })),
  };
}
