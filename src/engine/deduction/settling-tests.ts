/** Which further test, or which two, would let the tests of a paper decide a set of unknowns that they leave open. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { waysWithin } from "./nearest-other.ts";
import { type Paths, pathsOf } from "./paths.ts";
import { rulesOf } from "./rules.ts";
import { type Separations, separationsOf } from "./separations.ts";
import type { Work } from "./work.ts";

/** A test that could be added: a fresh tube, and the lines of the record it gives. */
export interface FurtherTest {
  name: string;
  /** The paper asks for it already, on other samples: its reagents are on the bench. */
  own?: true;
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

/** Steps from one sample to the next, over all tests tried: about half a second. */
const STEPS = 4_000_000;

/**
 * What settles an undecided set. A test the paper has already, on one more sample or, where that is not enough, on all the others; else a
 * new test on one sample, or on every sample; else the first two of any of these on every sample. In
 * the order offered. None is put to a salt that it is unsafe on.
 * @param salts index of the salt of each sample; the set obeys the paper
 * @param most ways named
 * @returns undefined where it would take too long, because too many assignments fit
 */
export function settlingTests(
  table: PredictionTable,
  salts: readonly number[],
  tests: readonly FurtherTest[],
  most: number,
): SettlingTest[] | undefined {
  const work: Work = { left: STEPS };
  const paths = pathsOf(table, rulesOf(table));
  const apart = separationsOf(table);
  const rows = salts.map((salt, s) => apart[s][salt]);
  const letters = (of: readonly unknown[]) => table.samples.flatMap(({ label }, s) => (of[s] ? [label] : []));
  const decides = (...more: Added[]) =>
    decided(
      paths,
      rows.map((row, s) => row.map((clashes, salt) => more.reduce((sum, one) => sum + (one[s]?.[salt] ?? 0), clashes))),
      work,
    );
  const added = tests.map(({ cells }): Added => salts.map((salt, s) => clashesAdded(table, s, salt, cells)));
  const useful = [...tests.keys()].filter((test) => letters(added[test]).length > 0);
  const onOne = (test: number): SettlingTest[] => {
    const enough = added[test].map(
      (clashes, s) => clashes && decides(added[test].map((one, at) => (at === s ? one : undefined))),
    );
    return enough.some((one) => one) ? [{ tests: [test], onOneOf: letters(enough), together: [] }] : [];
  };
  const onAll = (test: number): SettlingTest[] => {
    const together = letters(added[test]);
    return together.length > 1 && decides(added[test]) ? [{ tests: [test], onOneOf: [], together }] : [];
  };
  const withAnother = (one: number): SettlingTest[] =>
    useful.flatMap((other) => {
      if (other <= one || !decides(added[one], added[other])) return [];
      const together = letters(added[one].map((clashes, s) => clashes ?? added[other][s]));
      return [{ tests: [one, other], onOneOf: [], together }];
    });
  const own = useful.filter((test) => tests[test].own);
  const others = useful.filter((test) => !tests[test].own);
  for (const [ways, from, named] of [
    [onOne, own, most],
    [onAll, own, most],
    [onOne, others, most],
    [onAll, others, most],
    [withAnother, useful, 1],
  ] as const) {
    const found: SettlingTest[] = [];
    for (const test of from) if (found.length < named) found.push(...ways(test));
    if (work.left < 0) return undefined;
    if (found.length > 0) return found.slice(0, named);
  }
  return [];
}

/** By sample, then by salt: observations of a further test that the salt cannot have given; undefined where the test adds none. */
type Added = readonly (readonly number[] | undefined)[];

/** No other assignment fits. */
const decided = (paths: Paths, rows: Separations[number], work: Work): boolean =>
  waysWithin(paths, rows, 0, work)?.[0] === 1;

/** By salt: how many observations that a further test adds for this salt the other cannot have given; undefined where it adds none. */
function clashesAdded(
  { cells, samples, sets }: PredictionTable,
  s: number,
  salt: number,
  further: readonly number[],
): number[] | undefined {
  const { salts, accepts, main } = sets[samples[s].set];
  const own = main[salts.indexOf(salt)];
  if (further.some((c) => cells[c].unsafeOn?.includes(salt))) return undefined;
  const seen = further.filter((c) => !cells[c].samples.includes(samples[s].label) && own[c] >= 0);
  if (seen.length === 0) return undefined;
  const clashes: number[] = [];
  for (const [row, other] of salts.entries())
    clashes[other] = seen.filter((c) => accepts[row][c] && !(accepts[row][c] & cells[c].agrees[own[c]])).length;
  return clashes;
}
