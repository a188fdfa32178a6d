/** What the paper tells the reader to do: parts, each with fresh portions of the samples, and tests done one after the other in them. */
import { z } from "zod";
import { authorText } from "./author-text.ts";
import { ROMAN } from "./cells.ts";
import { describe } from "./quantity.ts";
import { step } from "./step.ts";

export { type Cell, cellsOf } from "./cells.ts";

const label = (what: string, pattern: RegExp, example: string) =>
  z
    .string({ error: (issue) => `found ${describe(issue.input)}, expected ${what} such as "${example}"` })
    .regex(pattern, { error: (issue) => `found ${describe(issue.input)}, expected ${what} such as "${example}"` });

/** A sample's letter: "P", "X1". */
export const sampleLabel = label("a sample letter", /^[A-Z][A-Z0-9]?$/, "P");

const test = z.strictObject({
  label: z
    .enum(ROMAN, { error: (issue) => `found ${describe(issue.input)}, expected a test label such as "ii"` })
    .optional(),
  /** The instruction as the paper words it; without it the page words the steps itself. Not compared with the steps. */
  says: z.string().min(3).optional(),
  steps: z.array(step).min(1, { error: "expected at least one step" }),
});
/** One line of the record: some steps, then one observation for each sample. */
export type Test = z.infer<typeof test>;

const part = z.strictObject({
  label: label("a part letter", /^[a-z]$/, "a"),
  title: z.string().min(3),
  /** Which samples this part is done on; all of them when absent. */
  samples: z.array(sampleLabel).min(1).optional(),
  /** Which form is taken when a sample is given both as solid and as solution. */
  from: z.enum(["solid", "solution"]).optional(),
  /** Why this part is there or what to watch for, without naming an answer: shown in the margin beside it. */
  note: authorText.optional(),
  tests: z.array(test).min(1).max(ROMAN.length),
});
/** A part of the paper: one fresh tube for each sample; its tests follow one another in that tube. */
export type Part = z.infer<typeof part>;

/** Parts of a paper that is being entered: there may be none yet. */
export const procedureSoFar = z.array(part);
export const procedure = z.array(part).min(1, { error: "expected at least one part" });
export type Procedure = z.infer<typeof procedure>;
