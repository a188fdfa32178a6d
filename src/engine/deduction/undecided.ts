/** What a record leaves for each sample, without the reasons: apart from `deduce`, for a page that needs no more is lighter by half. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { type Candidate, candidates } from "./candidates.ts";
import { joint } from "./joint.ts";
import { rulesOf } from "./rules.ts";
import { aPagesWork } from "./work.ts";

/** Salts that clash with none of the sample's own observations. */
export const fitting = (list: readonly Candidate[]): number[] =>
  list.filter(({ clashes }) => clashes.length === 0).map(({ salt }) => salt);

/**
 * Salts left for each sample, by letter. A sample is determined when one salt is left; none is left when nothing fits the record.
 * @throws TooMuchWork
 */
export function undecided(table: PredictionTable, record: TableRecord, work = aPagesWork()): Record<string, number[]> {
  const salts = table.samples.map((_, s) => fitting(candidates(table, record, s)));
  const { left } = joint(table, salts, rulesOf(table), work);
  return Object.fromEntries(table.samples.map(({ label }, s) => [label, left[s]]));
}
