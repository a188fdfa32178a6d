/** Which salts the tests of a paper may leave together, whatever is observed. */
import type { PredictionTable } from "../bench/prediction-table.ts";

/**
 * Pairs of salts (indices) of which some sample may hold either, and at every test done on it some one observation agrees with both. Only
 * such salts can still be open together when no test of the paper would tell more.
 */
export function confusable(table: PredictionTable): [number, number][] {
  const pairs = new Map<string, [number, number]>();
  for (const { label, set: at } of table.samples) {
    const { salts, accepts } = table.sets[at];
    const done = table.cells.flatMap(({ samples }, c) => (samples.includes(label) ? [c] : []));
    const written = accepts.map((row) => table.cells.map(({ agrees }, c) => mayBeWritten(row[c], agrees)));
    salts.forEach((one, i) => {
      salts.slice(0, i).forEach((other, j) => {
        if (done.every((c) => written[i][c] & written[j][c])) pairs.set(`${other} ${one}`, [other, one]);
      });
    });
  }
  return [...pairs.values()];
}

/** What may be written down where a salt shows this; anything for a salt without a prediction. */
const ANYTHING = -1;

function mayBeWritten(shows: number, agrees: readonly number[]): number {
  if (shows === 0) return ANYTHING;
  return agrees.reduce((mask, others, reading) => (others & shows ? mask | (1 << reading) : mask), 0);
}
