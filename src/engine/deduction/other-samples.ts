/** The tests of a paper on another number of samples than its own. */
import type { PredictionTable } from "../bench/prediction-table.ts";

const LETTERS = [..."ABCDEFGHJKLMNPQRSTUVWXYZ"];

/**
 * The same tests, each done on every sample; so many samples, those beyond the paper's own given as its last one is. What the paper says of
 * its own samples says nothing of these, so its statements fall away. For its own number the table is returned as it is.
 */
export function forSamples(table: PredictionTable, count: number): PredictionTable {
  const own = table.samples;
  if (count === own.length) return table;
  const taken = own.map(({ label }) => label);
  const letters = [...taken, ...LETTERS.filter((letter) => !taken.includes(letter))].slice(0, count);
  return {
    ...table,
    samples: letters.map((label, s) => ({ label, set: (own[s] ?? own[own.length - 1]).set })),
    cells: table.cells.map((cell) => (cell.samples.length > 0 ? { ...cell, samples: letters } : cell)),
    paper: { ...table.paper, inAll: undefined, share: [], differ: [], same: [], contains: [] },
  };
}
