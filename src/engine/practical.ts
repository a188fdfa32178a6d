/**
 * The language every room of the engine speaks: a practical, its samples, what the paper says, the steps, the observations and the
 * record. One zod schema reads it from a page's frontmatter, an imported file or a link; every refusal says what was found and what
 * was expected.
 */
import * as z from "zod/mini";
import { authorText } from "./practical/author-text.ts";
import { LONGEST, MOST } from "./practical/bounds.ts";
import { formula } from "./practical/ion.ts";
import { hasStrength, minutes, NO_STRENGTH, record, references, sampleEntries } from "./practical/paper.ts";
import { procedure, sampleLabel } from "./practical/procedure.ts";
import { statement } from "./practical/statement.ts";

export type { Colour } from "./practical/colour.ts";
export { sameColour } from "./practical/colour.ts";
export type { GivenOff } from "./practical/gases.ts";
export { CLEARS_AGAIN, GAS_EVIDENCE, GASES, WATER_TESTS } from "./practical/gases.ts";
export type { Amount, Fate, Gas, GasSeen, Observation, Precipitate } from "./practical/observation.ts";
export { observation } from "./practical/observation.ts";
export type { GivenSample, Paper, PracticalRecord } from "./practical/paper.ts";
export { paper } from "./practical/paper.ts";
export type { Cell, Part, Procedure, Test } from "./practical/procedure.ts";
export { cellsOf, procedure } from "./practical/procedure.ts";
export type { Concentration, Duration, Mass, Volume } from "./practical/quantity.ts";
export type { Statement } from "./practical/statement.ts";
export { statement } from "./practical/statement.ts";
export type { Addition, GasTest, Step } from "./practical/step.ts";
export { GAS_TESTS, step } from "./practical/step.ts";

const sample = z
  .strictObject({
    ...sampleEntries,
    /** The author's salt, or salts: the answer. */
    salt: formula,
  })
  .check(z.refine(hasStrength, NO_STRENGTH));
export type Sample = z.infer<typeof sample>;

/** A salt the tests cannot tell from the answer, named by the author, for one sample. */
const left = z.record(sampleLabel, z.array(formula).check(z.minLength(1)));

const entries = z.strictObject({
  title: z.string().check(z.minLength(3), z.maxLength(LONGEST.title)),
  summary: z.string().check(z.minLength(10), z.maxLength(LONGEST.summary)),
  level: z.enum(["foundation", "core", "stretch"]),
  /** The time the paper allows, in minutes. */
  minutes,
  /** Place in the course, from 1. */
  order: z.int().check(z.minimum(1)),
  samples: z.array(sample).check(z.minLength(1), z.maxLength(MOST.samples)),
  paper: statement,
  parts: procedure,
  record,
  /** What stays undecided at the end, said openly by the author. Absent: the tests decide everything. */
  undecided: z.optional(left),
  /** The author's last word, before the page says what decided the record. */
  closing: z.optional(authorText),
});

export const practical = entries.check(
  z.check<z.infer<typeof entries>>(({ value, issues }) => {
    const complain = (path: (string | number)[], message: string) =>
      issues.push({ code: "custom", input: value, path, message });
    for (const { path, message } of references(value)) complain(path, message);
    const letters = value.samples.map((each) => each.label);
    for (const letter of Object.keys(value.undecided ?? {})) {
      if (!letters.includes(letter))
        complain(["undecided", letter], `found sample ${letter}, expected one of ${letters.join(", ")}`);
    }
  }),
);
export type Practical = z.infer<typeof practical>;
