/** What the paper tells the reader to do: parts, each with fresh portions of the samples, and tests done one after the other in them. */
import * as z from "zod/mini";
import { authorText } from "./author-text.ts";
import { LONGEST, MOST } from "./bounds.ts";
import { ROMAN } from "./cells.ts";
import { describe } from "./quantity.ts";
import { step } from "./step.ts";

export { type Cell, cellsOf } from "./cells.ts";

const label = (what: string, pattern: RegExp, example: string) =>
  z
    .string({ error: (issue) => `found ${describe(issue.input)}, expected ${what} such as "${example}"` })
    .check(
      z.regex(pattern, { error: (issue) => `found ${describe(issue.input)}, expected ${what} such as "${example}"` }),
    );

/** A sample's letter: "P", "X1". */
export const sampleLabel = label("a sample letter", /^[A-Z][A-Z0-9]?$/, "P");

const test = z.strictObject({
  label: z.optional(
    z.enum(ROMAN, { error: (issue) => `found ${describe(issue.input)}, expected a test label such as "ii"` }),
  ),
  /** The instruction as the paper words it; without it the page words the steps itself. Not compared with the steps. */
  says: z.optional(z.string().check(z.minLength(3), z.maxLength(LONGEST.says))),
  steps: z.array(step).check(z.minLength(1, { error: "expected at least one step" }), z.maxLength(MOST.steps)),
});
/** One line of the record: some steps, then one observation for each sample. */
export type Test = z.infer<typeof test>;

const part = z.strictObject({
  label: label("a part letter", /^[a-z]$/, "a"),
  title: z.string().check(z.minLength(3), z.maxLength(LONGEST.title)),
  /** Which samples this part is done on; all of them when absent. */
  samples: z.optional(z.array(sampleLabel).check(z.minLength(1), z.maxLength(MOST.samples))),
  /** Which form is taken when a sample is given both as solid and as solution. */
  from: z.optional(z.enum(["solid", "solution"])),
  /** Why this part is there or what to watch for, without naming an answer: shown in the margin beside it. */
  note: z.optional(authorText),
  tests: z.array(test).check(z.minLength(1), z.maxLength(MOST.tests)),
});
/** A part of the paper: one fresh tube for each sample; its tests follow one another in that tube. */
export type Part = z.infer<typeof part>;

/** Parts of a paper that is being entered: there may be none yet. */
export const procedureSoFar = z.array(part).check(z.maxLength(MOST.parts));
export const procedure = z
  .array(part)
  .check(z.minLength(1, { error: "expected at least one part" }), z.maxLength(MOST.parts));
export type Procedure = z.infer<typeof procedure>;
