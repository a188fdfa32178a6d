/**
 * Predicts every salt a paper allows through its whole procedure, and packs the result into the compact table that deduction and the
 * page work on.
 */
import { INDICATORS } from "../constants/indicators.ts";
import { type Amount, type Cell, cellsOf, type GivenOff, type Observation, type Paper } from "../practical.ts";
import { cannotBe, type Form } from "./allowed-salts.ts";
import { asSample } from "./as-sample.ts";
import type { Borderline } from "./borderline.ts";
import { contentsOf } from "./contents.ts";
import { factOf } from "./fact.ts";
import { colouredAlike, mayHaveSeen } from "./liquid-colours.ts";
import type { Prediction } from "./prediction.ts";
import type { PredictionSet, PredictionTable, TableCell } from "./prediction-table.ts";
import type { Predictor } from "./predictor.ts";
import type { Content } from "./salt.ts";
import { refuseMore, TooManyReadings } from "./too-many-readings.ts";
import { isUnsafeOn } from "./unsafe-on.ts";

export { TooManyReadings } from "./too-many-readings.ts";

/** What of a paper or a practical decides its predictions. */
export type Tabulated = Pick<Paper, "samples" | "paper" | "parts">;

/** How observations are put into words, given the kind of solid at the start. */
export type Words = (seen: Observation, solid: "precipitate" | "solid") => string;

/** Readings every list offers besides those some salt shows, so that a slip or a surprise can be recorded too. */
function commonReadings(cell: Cell): Observation[] {
  if (cell.test.steps.some((step) => step.do === "flame")) return [{ flame: false }];
  const tried = cell.test.steps.find((step) => step.do === "indicator");
  if (tried) return INDICATORS[tried.with].bands.map(({ colour }) => ({ indicator: colour }));
  return [{ none: true }, { precipitate: { colour: "white", amount: "plain" } }];
}

/** By form (see `formKey`), by salt (formula), by cell. */
type ByCell<T> = Map<string, Map<string, Map<string, T>>>;

/** A table with what is behind it, for the checks and the explanations. */
export interface Tabulation {
  table: PredictionTable;
  predictions: ByCell<Prediction>;
  /** The cells at the border only. */
  borders: ByCell<Borderline>;
}

/** Identity of a form: samples given alike share their predictions. */
export const formKey = ({ given, concentration, holds }: Form): string =>
  [given, concentration?.about ? "about" : "", concentration?.molPerDm3 ?? "", holdsKey(holds)].join(" ");

const holdsKey = (holds: Form["holds"]): string => `${holds?.cations ?? 1} ${holds?.anions ?? 1}`;

/**
 * Predicts all allowed salts of a practical. Where a prediction stands on the border (see `borderline`), both readings are accepted. A line
 * with more different sights than it has room for does not tell faint precipitates from plain ones, and if that is not enough neither a trace of one, brown
 * fumes from none nor a new precipitate that goes in part from one that stays: nothing is concluded from those.
 * @throws UnknownReagent, RangeError for a procedure the engine cannot carry out; TooManyReadings where that is not enough;
 * NoEquilibrium when the solver gives up.
 */
export function tabulate(
  practical: Tabulated,
  predictor: Predictor,
  words: Words,
  isWanted: (salt: Content) => boolean = () => true,
): Tabulation {
  const coarse = new Map<string, number>();
  for (;;) {
    try {
      return packed(practical, predictor, words, isWanted, coarse);
    } catch (error) {
      const next = error instanceof TooManyReadings ? (coarse.get(error.cell) ?? 0) + 1 : COARSER.length;
      if (!(error instanceof TooManyReadings) || next >= COARSER.length) throw error;
      coarse.set(error.cell, next);
    }
  }
}

/** @param coarse how coarsely readings are told apart on a line: a place in COARSER */
function packed(
  practical: Tabulated,
  { solve, predict, border }: Predictor,
  words: Words,
  isWanted: (salt: Content) => boolean,
  coarse: ReadonlyMap<string, number>,
): Tabulation {
  const { paper, parts, samples } = practical;
  const contents = new Map(samples.map(({ holds }) => [holdsKey(holds), contentsOf(paper, holds)]));
  const all = [...contents.values()].flat();
  const cells = cellsOf(parts);
  const letters = samples.map(({ label }) => label);
  const lines: Line[] = cells.map((cell) => {
    // A later test of a tube cannot be done without those before it.
    const steps = cell.part.tests.slice(0, cell.index + 1).flatMap((test) => test.steps);
    const unsafeOn = [...all.keys()].filter((salt) => isUnsafeOn(steps, all[salt]));
    return {
      cell,
      asSeen: COARSER[coarse.get(cell.id) ?? 0],
      of: {
        id: cell.id,
        samples: cell.part.samples ?? letters,
        ...(startsDry(cell, samples) && { dry: true as const }),
        ...(unsafeOn.length > 0 && { unsafeOn }),
        readings: [],
        words: [],
        agrees: [],
        comesOff: [],
      },
    };
  });
  const facts = new Map<string, number>();
  const predictions: Tabulation["predictions"] = new Map();
  const borders: Tabulation["borders"] = new Map();
  const forms = new Map(samples.map((sample) => [formKey(sample), sample]));
  const sets = [...forms].map(([key, form]): PredictionSet => {
    const given = samples.filter((one) => formKey(one) === key);
    const isDone = (cell: Cell) => given.some(({ label }) => isDoneOn(cell, label));
    const mine = parts.filter((part) => given.some(({ label }) => part.samples?.includes(label) ?? true));
    const set: PredictionSet = { salts: [], accepts: [], main: [], atBorder: [], facts: [], cannotBe: [] };
    const shown = new Map<string, Map<string, Prediction>>();
    const near = new Map<string, Map<string, Borderline>>();
    for (const salt of contents.get(holdsKey(form.holds)) ?? []) {
      if (!isWanted(salt)) continue;
      const index = all.indexOf(salt);
      const reason = cannotBe(salt, form, solve);
      if (reason !== undefined) {
        set.cannotBe.push({ salt: index, reason });
        continue;
      }
      const predicted = predict(asSample(salt, form), mine);
      const bordering = border(salt, form, mine);
      shown.set(salt.formula, predicted);
      near.set(salt.formula, bordering);
      addRow(set, index, lines, isDone, predicted, bordering);
      set.facts.push(cells.map((cell) => (isDone(cell) ? intern(facts, factOf(predicted.get(cell.id))) : -1)));
    }
    predictions.set(key, shown);
    borders.set(key, near);
    return set;
  });
  [...forms.keys()].forEach((key, s) => {
    addColours(sets[s], lines, (row) => predictions.get(key)?.get(all[sets[s].salts[row]].formula));
  });
  for (const { cell, of } of lines) {
    if (of.readings.length > 0) for (const reading of commonReadings(cell)) readingIndex(of, reading);
    finish(of, words);
  }
  const place = [...forms.keys()];
  return {
    table: {
      salts: all.map(({ formula, cations, anions }) => ({ formula, cations, anions })),
      cells: lines.map(({ of }) => of),
      facts: [...facts.keys()],
      sets,
      samples: samples.map((sample) => ({ label: sample.label, set: place.indexOf(formKey(sample)) })),
      paper,
    },
    predictions,
    borders,
  };
}

/** A line of the record with its column of the table. */
interface Line {
  cell: Cell;
  of: TableCell;
  /** A reading as this line tells it from others. */
  asSeen: (reading: Observation) => Observation;
}

const asPlain = (reading: Observation, amounts: readonly Amount[]): Observation =>
  reading.precipitate && amounts.includes(reading.precipitate.amount)
    ? { ...reading, precipitate: { ...reading.precipitate, amount: "plain" } }
    : reading;

const withFaintAsPlain = (reading: Observation): Observation => asPlain(reading, ["slight"]);

function withoutDetail(reading: Observation): Observation {
  const { fumes, ...plain } = asPlain(reading, ["slight", "trace"]);
  if (plain.precipitate && plain.fate === "partly dissolves") delete plain.fate;
  return reading.residue === undefined ? plain : { ...plain, ...(fumes && { fumes }) };
}

/** Ways to tell the readings of a line apart, each coarser than the one before. */
const COARSER: readonly Line["asSeen"][] = [(reading) => reading, withFaintAsPlain, withoutDetail];

/** Adds a salt to a set: what it may show on each line, plainly and at the border, and the gases it gives off. */
function addRow(
  set: PredictionSet,
  salt: number,
  lines: readonly Line[],
  isDone: (cell: Cell) => boolean,
  predicted: ReadonlyMap<string, Prediction>,
  near: ReadonlyMap<string, Borderline>,
): void {
  const row = set.salts.push(salt) - 1;
  set.accepts.push(
    lines.map(({ cell, of, asSeen }, c) => {
      if (!isDone(cell)) return 0;
      const plain = maskOf(of, predicted.get(cell.id)?.readings.map(asSeen));
      const all = plain | maskOf(of, near.get(cell.id)?.readings.map(asSeen));
      if (all !== plain) set.atBorder.push([row, c, all & ~plain]);
      return all;
    }),
  );
  set.main.push(
    lines.map(({ cell, of, asSeen }) => {
      const first = isDone(cell) ? predicted.get(cell.id)?.readings[0] : undefined;
      return first ? readingIndex(of, asSeen(first)) : -1;
    }),
  );
  for (const { cell, of } of lines) {
    for (const gas of predicted.get(cell.id)?.gases ?? []) noteGas(of, gas, salt);
  }
}

/** Once all readings are known: those that name a colour of the liquid which a salt has in its tube without its being news. */
function addColours(
  set: PredictionSet,
  lines: readonly Line[],
  predicted: (row: number) => ReadonlyMap<string, Prediction> | undefined,
): void {
  set.accepts.forEach((accepts, row) => {
    lines.forEach(({ cell, of }, c) => {
      const prediction = accepts[c] === 0 ? undefined : predicted(row)?.get(cell.id);
      if (!prediction) return;
      const border = set.atBorder.find(([r, at]) => r === row && at === c);
      const plain = accepts[c] & ~(border?.[2] ?? 0);
      const alike = colouredAlike(of.readings, plain, prediction);
      accepts[c] |= alike | colouredAlike(of.readings, accepts[c], prediction);
      if (border) border[2] = accepts[c] & ~(plain | alike);
    });
  });
}

const isDoneOn = (cell: Cell, letter: string): boolean => cell.part.samples?.includes(letter) ?? true;

/** True when the test begins with a dry sample in the tube. */
function startsDry(cell: Cell, samples: Paper["samples"]): boolean {
  const mine = samples.filter((one) => isDoneOn(cell, one.label));
  return cell.index === 0 && mine.some(({ given }) => given !== "solution") && takesSolid(cell);
}
const takesSolid = (cell: Cell): boolean => cell.test.steps.some((step) => step.do === "take" && "mass" in step);

function maskOf(cell: TableCell, readings: readonly Observation[] = []): number {
  let mask = 0;
  for (const reading of readings) mask |= 1 << readingIndex(cell, reading);
  return mask;
}

/** Index of a reading in a cell, added when new. Throws TooManyReadings past the 31 a bit mask holds. */
function readingIndex(cell: TableCell, reading: Observation): number {
  const text = JSON.stringify(reading);
  const known = cell.readings.findIndex((each) => JSON.stringify(each) === text);
  if (known >= 0) return known;
  refuseMore(cell);
  cell.readings.push(reading);
  return cell.readings.length - 1;
}
function noteGas(cell: TableCell, gas: GivenOff, salt: number): void {
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
    cell.readings.reduce((mask, other, index) => (mayHaveSeen(picked, other) ? mask | (1 << index) : mask), 0),
  );
}
