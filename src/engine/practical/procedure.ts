/** What the paper tells the reader to do: parts, each with fresh portions of the samples, and tests done one after the other in them. */
import { z } from "zod";
import { describe } from "./quantity.ts";
import { step } from "./step.ts";

const label = (what: string, pattern: RegExp, example: string) =>
  z
    .string({ error: (issue) => `found ${describe(issue.input)}, expected ${what} such as "${example}"` })
    .regex(pattern, { error: (issue) => `found ${describe(issue.input)}, expected ${what} such as "${example}"` });

/** A sample's letter: "P", "X1". */
export const sampleLabel = label("a sample letter", /^[A-Z][A-Z0-9]?$/, "P");

const ROMAN = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"] as const;

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
  tests: z.array(test).min(1).max(ROMAN.length),
});
/** A part of the paper: one fresh tube for each sample; its tests follow one another in that tube. */
export type Part = z.infer<typeof part>;

export const procedure = z.array(part).min(1, { error: "expected at least one part" });
export type Procedure = z.infer<typeof procedure>;

/** One line of the record, with its place in the procedure. */
export interface Cell {
  /** "a(ii)", or "b" when part b has one test. */
  id: string;
  part: Part;
  test: Test;
  /** Place of the test within its part, from 0. */
  index: number;
}

/** The lines of the record in the order of the paper. */
export function cellsOf(parts: Procedure): Cell[] {
  return parts.flatMap((of) =>
    of.tests.map((one, index) => ({
      id: of.tests.length === 1 ? of.label : `${of.label}(${one.label ?? ROMAN[index]})`,
      part: of,
      test: one,
      index,
    })),
  );
}
