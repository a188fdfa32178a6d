/**
 * Predicts every salt a paper allows through its whole procedure, and packs the result into the compact table that deduction and the
 * page work on.
 */
import type { Solver } from "../equilibrium/solve.ts";
import { type Cell, cellsOf, type Gas, type Observation, type Practical } from "../practical.ts";
import { sameSight } from "./agreement.ts";
import { cannotBe, type Form, pairsOf, solidForm } from "./allowed-salts.ts";
import { factOf } from "./fact.ts";
import { predictSalt } from "./predict.ts";
import type { Prediction } from "./prediction.ts";
import type { PredictionSet, PredictionTable, TableCell } from "./prediction-table.ts";
import type { SimpleSalt } from "./salt.ts";

/** What of a practical decides its predictions. */
export type Tabulated = Pick<Practical, "samples" | "paper" | "parts">;

/** How observations are put into words, given the kind of solid at the start. */
export type Words = (seen: Observation, solid: "precipitate" | "solid") => string;

/** Readings every list offers besides those some salt shows, so that a slip or a surprise can be recorded too. */
function commonReadings(cell: Cell): Observation[] {
  if (cell.test.steps.some((step) => step.do === "flame")) return [{ flame: false }];
  return [{ none: true }, { precipitate: { colour: "white", amount: "plain" } }];
}

/** Predictions behind a table, by form and salt, for the checks and the explanations. */
export type Predictions = Map<string, Map<string, Map<string, Prediction>>>;

/** Identity of a form: samples given alike share their predictions. */
export const formKey = (form: Form): string => `${form.given} ${form.concentration?.molPerDm3 ?? ""}`;

/**
 * Predicts all allowed salts of a practical.
 * @throws UnknownReagent, RangeError for a procedure the engine cannot carry out; NoEquilibrium when the solver gives up.
 */
export function tabulate(
  practical: Tabulated,
  solve: Solver,
  words: Words,
): { table: PredictionTable; predictions: Predictions } {
  const { paper, parts, samples } = practical;
  const pairs = pairsOf(paper);
  const cells = cellsOf(parts);
  const letters = samples.map(({ label }) => label);
  const tableCells: TableCell[] = cells.map((cell) => ({
    id: cell.id,
    samples: cell.part.samples ?? letters,
    ...(startsDry(cell, samples) && { dry: true as const }),
    readings: [],
    words: [],
    agrees: [],
    comesOff: [],
  }));
  const facts = new Map<string, number>();
  const predictions: Predictions = new Map();
  const sets: PredictionSet[] = [];
  const setOf = new Map<string, number>();
  for (const sample of samples) {
    const key = formKey(sample);
    if (setOf.has(key)) continue;
    const made = new Map<string, Map<string, Prediction>>();
    predictions.set(key, made);
    setOf.set(key, sets.length);
    const set: PredictionSet = { salts: [], accepts: [], facts: [], cannotBe: [] };
    const done = cells.map((cell) => samples.some((one) => formKey(one) === key && isDoneOn(cell, one.label)));
    pairs.forEach((salt, index) => {
      const reason = cannotBe(salt, sample, solve);
      if (reason !== undefined) {
        set.cannotBe.push({ salt: index, reason });
        return;
      }
      const shown = predictSalt(
        tested(salt, sample),
        parts.filter((part) => partIsDone(part, samples, key)),
        solve,
      );
      made.set(salt.formula, shown);
      set.salts.push(index);
      set.accepts.push(cells.map((cell, c) => (done[c] ? accept(tableCells[c], shown.get(cell.id)) : 0)));
      set.facts.push(cells.map((cell, c) => (done[c] ? intern(facts, factOf(shown.get(cell.id))) : -1)));
      cells.forEach((cell, c) => {
        for (const gas of shown.get(cell.id)?.gases ?? []) noteGas(tableCells[c], gas, index);
      });
    });
    sets.push(set);
  }
  cells.forEach((cell, c) => {
    const of = tableCells[c];
    if (of.readings.length > 0) for (const reading of commonReadings(cell)) readingIndex(of, reading);
    finish(of, words);
  });
  return {
    table: {
      salts: pairs.map(({ formula, cation, anion }) => ({ formula, cation, anion })),
      cells: tableCells,
      facts: [...facts.keys()],
      sets,
      samples: samples.map((sample) => ({ label: sample.label, set: setOf.get(formKey(sample)) as number })),
      paper,
    },
    predictions,
  };
}

const isDoneOn = (cell: Cell, letter: string): boolean => cell.part.samples?.includes(letter) ?? true;

const partIsDone = (part: Cell["part"], samples: Practical["samples"], key: string): boolean =>
  samples.some((one) => formKey(one) === key && (part.samples?.includes(one.label) ?? true));

function tested(salt: SimpleSalt, form: Form) {
  const solid = form.given === "solution" ? undefined : solidForm(salt);
  return {
    ions: salt.ions,
    ...(form.concentration && { molPerDm3: form.concentration.molPerDm3 }),
    ...(solid !== undefined && { solid }),
  };
}

/** True when the test begins with a dry sample in the tube. */
function startsDry(cell: Cell, samples: Practical["samples"]): boolean {
  const mine = samples.filter((one) => isDoneOn(cell, one.label));
  return cell.index === 0 && mine.some(({ given }) => given !== "solution") && takesSolid(cell);
}
const takesSolid = (cell: Cell): boolean => cell.test.steps.some((step) => step.do === "take" && "mass" in step);

function accept(cell: TableCell, prediction: Prediction | undefined): number {
  let mask = 0;
  for (const reading of prediction?.readings ?? []) mask |= 1 << readingIndex(cell, reading);
  return mask;
}

/** Index of a reading in a cell, added when new. Throws a RangeError past the 31 a bit mask holds. */
function readingIndex(cell: TableCell, reading: Observation): number {
  const text = JSON.stringify(reading);
  const known = cell.readings.findIndex((each) => JSON.stringify(each) === text);
  if (known >= 0) return known;
  if (cell.readings.length >= MOST_READINGS)
    throw new RangeError(`test ${cell.id} has more than ${MOST_READINGS} readings`);
  cell.readings.push(reading);
  return cell.readings.length - 1;
}
/** Readings a cell may hold: one bit each in a mask. */
export const MOST_READINGS = 31;

function noteGas(cell: TableCell, gas: Gas, salt: number): void {
  const row = cell.comesOff.find((each) => each.gas === gas);
  if (!row) cell.comesOff.push({ gas, salts: [salt] });
  else if (!row.salts.includes(salt)) row.salts.push(salt);
}

function intern(facts: Map<string, number>, fact: string | undefined): number {
  if (fact === undefined) return -1;
  const known = facts.get(fact);
  if (known !== undefined) return known;
  facts.set(fact, facts.size);
  return facts.size - 1;
}

/** Words and agreement masks once all readings are known. */
function finish(cell: TableCell, words: Words): void {
  cell.words = cell.readings.map((reading) => words(reading, cell.dry ? "solid" : "precipitate"));
  cell.agrees = cell.readings.map((picked) =>
    cell.readings.reduce(
      (mask, other, index) => (picked === other || sameSight(picked, other) ? mask | (1 << index) : mask),
      0,
    ),
  );
}
