/** Whether the observations somebody names really prove an ion. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { undecided } from "./undecided.ts";

/**
 * What the sample's ions of the kind may be when of its own observations only those at `cells` are known. Those of the other samples stay, for
 * what the paper says may tie them together.
 * @returns each set of ions still possible, joined by " and "; one where they are proved
 */
export function ionsLeft(
  table: PredictionTable,
  record: TableRecord,
  sample: string,
  kind: "cations" | "anions",
  cells: readonly string[],
): string[] {
  const kept = Object.fromEntries(Object.entries(record[sample] ?? {}).filter(([cell]) => cells.includes(cell)));
  const left = undecided(table, { ...record, [sample]: kept })[sample] ?? [];
  return [...new Set(left.map((salt) => table.salts[salt][kind].join(" and ")))];
}
