/**
 * A paper as it lies before a reader: samples, what is said of them, what is to be done, and what has been recorded so far. The answer is
 * not known. A practical is a paper with its answer, and keeps the same rules (`references`).
 */
import * as z from "zod/mini";
import { LONGEST, MOST } from "./bounds.ts";
import { cellsOf } from "./cells.ts";
import { type Observation, observation } from "./observation.ts";
import { type Procedure, procedureSoFar, sampleLabel } from "./procedure.ts";
import { describe, strength } from "./quantity.ts";
import { type Statement, statement } from "./statement.ts";

/** Ions of a kind that one sample may hold: a double salt, or a mixture of two salts. */
const MOST_IONS = 2;
const AN_ION = "found no ion, expected 1 or 2 of a kind";
const MANY_IONS = "found more than 2 ions of a kind, expected 1 or 2: a double salt or a mixture of two salts";
const ions = z
  .int({ error: (issue) => `found ${describe(issue.input)}, expected 1 or 2` })
  .check(z.minimum(1, { error: AN_ION }), z.maximum(MOST_IONS, { error: MANY_IONS }));
const oneUnlessSaid = z._default(ions, 1);

/** Entries of a sample that a paper states. */
export const sampleEntries = {
  label: sampleLabel,
  given: z.enum(["solid", "solution", "both"], {
    error: (issue) => `found ${describe(issue.input)}, expected solid, solution or both`,
  }),
  /** Of the solution; asked for whenever there is one. */
  concentration: z.optional(strength),
  /** How many ions of each kind it holds; one of each when absent. */
  holds: z.optional(z.strictObject({ cations: oneUnlessSaid, anions: oneUnlessSaid })),
};

export const hasStrength = (one: { given: string; concentration?: unknown }): boolean =>
  one.given === "solid" || one.concentration !== undefined;
export const NO_STRENGTH = {
  path: ["concentration"],
  error: 'found nothing, expected the concentration of the solution, such as "0.1 mol/dm3"',
};

const givenSample = z.strictObject(sampleEntries).check(z.refine(hasStrength, NO_STRENGTH));
/** A sample as it is given out: which salt it holds is the question. */
export type GivenSample = z.infer<typeof givenSample>;

/** Observations by sample letter and cell. A cell that is absent was not done. */
export type PracticalRecord = Record<string, Record<string, Observation>>;
export const record = z.record(sampleLabel, z.record(z.string(), observation));

/** The time a paper allows. */
export const minutes = z.int().check(z.minimum(5), z.maximum(300));

/** What of a practical is on the paper, with what has been recorded. */
interface Referring {
  samples: readonly GivenSample[];
  paper: Statement;
  parts: Procedure;
  record: PracticalRecord;
}

export const paper = z
  .strictObject({
    title: z.optional(z.string().check(z.maxLength(LONGEST.title))),
    /** The time the paper allows, in minutes. */
    minutes: z.optional(minutes),
    samples: z.array(givenSample).check(z.minLength(1), z.maxLength(MOST.samples)),
    paper: statement,
    parts: procedureSoFar,
    record: z._default(record, {}),
  })
  .check(
    z.check<Referring>(({ value, issues }) => {
      for (const { path, message } of references(value)) issues.push({ code: "custom", input: value, path, message });
    }),
  );
export type Paper = z.infer<typeof paper>;

/** Every letter, ion and test that is named but does not exist, or exists twice. */
export function references(one: Referring): { path: (string | number)[]; message: string }[] {
  const faults: { path: (string | number)[]; message: string }[] = [];
  const complain = (path: (string | number)[], message: string) => faults.push({ path, message });
  const letters = one.samples.map((each) => each.label);
  const known = letters.join(", ");
  const mustExist = (path: (string | number)[], samples: readonly string[] = []) => {
    for (const letter of samples) {
      if (!letters.includes(letter)) complain(path, `found sample ${letter}, expected one of ${known}`);
    }
  };
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
  for (const [index, part] of one.parts.entries()) mustExist(["parts", index, "samples"], part.samples);
  for (const kind of ["share", "differ"] as const) {
    for (const [index, group] of one.paper[kind].entries()) mustExist(["paper", kind, index, "samples"], group.samples);
  }
  for (const [index, group] of one.paper.same.entries()) mustExist(["paper", "same", index], group);
  for (const [index, { ion, samples = letters, count = 1 }] of one.paper.contains.entries()) {
    const offered: readonly string[] = [...one.paper.cations, ...one.paper.anions];
    const at = (key: string) => ["paper", "contains", index, key];
    if (!offered.includes(ion))
      complain(at("ion"), `found ${ion}, expected one of the ions the paper offers: ${offered.join(", ")}`);
    mustExist(at("samples"), samples);
    if (count > samples.length)
      complain(at("count"), `found ${count} of ${samples.length} samples, expected no more than there are`);
  }
  for (const [letter, row] of Object.entries(one.record)) {
    mustExist(["record", letter], [letter]);
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
  return faults;
}
