/**
 * The language every room of the engine speaks: a practical, its samples, what the paper says, the steps, the observations and the
 * record. One zod schema reads it from a page's frontmatter, an imported file or a link; every refusal says what was found and what
 * was expected.
 */
import { z } from "zod";
import { authorText } from "./practical/author-text.ts";
import { formula } from "./practical/ion.ts";
import { type Observation, observation } from "./practical/observation.ts";
import { cellsOf, procedure, sampleLabel } from "./practical/procedure.ts";
import { concentration, describe } from "./practical/quantity.ts";
import { statement } from "./practical/statement.ts";

export type { Colour } from "./practical/colour.ts";
export { sameColour } from "./practical/colour.ts";
export { CLEARS_AGAIN, GAS_EVIDENCE, GASES, WATER_TESTS } from "./practical/gases.ts";
export type { Fate, Gas, GasSeen, Observation, Precipitate } from "./practical/observation.ts";
export { observation } from "./practical/observation.ts";
export type { Cell, Part, Procedure, Test } from "./practical/procedure.ts";
export { cellsOf, procedure } from "./practical/procedure.ts";
export type { Concentration, Duration, Mass, Volume } from "./practical/quantity.ts";
export type { Statement } from "./practical/statement.ts";
export { statement } from "./practical/statement.ts";
export type { Addition, GasTest, Step } from "./practical/step.ts";
export { GAS_TESTS, step } from "./practical/step.ts";

/** Ions of a kind that one sample may hold: a double salt, or a mixture of two salts. */
const MOST_IONS = 2;
const AN_ION = "found no ion, expected 1 or 2 of a kind";
const MANY_IONS = "found more than 2 ions of a kind, expected 1 or 2: a double salt or a mixture of two salts";

const sample = z
  .strictObject({
    label: sampleLabel,
    given: z.enum(["solid", "solution", "both"], {
      error: (issue) => `found ${describe(issue.input)}, expected solid, solution or both`,
    }),
    /** Of the solution; asked for whenever there is one. */
    concentration: concentration.optional(),
    /** How many ions of each kind it holds; one of each when absent. */
    holds: z
      .strictObject({
        cations: z.int().min(1, { error: AN_ION }).max(MOST_IONS, { error: MANY_IONS }).default(1),
        anions: z.int().min(1, { error: AN_ION }).max(MOST_IONS, { error: MANY_IONS }).default(1),
      })
      .optional(),
    /** The author's salt, or salts: the answer. */
    salt: formula,
  })
  .refine((one) => one.given === "solid" || one.concentration !== undefined, {
    path: ["concentration"],
    message: 'found nothing, expected the concentration of the solution, such as "0.1 mol/dm3"',
  });
export type Sample = z.infer<typeof sample>;

/** Observations by sample letter and cell. A cell that is absent was not done. */
export type PracticalRecord = Record<string, Record<string, Observation>>;
const record = z.record(sampleLabel, z.record(z.string(), observation));

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
    const letters = one.samples.map((each) => each.label);
    const complain = (path: (string | number)[], message: string) =>
      context.addIssue({ code: "custom", path, message });
    const known = letters.join(", ");
    const twice = letters.find((letter, index) => letters.indexOf(letter) !== index);
    if (twice) complain(["samples"], `found two samples called ${twice}, expected different letters`);
    const parts = one.parts.map((part) => part.label);
    const again = parts.findIndex((label, index) => parts.indexOf(label) !== index);
    if (again >= 0)
      complain(["parts", again, "label"], `found a second part ${parts[again]}, expected different letters`);
    const cells = cellsOf(one.parts);
    const ids = cells.map((cell) => cell.id);
    const double = ids.find((id, index) => ids.indexOf(id) !== index);
    if (double) complain(["parts"], `found two tests called ${double}, expected different labels`);
    one.parts.forEach((part, index) => {
      for (const letter of part.samples ?? []) {
        if (!letters.includes(letter)) {
          complain(["parts", index, "samples"], `found sample ${letter}, expected one of ${known}`);
        }
      }
    });
    for (const kind of ["share", "differ"] as const) {
      one.paper[kind].forEach((group, index) => {
        for (const letter of group.samples) {
          if (!letters.includes(letter)) {
            complain(["paper", kind, index, "samples"], `found sample ${letter}, expected one of ${known}`);
          }
        }
      });
    }
    one.paper.same.forEach((group, index) => {
      for (const letter of group) {
        if (!letters.includes(letter))
          complain(["paper", "same", index], `found sample ${letter}, expected one of ${known}`);
      }
    });
    one.paper.contains.forEach(({ ion, samples = letters, count = 1 }, index) => {
      const offered: readonly string[] = [...one.paper.cations, ...one.paper.anions];
      if (!offered.includes(ion))
        complain(
          ["paper", "contains", index, "ion"],
          `found ${ion}, expected one of the ions the paper offers: ${offered.join(", ")}`,
        );
      for (const letter of samples) {
        if (!letters.includes(letter))
          complain(["paper", "contains", index, "samples"], `found sample ${letter}, expected one of ${known}`);
      }
      if (count > samples.length)
        complain(
          ["paper", "contains", index, "count"],
          `found ${count} of ${samples.length} samples, expected no more than there are`,
        );
    });
    for (const [letter, row] of Object.entries(one.record)) {
      if (!letters.includes(letter)) complain(["record", letter], `found sample ${letter}, expected one of ${known}`);
      for (const id of Object.keys(row)) {
        const cell = cells.find((each) => each.id === id);
        if (!cell) complain(["record", letter, id], `found test ${id}, expected one of ${ids.join(", ")}`);
        else if (cell.part.samples && !cell.part.samples.includes(letter)) {
          complain(
            ["record", letter, id],
            `found an observation of ${letter}, but part ${cell.part.label} is not done on it`,
          );
        }
      }
    }
    for (const letter of Object.keys(one.undecided ?? {})) {
      if (!letters.includes(letter))
        complain(["undecided", letter], `found sample ${letter}, expected one of ${known}`);
    }
  });
export type Practical = z.infer<typeof practical>;
