/** Where a reader's own record leads, a sentence for each sample; formulas in mhchem notation. */
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { candidates } from "../../engine/deduction/candidates.ts";
import { fitting } from "../../engine/deduction/undecided.ts";
import { type IonNames, saltWords } from "../names.ts";
import { list } from "../sentence.ts";

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
    if (fitting(candidates(table, record, s)).length === 0) return `${label} fits no salt the paper allows.`;
    if (salts.length === 0)
      return `${label} fits salts of its own, but not together with the other samples and what the paper says.`;
    if (salts.length === 1) {
      const salt = table.salts[salts[0]];
      return `${label} holds ${saltWords(salt, names)}, ${salt.formula}.`;
    }
    const formulas = salts.map((salt) => table.salts[salt].formula);
    const more = formulas.length - NAMED;
    return `${label} is still open: ${more > 1 ? `${formulas.slice(0, NAMED).join(", ")} or ${more} more` : list(formulas, "or")}.`;
  });
}
