/** A schema that looks at its input first and then hands it to the one schema meant, so that a fault is told about that one alone. */
import { z } from "zod";
import { plainWords } from "./plain-words.ts";

/**
 * @param choose the schema for this input, or the fault when none is meant
 */
export function dispatch<T>(choose: (input: unknown) => z.ZodType<T> | { fault: string }) {
  return z.unknown().transform((input, context): T => {
    const schema = choose(input);
    if ("fault" in schema) {
      context.addIssue({ code: "custom", message: schema.fault });
      return z.NEVER;
    }
    const read = schema.safeParse(input, { error: plainWords });
    if (read.success) return read.data;
    for (const issue of read.error.issues) {
      context.addIssue({ code: "custom", path: issue.path as (string | number)[], message: issue.message });
    }
    return z.NEVER;
  });
}
