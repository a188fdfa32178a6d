/** What the standard tests would show for the salts that the tests of a paper may leave together. */
import type { PredictionSet, PredictionTable } from "../bench/prediction-table.ts";
import type { Predictor } from "../bench/predictor.ts";
import type { SimpleSalt } from "../bench/salt.ts";
import { tabulate } from "../bench/tabulate.ts";
import { STANDARD_TESTS } from "../constants/standard-tests.ts";
import { standardParts } from "../practical/standard-parts.ts";
import { type Cell, cellsOf, type Paper, type Procedure } from "../practical.ts";
import { phrase } from "../wording/phrase.ts";
import { confusable } from "./confusable.ts";

export interface FurtherPredictions {
  /** The standard tests that tell some of the salts apart; samples, paper and salts as in the paper's own table. */
  table: PredictionTable;
  /** The tests, in the order of the table's cells. */
  cells: Cell[];
}

/** So many tests that surely tell a pair apart are enough: of two the one can be chosen that tells more of the others as well. */
const ENOUGH = 2;

/**
 * Tests are taken in the order of the list, so one that needs a toxic reagent only where those before it do not do.
 * @param table the paper's own tests
 * @param tests each standard test as the parts it makes of these samples
 * @returns undefined when these tests never leave two salts together, or no standard test would tell them apart
 */
export function furtherPredictions(
  { samples, paper }: Pick<Paper, "samples" | "paper">,
  table: PredictionTable,
  predictor: Predictor,
  tests: readonly Procedure[] = STANDARD_TESTS.map((test) => standardParts(samples, [test])),
): FurtherPredictions | undefined {
  const pairs = confusable(table);
  const formulas = new Set(pairs.flat().map((salt) => table.salts[salt].formula));
  const isWanted = ({ formula }: Pick<SimpleSalt, "formula">) => formulas.has(formula);
  // What stands on a border takes most of the time, and is looked for only where a test tells something without it.
  const plainly = { ...predictor, border: () => new Map() };
  const told = new Map(pairs.map((pair) => [String(pair), 0]));
  const useful = tests.flatMap((parts) => {
    const predicted = (by: Predictor) => {
      try {
        return tabulate({ samples, paper, parts }, by, phrase, isWanted).table;
      } catch (error) {
        // Too many sights for one line of a record: no test for so many salts.
        if (error instanceof RangeError) return undefined;
        throw error;
      }
    };
    const plain = predicted(plainly);
    if (!plain) return [];
    const wanted = [...told].flatMap(([pair, times]) => (times < ENOUGH ? [pair] : []));
    if (apartIn(plain, wanted).length === 0) return [];
    const full = predicted(predictor);
    const apart = full ? apartIn(full, wanted) : [];
    if (!full || apart.length === 0) return [];
    for (const pair of apart) told.set(pair, (told.get(pair) ?? 0) + 1);
    return [{ table: full, cells: cellsOf(parts) }];
  });
  if (useful.length === 0) return undefined;
  const tables = useful.map((one) => one.table);
  return {
    table: {
      ...table,
      facts: [],
      cells: tables.flatMap(({ cells }) => cells),
      sets: table.sets.map((_, set) => sideBySide(tables.map(({ sets }) => sets[set]))),
    },
    cells: useful.flatMap(({ cells }) => cells),
  };
}

/** Of some pairs those that a table's tests tell apart whatever is seen; none with a salt that one of the tests is unsafe on. */
function apartIn(table: PredictionTable, pairs: readonly string[]): string[] {
  const together = new Set(confusable(table).map(String));
  const unsafe = new Set(table.cells.flatMap(({ unsafeOn = [] }) => unsafeOn.map(String)));
  return pairs.filter((pair) => !together.has(pair) && !pair.split(",").some((salt) => unsafe.has(salt)));
}

/** Sets of the same salts, their cells one after the other. */
function sideBySide(sets: readonly PredictionSet[]): PredictionSet {
  const [{ salts }] = sets;
  const before = sets.map((_, at) => sets.slice(0, at).reduce((sum, { main }) => sum + (main[0]?.length ?? 0), 0));
  return {
    salts,
    accepts: salts.map((_, row) => sets.flatMap(({ accepts }) => accepts[row])),
    main: salts.map((_, row) => sets.flatMap(({ main }) => main[row])),
    atBorder: sets.flatMap(({ atBorder }, at) =>
      atBorder.map(([row, cell, mask]): [number, number, number] => [row, cell + before[at], mask]),
    ),
    facts: [],
    cannotBe: [],
  };
}
