/** Ions against tests: what each recorded observation says of each ion, read off the table of predictions. */
import type { PredictionTable, SaltEntry, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Candidate } from "../../engine/deduction/candidates.ts";
import { plainly } from "../../engine/deduction/plainly.ts";

/** `border`: fits only as a borderline reading; `nothing`: not done, or every ion of this kind would look the same there. */
export type Evidence = "fits" | "border" | "clashes" | "nothing";

export interface EvidenceRow {
  ion: string;
  /** One for each test asked about. */
  tests: Evidence[];
  /** For each test at which the ion clashes: the different readings its salts would show first; empty elsewhere. */
  wouldShow: number[][];
  /** The salt of the ion that clashes with the fewest observations, as its place in the table; undefined when it has no salt. */
  closest: number | undefined;
}

/** Places in the table's cells of the tests that are done on a sample. */
export function testsOf(table: PredictionTable, sample: string): number[] {
  return table.cells.flatMap((cell, index) => (cell.samples.includes(sample) ? [index] : []));
}

/** Whether the ion stands in the salt. */
export const holds = ({ cations, anions }: SaltEntry, ion: string): boolean =>
  cations.includes(ion) || anions.includes(ion);

/** What one salt says counts for its ion, in this order. */
const STRONGEST = ["fits", "border", "clashes"] as const;

/**
 * An ion fits a test when some salt of it fits there, and clashes when none does.
 * @param all every salt the sample may hold, held against its observations
 * @param cells the tests asked about, as places in the table's cells
 */
export function evidence(
  table: PredictionTable,
  record: TableRecord,
  sample: string,
  all: readonly Candidate[],
  ions: readonly string[],
  cells: readonly number[] = testsOf(table, sample),
): EvidenceRow[] {
  const place = table.samples.findIndex((each) => each.label === sample);
  const set = table.sets[table.samples[place].set];
  const says = (of: Candidate, cell: number): Evidence => {
    const { id, agrees } = table.cells[cell];
    const seen = record[sample]?.[id];
    if (seen === undefined || set.accepts[of.row][cell] === 0) return "nothing";
    if (of.clashes.includes(cell)) return "clashes";
    return plainly(set, of.row, cell) & agrees[seen] ? "fits" : "border";
  };
  const rows = ions.map((ion): EvidenceRow => {
    const own = all.filter(({ salt }) => holds(table.salts[salt], ion));
    const tests = cells.map((cell): Evidence => {
      const said = own.map((one) => says(one, cell));
      return STRONGEST.find((one) => said.includes(one)) ?? "nothing";
    });
    const wouldShow = cells.map((cell, test) => {
      if (tests[test] !== "clashes") return [];
      return [...new Set(own.map(({ row }) => set.main[row][cell]).filter((reading) => reading >= 0))];
    });
    const [closest] = own.toSorted((a, b) => a.clashes.length - b.clashes.length);
    return { ion, tests, wouldShow, closest: closest?.salt };
  });
  // Where all ions of the kind fit, the test was not able to tell: no evidence for any of them.
  cells.forEach((_, test) => {
    if (rows.every((row) => row.tests[test] !== "clashes")) for (const row of rows) row.tests[test] = "nothing";
  });
  return rows;
}
