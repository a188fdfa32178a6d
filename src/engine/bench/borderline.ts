/** How far a salt's predictions are from flipping: the same test again with another strength of sample or reagent, or another constant. */
import { reagents } from "../constants/reagents.ts";
import { remembering } from "../equilibrium/remembering.ts";
import { createSolver, type Solver } from "../equilibrium/solve.ts";
import { compileDatabase } from "../equilibrium/species.ts";
import { cellsOf, type Observation, type Part, type Procedure } from "../practical.ts";
import { sameSight } from "./agreement.ts";
import { cannotBe, type Form } from "./allowed-salts.ts";
import { asSample } from "./as-sample.ts";
import { LOG_K_SHIFT, notingDecisive } from "./decisive.ts";
import { ALKALIS } from "./interference/line.ts";
import { withBenchAlkali } from "./interference/trial.ts";
import { predictSights } from "./predict.ts";
import type { Prediction } from "./prediction.ts";
import type { Content } from "./salt.ts";
import type { TestedSalt } from "./sample.ts";

/** One thing changed from what the prediction takes for granted. */
export type Variation =
  | { of: "sample"; molPerDm3: number }
  | { of: "reagent"; id: string; molPerDm3: number }
  /** The alkali holds as much carbonate as reagent grade may, or as the air brings into a bottle in use. */
  | { of: "carbonate" }
  /** log K of a solid, gas or complex of the constant set, raised or lowered. */
  | { of: "constant"; id: string; by: number };

export interface Borderline {
  /** What makes the main reading another sight, with the reading it then is. */
  flips: { variation: Variation; reading: Observation }[];
  /** The readings of the prediction and those the flips lead to: all are accepted. */
  readings: Observation[];
}

/** Sample strengths tried where the paper fixes none, mol/dm3: schools make up samples between these. */
export const SAMPLE_STRENGTHS = [0.02, 0.05, 0.2, 0.5] as const;

/**
 * Repeats every test of a salt with one thing changed at a time: the sample's strength where the paper gives it as about so much and it dissolves so far,
 * each reagent at the ends of its usual range where the paper gives it no strength, alkali with the carbonate of a bench bottle, and log K of each solid, gas and complex that decides
 * what is in the tube, up and down. A cell is in the answer when its main reading (the first), with carbonate any of its readings, becomes another sight than
 * those of the plain prediction. Slow: some ten predictions for each test.
 * @param solve a solver over the whole constant set, as of `createSolver()`
 * @throws what `predictSalt` throws
 */
export function borderline(salt: Content, form: Form, parts: Procedure, solve: Solver): Map<string, Borderline> {
  const sample = asSample(salt, form);
  const strengths = SAMPLE_STRENGTHS.filter(
    (molPerDm3) =>
      form.concentration?.about && cannotBe(salt, { ...form, concentration: { molPerDm3 } }, solve) === undefined,
  );
  const found = new Map<string, Borderline>();
  /** With a constant by which the sample would not be what the paper says, such as a clear solution, it was not that constant. */
  const couldBe = (variation: Variation): boolean =>
    variation.of !== "constant" || cannotBe(salt, form, solverWith(variation.id, variation.by, solve)) === undefined;
  for (const part of parts) {
    const met = new Set<string>();
    const plain = predictSights(sample, [part], notingDecisive(met, solve));
    const variations: Variation[] = [
      ...strengths.map((molPerDm3) => ({ of: "sample", molPerDm3 }) as const),
      ...reagentVariations(part),
      ...(addsAlkali(part) ? [{ of: "carbonate" } as const] : []),
      ...[...met].flatMap((id) => [-LOG_K_SHIFT, LOG_K_SHIFT].map((by) => ({ of: "constant", id, by }) as const)),
    ];
    for (const variation of variations) {
      if (!couldBe(variation)) continue;
      const varied = predictVaried(variation, sample, part, solve);
      for (const { id } of cellsOf([part])) note(found, id, variation, plain.get(id), varied.get(id));
    }
  }
  return found;
}

function note(
  found: Map<string, Borderline>,
  cell: string,
  variation: Variation,
  plain: Prediction | undefined,
  varied: Prediction | undefined,
): void {
  const [main] = plain?.readings ?? [];
  const [reading, ...others] = varied?.readings ?? [];
  if (!plain || !main || !reading) return;
  // "Remains" after a precipitate that only the variation gives is no change to the one and news to the other: it is asked of what is seen.
  const news = sameSight(reading, main) ? [] : [reading];
  // There is any carbonate from none to so much: what is doubtful with that is right as well.
  if (variation.of === "carbonate")
    news.push(...others.filter((other) => !plain.readings.some((known) => sameSight(other, known))));
  if (news.length === 0) return;
  const one = found.get(cell) ?? { flips: [], readings: [...plain.readings] };
  found.set(cell, one);
  for (const other of news) {
    one.flips.push({ variation, reading: other });
    if (!one.readings.some((known) => JSON.stringify(known) === JSON.stringify(other))) one.readings.push(other);
  }
}

function predictVaried(variation: Variation, sample: TestedSalt, part: Part, solve: Solver): Map<string, Prediction> {
  switch (variation.of) {
    case "sample":
      return predictSights({ ...sample, molPerDm3: variation.molPerDm3 }, [part], solve);
    case "reagent":
      return predictSights(sample, [withStrength(part, variation.id, variation.molPerDm3)], solve);
    case "carbonate":
      return predictSights(sample, [withBenchAlkali(part)], solve);
    case "constant":
      return predictSights(sample, [part], solverWith(variation.id, variation.by, solve));
  }
}

const addsAlkali = (part: Part): boolean =>
  part.tests.some(({ steps }) => steps.some((step) => step.do === "add" && ALKALIS.includes(step.reagent)));

/** Both ends of the usual range of every reagent to which the paper gives no strength. */
function reagentVariations(part: Part): Variation[] {
  const steps = part.tests.flatMap((test) => test.steps);
  const open = new Set(steps.flatMap((step) => (step.do === "add" && !step.at ? [step.reagent] : [])));
  return reagents.flatMap(({ id, range, concentration }): Variation[] =>
    open.has(id) && range
      ? range.filter((end) => end !== concentration).map((molPerDm3) => ({ of: "reagent", id, molPerDm3 }))
      : [],
  );
}

const withStrength = (part: Part, reagent: string, molPerDm3: number): Part => ({
  ...part,
  tests: part.tests.map((test) => ({
    ...test,
    steps: test.steps.map((step) =>
      step.do === "add" && step.reagent === reagent && !step.at ? { ...step, at: { molPerDm3 } } : step,
    ),
  })),
});

const database = compileDatabase();

/** Solvers with one log K changed, of each solver. */
const changed = new WeakMap<Solver, Map<string, Solver>>();

/** A solver over the constant set with one log K changed; `solve` itself answers wherever that constant has no part. */
function solverWith(id: string, by: number, solve: Solver): Solver {
  const known = changed.get(solve) ?? new Map<string, Solver>();
  changed.set(solve, known);
  const key = `${id} ${by}`;
  const before = known.get(key);
  if (before) return before;
  const other = remembering(changedSolver(id, by));
  const needs = neededBy(id);
  const solver: Solver = (problem, conditions, start) => {
    const hasPart = needs.every((component) => problem.totals[component]);
    return (hasPart ? other : solve)(problem, conditions, start);
  };
  known.set(key, solver);
  return solver;
}

/** Components without which a species or phase cannot be, protons aside. */
function neededBy(id: string): string[] {
  const entry = [...database.species, ...database.phases].find((one) => one.id === id);
  return (entry?.nu ?? []).map(([index]) => database.components[index].id).filter((component) => component !== "H+");
}

/** Solvers over the whole constant set with one log K changed. */
const changedSolvers = new Map<string, Solver>();

function changedSolver(id: string, by: number): Solver {
  const key = `${id} ${by}`;
  const known = changedSolvers.get(key);
  if (known) return known;
  const shift = <T extends { id: string; logK: number }>(rows: readonly T[]): T[] =>
    rows.map((row) => (row.id === id ? { ...row, logK: row.logK + by } : row));
  const solver = createSolver({ ...database, species: shift(database.species), phases: shift(database.phases) });
  changedSolvers.set(key, solver);
  return solver;
}
