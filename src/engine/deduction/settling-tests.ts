/** Which further test, or which two, would let the tests of a paper decide a set of unknowns that they leave open. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { waysWithin } from "./nearest-other.ts";
import { type Paths, pathsOf } from "./paths.ts";
import { rulesOf } from "./rules.ts";
import { type Separations, separationsOf } from "./separations.ts";

/** A test that could be added: a fresh tube, and the lines of the record it gives. */
export interface FurtherTest {
  name: string;
  /** Indices of the table's cells; it can be added where a cell is not done yet. */
  cells: readonly number[];
}

export interface SettlingTest {
  /** Indices of the tests among those offered: one, or two where no single one is enough. */
  tests: number[];
  /** Samples (letters) on any one of which it is enough; empty when it takes all of `together`. */
  onOneOf: string[];
  /** Samples that must all be tested. */
  together: string[];
}

/**
 * What settles an undecided set, in the order offered. One test on one sample where that is enough; else one on every sample; else two on
 * every sample.
 * @param salts index of the salt of each sample; the set obeys the paper
 * @param most ways named
 */
export function settlingTests(
  table: PredictionTable,
  salts: readonly number[],
  tests: readonly FurtherTest[],
  most: number,
): SettlingTest[] {
  const paths = pathsOf(table, rulesOf(table));
  const apart = separationsOf(table);
  const rows = salts.map((salt, s) => apart[s][salt]);
  const letters = (added: readonly (unknown | undefined)[]) =>
    table.samples.flatMap(({ label }, s) => (added[s] ? [label] : []));
  /** added[test][s]: clashes with the observations the test adds for a sample; undefined where it adds none. */
  const added = tests.map(({ cells }) => salts.map((salt, s) => clashesAdded(table, s, salt, cells)));
  const decides = (...more: (readonly (number[] | undefined)[])[]) =>
    decided(
      paths,
      rows.map((row, s) => row.map((clashes, salt) => more.reduce((sum, one) => sum + (one[s]?.[salt] ?? 0), clashes))),
    );
  const found: SettlingTest[] = [];
  for (const [test, own] of added.entries()) {
    if (found.length === most) return found;
    const enough = own.map((clashes, s) => clashes && decides(own.map((one, at) => (at === s ? one : undefined))));
    if (enough.some((one) => one)) found.push({ tests: [test], onOneOf: letters(enough), together: [] });
  }
  if (found.length > 0) return found;
  for (const [test, own] of added.entries()) {
    if (found.length === most) return found;
    if (letters(own).length > 1 && decides(own)) found.push({ tests: [test], onOneOf: [], together: letters(own) });
  }
  if (found.length > 0) return found;
  for (const [one, own] of added.entries()) {
    for (const [other, second] of added.entries()) {
      if (found.length === most) return found;
      if (other <= one || letters(own).length === 0 || letters(second).length === 0 || !decides(own, second)) continue;
      const both = letters(own.map((clashes, s) => clashes ?? second[s]));
      found.push({ tests: [one, other], onOneOf: [], together: both });
    }
  }
  return found;
}

/** No other assignment fits. */
const decided = (paths: Paths, rows: Separations[number]): boolean =>
  waysWithin(paths, rows, 0, { left: Number.POSITIVE_INFINITY })?.[0] === 1;

/** By salt: how many observations that a further test adds for this salt the other cannot have given; undefined where it adds none. */
function clashesAdded(
  { cells, samples, sets }: PredictionTable,
  s: number,
  salt: number,
  further: readonly number[],
): number[] | undefined {
  const { salts, accepts, main } = sets[samples[s].set];
  const own = main[salts.indexOf(salt)];
  const seen = further.filter((c) => !cells[c].samples.includes(samples[s].label) && own[c] >= 0);
  if (seen.length === 0) return undefined;
  const clashes: number[] = [];
  for (const [row, other] of salts.entries())
    clashes[other] = seen.filter((c) => accepts[row][c] && !(accepts[row][c] & cells[c].agrees[own[c]])).length;
  return clashes;
}
