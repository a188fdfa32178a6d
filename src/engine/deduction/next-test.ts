/** Which test to do next: the one that leaves the fewest ways of giving every sample a salt, whatever it shows. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { candidates } from "./candidates.ts";
import type { Place } from "./conclusion.ts";
import { waysOf } from "./joint.ts";
import { likeliest } from "./likeliest.ts";
import { rulesOf } from "./rules.ts";

/** One thing the test may show. */
export interface Outcome {
  reading: number;
  /** Assignments that would be left. */
  assignments: number;
  /** Salts (indices) the sample could still hold. */
  salts: number[];
}

export interface NextTest extends Place {
  /** In the order of the readings. */
  outcomes: Outcome[];
  /** Most assignments that any outcome leaves. */
  worst: number;
  /** Assignments left on average, when every assignment left now is as likely as any other. */
  mean: number;
}

/**
 * Every test not done yet that could leave fewer assignments than there are: fewest in the worst case first, then on average, then in the
 * order of the paper. Empty when the record is settled, when nothing that can be tested would settle more, or when it fits nothing.
 */
export function nextTests(table: PredictionTable, record: TableRecord): NextTest[] {
  const salts = table.samples.map((_, s) =>
    candidates(table, record, s).flatMap(({ salt, clashes }) => (clashes.length === 0 ? [salt] : [])),
  );
  const ways = waysOf(table, salts, rulesOf(table));
  const total = sum(ways[0] ?? []);
  return table.samples
    .flatMap(({ label }, s) => {
      const left = salts[s].flatMap((salt, i) => (ways[s][i] > 0 ? [{ salt, ways: ways[s][i] }] : []));
      return table.cells.flatMap((cell, c) => {
        if (!cell.samples.includes(label) || record[label]?.[cell.id] !== undefined) return [];
        const test = tried(table, s, c, left);
        return test && test.mean < total ? [{ sample: label, cell: cell.id, ...test }] : [];
      });
    })
    .sort((a, b) => a.worst - b.worst || a.mean - b.mean);
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

/** What a test on a sample could show and leave, when it may hold these salts in so many ways. */
function tried(
  table: PredictionTable,
  s: number,
  c: number,
  left: readonly { salt: number; ways: number }[],
): Omit<NextTest, keyof Place> | undefined {
  const set = table.sets[table.samples[s].set];
  const { agrees } = table.cells[c];
  const shown = new Map<number, number>();
  const rows = left.map(({ salt, ways }) => {
    const row = set.salts.indexOf(salt);
    const reading = likeliest(set, row, c);
    if (reading >= 0) shown.set(reading, (shown.get(reading) ?? 0) + ways);
    return { salt, ways, accepts: set.accepts[row][c] };
  });
  if (shown.size === 0) return undefined;
  const outcomes = [...shown.keys()]
    .sort((a, b) => a - b)
    .map((reading): Outcome => {
      // A salt without a prediction may show anything.
      const fits = rows.filter(({ accepts }) => accepts === 0 || (accepts & agrees[reading]) !== 0);
      return { reading, assignments: sum(fits.map(({ ways }) => ways)), salts: fits.map(({ salt }) => salt) };
    });
  const all = sum([...shown.values()]);
  return {
    outcomes,
    worst: Math.max(...outcomes.map(({ assignments }) => assignments)),
    mean: sum(outcomes.map(({ reading, assignments }) => ((shown.get(reading) ?? 0) / all) * assignments)),
  };
}
