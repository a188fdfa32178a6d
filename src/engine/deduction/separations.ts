/** How far salts are apart: with how many observations of one salt each other salt clashes. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { candidates } from "./candidates.ts";

/** apart[s][u][v]: observations of sample s, were it salt u, that salt v cannot have given; by index of the salt. 0: v fits as well. */
export type Separations = readonly (readonly (readonly number[])[])[];

/** clashes[salt]: observations recorded for the sample that the salt cannot have given; no entry for a salt the sample cannot be. */
export function clashesBySalt(table: PredictionTable, record: TableRecord, sample: number): number[] {
  const by: number[] = [];
  for (const { salt, clashes } of candidates(table, record, sample)) by[salt] = clashes.length;
  return by;
}

/**
 * The record a class would write of a set of unknowns: the likeliest sight of each salt at every test that is done and predicted.
 * @param salts index of the salt of each sample
 */
export const recordOf = (table: PredictionTable, salts: readonly number[]): TableRecord =>
  Object.fromEntries(table.samples.map(({ label }, s) => [label, rowOf(table, s, salts[s])]));

/** The row of such a record for one sample. */
export function rowOf({ cells, samples, sets }: PredictionTable, s: number, salt: number): Record<string, number> {
  const { label, set } = samples[s];
  const main = sets[set].main[sets[set].salts.indexOf(salt)];
  return Object.fromEntries(
    cells.flatMap((cell, c) => (cell.samples.includes(label) && main[c] >= 0 ? [[cell.id, main[c]]] : [])),
  );
}

/** For every sample and every salt it may hold. Samples given alike on which the same tests are done share their figures. */
export function separationsOf(table: PredictionTable): Separations {
  const known = new Map<string, number[][]>();
  return table.samples.map(({ label, set }, s) => {
    const key = `${set} ${table.cells.map((cell) => Number(cell.samples.includes(label))).join("")}`;
    const apart = known.get(key) ?? [];
    if (known.has(key)) return apart;
    for (const salt of table.sets[set].salts) {
      apart[salt] = clashesBySalt(table, { [label]: rowOf(table, s, salt) }, s);
    }
    known.set(key, apart);
    return apart;
  });
}
