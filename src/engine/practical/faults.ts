/** Reads a practical and words every fault alike: where, what was found, what was expected. */
import type { z } from "zod";
import { type Practical, practical } from "../practical.ts";
import { describe } from "./quantity.ts";

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

const WANTED: Record<string, string> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "a group of entries",
  record: "a group of entries",
};

/** Words for the faults the schemas leave to zod. */
function plainWords(issue: z.core.$ZodRawIssue): string | undefined {
  const found = `found ${describe(issue.input)}`;
  switch (issue.code) {
    case "invalid_type":
      return `${found}, expected ${WANTED[issue.expected] ?? issue.expected}`;
    case "invalid_value":
      return `${found}, expected one of: ${issue.values.join(", ")}`;
    case "unrecognized_keys":
      return `found ${issue.keys.map((key) => `"${key}"`).join(", ")}, which means nothing here; expected only the entries the guide names`;
    case "too_small":
      return `${found}, expected at least ${issue.minimum}${issue.origin === "string" ? " characters" : issue.origin === "array" ? " entries" : ""}`;
    case "too_big":
      return `${found}, expected at most ${issue.maximum}${issue.origin === "string" ? " characters" : issue.origin === "array" ? " entries" : ""}`;
    default:
      return undefined;
  }
}
