/**
 * Which test to do next: the one that leaves the fewest ways of giving every sample a salt, whatever it shows. One that no class carries out
 * on a salt the sample may still hold comes after all that are safe.
 */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { candidates } from "./candidates.ts";
import type { Place } from "./conclusion.ts";
import { waysOf } from "./joint.ts";
import { plainly } from "./plainly.ts";
import { rulesOf } from "./rules.ts";
import { aPagesWork } from "./work.ts";

/** One thing the test may show. */
export interface Outcome {
  reading: number;
  /** Assignments that would be left. */
  assignments: number;
  /** Salts (indices) the sample could still hold. */
  salts: number[];
}

export interface NextTest extends Place {
  /** What some salt left plainly shows, in the order of the readings. */
  outcomes: Outcome[];
  /** What some salt left shows only at the border and none plainly, where it leaves other salts than each of the outcomes. */
  atBorder: Outcome[];
  /** Most assignments that anything it may show leaves. */
  worst: number;
  /** Salts (indices) the sample may still hold on which the test is unsafe; absent when it is safe on all of them. */
  unsafeOn?: number[];
  /** Assignments left on average, when every assignment left now is as likely as any other and shows its likeliest sight. */
  mean: number;
}

/**
 * Every test not done yet that could leave fewer assignments than there are: the safe ones first, of these the fewest
 * in the worst case, then on average, then in the order of the paper. Empty when the record is settled, when nothing that can be tested would settle more, or when it fits nothing.
 * @throws TooMuchWork
 */
export function nextTests(table: PredictionTable, record: TableRecord, work = aPagesWork()): NextTest[] {
  const salts = table.samples.map((_, s) =>
    candidates(table, record, s).flatMap(({ salt, clashes }) => (clashes.length === 0 ? [salt] : [])),
  );
  const ways = waysOf(table, salts, rulesOf(table), work);
  return table.samples
    .flatMap(({ label }, s) => {
      const left = salts[s].flatMap((salt, i) => (ways[s][i] > 0 ? [{ salt, ways: ways[s][i] }] : []));
      return testsOf(table, s, left, (cell) => record[label]?.[cell] === undefined);
    })
    .sort(byUse);
}

/** A salt that a sample may hold, and in how many assignments it does. */
export interface Held {
  salt: number;
  ways: number;
}

/** The tests that could leave fewer of these salts of sample `s`, among those that `isOpen` picks; the best first, as above. */
export function testsOf(
  table: PredictionTable,
  s: number,
  left: readonly Held[],
  isOpen: (cell: string) => boolean,
): NextTest[] {
  const { label } = table.samples[s];
  return table.cells
    .flatMap((cell, c) => {
      if (!cell.samples.includes(label) || !isOpen(cell.id)) return [];
      const test = tried(table, s, c, left);
      const unsafeOn = left.flatMap(({ salt }) => (cell.unsafeOn?.includes(salt) ? [salt] : []));
      return test ? [{ sample: label, cell: cell.id, ...test, ...(unsafeOn.length > 0 && { unsafeOn }) }] : [];
    })
    .sort(byUse);
}

const byUse = (a: NextTest, b: NextTest): number =>
  Number(a.unsafeOn !== undefined) - Number(b.unsafeOn !== undefined) || a.worst - b.worst || a.mean - b.mean;

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

/** What a test on a sample could show and leave, when it may hold these salts in so many ways; undefined when that tells nothing. */
function tried(
  table: PredictionTable,
  s: number,
  c: number,
  left: readonly Held[],
): Omit<NextTest, keyof Place | "unsafeOn"> | undefined {
  const set = table.sets[table.samples[s].set];
  const { agrees } = table.cells[c];
  const rows = left.map(({ salt, ways }) => {
    const row = set.salts.indexOf(salt);
    // A salt that was not predicted counts as one without a prediction.
    if (row < 0) return { salt, ways, accepts: 0, plainly: 0, main: -1 };
    return { salt, ways, accepts: set.accepts[row][c], plainly: plainly(set, row, c), main: set.main[row][c] };
  });
  const plain = rows.reduce((mask, row) => mask | row.plainly, 0);
  const border = rows.reduce((mask, row) => mask | row.accepts, 0) & ~plain;
  const outcomesOf = (readings: number) =>
    agrees.flatMap((mask, reading): Outcome[] => {
      if (!(readings & (1 << reading))) return [];
      // A salt without a prediction may show anything.
      const fits = rows.filter(({ accepts }) => accepts === 0 || accepts & mask);
      return [{ reading, assignments: sum(fits.map(({ ways }) => ways)), salts: fits.map(({ salt }) => salt) }];
    });
  const outcomes = outcomesOf(plain);
  const known = outcomes.map(({ salts }) => salts.join());
  const atBorder = outcomesOf(border).filter(({ salts }) => !known.includes(salts.join()));
  const shown = rows.filter(({ main }) => main >= 0);
  const all = sum(shown.map(({ ways }) => ways));
  const total = sum(rows.map(({ ways }) => ways));
  const leaves = new Map(outcomes.map(({ reading, assignments }) => [reading, assignments]));
  const weighted = sum(shown.map(({ ways, main }) => ways * (leaves.get(main) ?? total)));
  // In whole numbers, for the mean of equal ones may come out a little less than they are.
  if (weighted >= total * all) return undefined;
  const worst = Math.max(...[...outcomes, ...atBorder].map(({ assignments }) => assignments));
  return { outcomes, atBorder, worst, mean: weighted / all };
}
