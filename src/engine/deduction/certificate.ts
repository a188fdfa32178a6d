/** What decided a practical: the fewest observations that are enough, and which tests cannot be spared. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { openAtBorder, otherSights } from "./border-sights.ts";
import type { Place } from "./conclusion.ts";
import { undecided } from "./deduce.ts";
import { type NearestOther, nearestOther } from "./nearest-other.ts";
import { pathsOf } from "./paths.ts";
import { type Proof, proofOfAnswers } from "./proof.ts";
import { rulesOf } from "./rules.ts";
import { clashesBySalt } from "./separations.ts";

export interface Certificate {
  /** The fewest observations that prove all answers; absent when the record leaves something open. */
  proof?: Proof;
  /**
   * How near another answer comes; absent when the record leaves something open, and when the samples are tied together in so many ways
   * that it would take too long.
   */
  nearest?: NearestOther;
  /**
   * Places of the record at which another sight that the answer's salt may show, as at the border, would leave something open; absent where
   * the nearest other answer is.
   */
  borders?: Place[];
  /** Lines of the record (with observations) without which more stays possible than with them, and the salts then left, by sample. */
  needed: { cell: string; left: Record<string, number[]> }[];
  /** Observations in the record. */
  observations: number;
}

/** Steps from one sample to the next, to find the nearest other answer: a few hundred are enough for three samples. */
const STEPS = 1_000_000;

/** For the record of an author: it must fit at least one salt for each sample. */
export function certificate(table: PredictionTable, record: TableRecord): Certificate {
  const left = undecided(table, record);
  const labels = table.samples.map(({ label }) => label);
  const proof = labels.every((label) => left[label].length === 1)
    ? proofOfAnswers(
        table,
        record,
        labels.map((label) => left[label][0]),
      )
    : undefined;
  const rows = labels.map((_, s) => clashesBySalt(table, record, s));
  const paths = pathsOf(table, rulesOf(table));
  const work = { left: STEPS };
  const nearest = proof && nearestOther(paths, rows, work);
  const sights = labels.map((label, s) => (nearest ? otherSights(table, record, s, left[label][0]) : []));
  const borders = nearest && openAtBorder(table, paths, rows, sights, work);
  const lines = table.cells.filter(({ id }) => labels.some((label) => record[label]?.[id] !== undefined));
  const needed = lines.flatMap(({ id }) => {
    const then = undecided(table, without(record, id));
    const more = labels.filter((label) => then[label].length > left[label].length);
    return more.length > 0 ? [{ cell: id, left: Object.fromEntries(more.map((label) => [label, then[label]])) }] : [];
  });
  const observations = labels.reduce((sum, label) => sum + Object.keys(record[label] ?? {}).length, 0);
  return { ...(proof && { proof }), ...(nearest && { nearest }), ...(borders && { borders }), needed, observations };
}

const without = (record: TableRecord, cell: string): TableRecord =>
  Object.fromEntries(
    Object.entries(record).map(([label, { [cell]: _, ...row }]): [string, Record<string, number>] => [label, row]),
  );
