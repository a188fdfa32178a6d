/** What a teacher wants to know of one set of unknowns before giving it out. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { type Certificate, certificate } from "./certificate.ts";
import { undecided } from "./deduce.ts";
import { recordOf } from "./separations.ts";
import { type SettlingOrder, settlingOrder } from "./settling-order.ts";
import { type FurtherTest, type SettlingTest, settlingTests } from "./settling-tests.ts";

export interface AboutSet {
  /** Of the record that the set gives: the smallest proof of all answers, and the tests that cannot be spared. */
  certificate: Certificate;
  /** Of a decided set. */
  order?: SettlingOrder;
  /**
   * Of an undecided set: by sample, the salts (indices) that fit as well, where there are any; and what would settle it,
   * absent where looking for that takes too long.
   */
  open?: { alsoFits: Record<string, number[]>; settledBy?: SettlingTest[] };
}

/** Ways to settle an undecided set that are named. */
const SETTLING = 4;

/**
 * @param salts index of the salt of each sample; the set obeys the paper
 * @param tests tests that could be added, the preferred ones first
 */
export function aboutSet(table: PredictionTable, salts: readonly number[], tests: readonly FurtherTest[]): AboutSet {
  const record = recordOf(table, salts);
  const decided = certificate(table, record);
  if (decided.proof) return { certificate: decided, order: settlingOrder(table, salts) };
  const left = undecided(table, record);
  const others = table.samples.map(({ label }, s): [string, number[]] => [
    label,
    left[label].filter((salt) => salt !== salts[s]),
  ]);
  const alsoFits = Object.fromEntries(others.filter(([, fitting]) => fitting.length > 0));
  const settledBy = settlingTests(table, salts, tests, SETTLING);
  return { certificate: decided, open: { alsoFits, ...(settledBy && { settledBy }) } };
}
