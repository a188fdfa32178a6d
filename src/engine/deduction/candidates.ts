/** Each salt a sample may hold, held against what was recorded for that sample alone. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { mayHaveBeen } from "./something-else.ts";

export interface Candidate {
  /** Index into the table's salts. */
  salt: number;
  /** Place in its set, the row of `accepts` and `facts`. */
  row: number;
  /** Indices of the recorded cells it cannot have given, in the order of the paper. Empty: it fits. */
  clashes: number[];
}

/**
 * The salts of the sample's set with the recorded cells each clashes with. A cell that is blank, not done on the sample, or without a
 * prediction for the salt clashes with nothing; something else than the readings clashes with every salt that has one.
 * @throws RangeError when the record names a reading the cell does not have.
 */
export function candidates(table: PredictionTable, record: TableRecord, sample: number): Candidate[] {
  const { label, set } = table.samples[sample];
  const { salts, accepts } = table.sets[set];
  const seen = table.cells.flatMap((cell, index) => {
    const reading = record[label]?.[cell.id];
    if (reading === undefined || !cell.samples.includes(label)) return [];
    return [{ index, mask: mayHaveBeen(cell, reading, label) }];
  });
  return salts.map((salt, row) => ({
    salt,
    row,
    clashes: seen
      .filter(({ index, mask }) => accepts[row][index] && !(accepts[row][index] & mask))
      .map(({ index }) => index),
  }));
}
