/** Plain words for the faults a schema leaves to zod: what was found, what was expected. */
import type * as z from "zod/mini";
import { describe } from "./quantity.ts";

const WANTED: Record<string, string> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "a group of entries",
  record: "a group of entries",
};

/** The wording of one fault; undefined where the schema words it itself. */
export function plainWords(issue: z.core.$ZodRawIssue): string | undefined {
  const found = `found ${describe(issue.input)}`;
  switch (issue.code) {
    case "invalid_type":
      return `${found}, expected ${WANTED[issue.expected] ?? issue.expected}`;
    case "invalid_value":
      return `${found}, expected one of: ${issue.values.join(", ")}`;
    case "unrecognized_keys":
      return `found ${issue.keys.map(describe).join(", ")}, which means nothing here; expected only the entries the guide names`;
    case "too_small":
      if (issue.origin === "array" && issue.minimum === 1) return "found an empty list, expected at least one entry";
      return `${found}, expected at least ${issue.minimum}${issue.origin === "string" ? " characters" : issue.origin === "array" ? " entries" : ""}`;
    case "too_big":
      return `${found}, expected at most ${issue.maximum}${issue.origin === "string" ? " characters" : issue.origin === "array" ? " entries" : ""}`;
    default:
      return undefined;
  }
}
