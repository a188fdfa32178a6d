/**
 * The language every room of the engine speaks: a practical, its samples, what the paper says, the steps, the observations and the
 * record. One zod schema reads it from a page's frontmatter, an imported file or a link; every refusal says what was found and what
 * was expected.
 */
import { z } from "zod";
import { authorText } from "./practical/author-text.ts";
import { formula } from "./practical/ion.ts";
import { hasStrength, NO_STRENGTH, record, references, sampleEntries } from "./practical/paper.ts";
import { procedure, sampleLabel } from "./practical/procedure.ts";
import { statement } from "./practical/statement.ts";

export type { Colour } from "./practical/colour.ts";
export { sameColour } from "./practical/colour.ts";
export type { GivenOff } from "./practical/gases.ts";
export { CLEARS_AGAIN, GAS_EVIDENCE, GASES, WATER_TESTS } from "./practical/gases.ts";
export type { Fate, Gas, GasSeen, Observation, Precipitate } from "./practical/observation.ts";
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
  .refine(hasStrength, NO_STRENGTH);
export type Sample = z.infer<typeof sample>;

/** A salt the tests cannot tell from the answer, named by the author, for one sample. */
const left = z.record(sampleLabel, z.array(formula).min(1));

export const practical = z
  .strictObject({
    title: z.string().min(3),
    summary: z.string().min(10).max(300),
    level: z.enum(["foundation", "core", "stretch"]),
    /** The time the paper allows, in minutes. */
    minutes: z.int().min(5).max(300),
    /** Place in the course, from 1. */
    order: z.int().min(1),
    samples: z.array(sample).min(1).max(8),
    paper: statement,
    parts: procedure,
    record,
    /** What stays undecided at the end, said openly by the author. Absent: the tests decide everything. */
    undecided: left.optional(),
    /** The author's last word, before the page says what decided the record. */
    closing: authorText.optional(),
  })
  .superRefine((one, context) => {
    const complain = (path: (string | number)[], message: string) =>
      context.addIssue({ code: "custom", path, message });
    for (const { path, message } of references(one)) complain(path, message);
    const letters = one.samples.map((each) => each.label);
    for (const letter of Object.keys(one.undecided ?? {})) {
      if (!letters.includes(letter))
        complain(["undecided", letter], `found sample ${letter}, expected one of ${letters.join(", ")}`);
    }
  });
export type Practical = z.infer<typeof practical>;
