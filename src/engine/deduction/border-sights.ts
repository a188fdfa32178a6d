/**
 * What a decided set of salts owes to its likeliest sights: whether another sight that a salt may show, at one place of the record, would
 * leave the set open. A class whose bottle is a little weaker sees such a sight.
 */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { candidates } from "./candidates.ts";
import type { Place } from "./conclusion.ts";
import { waysWithin } from "./nearest-other.ts";
import type { Paths } from "./paths.ts";
import type { Work } from "./work.ts";

/** Another sight than the one recorded at a place of one sample. */
export interface OtherSight {
  /** Index of the cell. */
  cell: number;
  /** Salts (indices) that fit the sample's record with this sight in it; one at least does not fit it as it is. */
  fitting: readonly number[];
}

/**
 * The other sights that a salt may show at one place of a sample's record which a further salt would then fit. One that no further salt
 * fits can leave nothing open.
 */
export function otherSights(table: PredictionTable, record: TableRecord, s: number, salt: number): OtherSight[] {
  const { label, set } = table.samples[s];
  const { salts, accepts } = table.sets[set];
  const own = accepts[salts.indexOf(salt)];
  const all = candidates(table, record, s);
  return table.cells.flatMap(({ id, samples, agrees }, c) => {
    const recorded = record[label]?.[id];
    if (recorded === undefined || !samples.includes(label)) return [];
    const elsewhere = all.filter(({ clashes }) => clashes.every((at) => at === c));
    return [...agrees.keys()].flatMap((reading): OtherSight[] => {
      if (reading === recorded || !(own[c] & (1 << reading))) return [];
      const fits = elsewhere.filter(({ row }) => accepts[row][c] === 0 || accepts[row][c] & agrees[reading]);
      return fits.some(({ clashes }) => clashes.length > 0) ? [{ cell: c, fitting: fits.map((one) => one.salt) }] : [];
    });
  });
}

/**
 * The places at which another sight leaves more than the set itself, in the order of the samples, then of the table.
 * @param rows rows[s][salt]: how many observations of sample s the salt clashes with
 * @param others for each sample the other sights its salt may show
 * @returns undefined when the work allowed does not reach
 */
export function openAtBorder(
  { samples, cells }: PredictionTable,
  paths: Paths,
  rows: readonly (readonly number[])[],
  others: readonly (readonly OtherSight[])[],
  work: Work,
): Place[] | undefined {
  const open: Place[] = [];
  for (const [s, sights] of others.entries()) {
    const at = new Set<number>();
    for (const { cell, fitting } of sights) {
      if (at.has(cell)) continue;
      const own = rows[s].map((_, salt) => (fitting.includes(salt) ? 0 : 1));
      const ways = waysWithin(paths, rows.with(s, own), 0, work);
      if (!ways) return undefined;
      if (ways[0] > 1) at.add(cell);
    }
    open.push(...[...at].map((cell) => ({ sample: samples[s].label, cell: cells[cell].id })));
  }
  return open;
}
