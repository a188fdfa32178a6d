/** Where a reader's own record leads, a sentence for each sample; formulas in mhchem notation. */
import * as say from "#words/practise-result.ts";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { candidates } from "../../engine/deduction/candidates.ts";
import { fitting } from "../../engine/deduction/undecided.ts";
import { type IonNames, saltWords } from "../names.ts";

/** Salts named before the rest is counted. */
const NAMED = 4;

/** @param left by sample: the salts that the record leaves; none where nothing fits it */
export function leadsOf(
  table: PredictionTable,
  record: TableRecord,
  left: Readonly<Record<string, readonly number[]>>,
  names: IonNames,
): string[] {
  return table.samples.map(({ label }, s) => {
    const salts = left[label] ?? [];
    if (fitting(candidates(table, record, s)).length === 0) return say.fitsNone(label);
    if (salts.length === 0) return say.fitsAlone(label);
    if (salts.length === 1) {
      const salt = table.salts[salts[0]];
      return say.holds(label, saltWords(salt, names), salt.formula);
    }
    const formulas = salts.map((salt) => table.salts[salt].formula);
    const more = formulas.length - NAMED;
    return more > 1 ? say.open(label, formulas.slice(0, NAMED), more) : say.open(label, formulas, 0);
  });
}
