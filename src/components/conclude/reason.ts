/** Why an ion is ruled out, in words. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { IonStanding, Reason } from "../../engine/deduction/conclusion.ts";
import type { EvidenceRow } from "./evidence.ts";

/** One reason as a clause; formulas in mhchem notation. */
function clause(table: PredictionTable, reason: Reason): string {
  switch (reason.by) {
    case "paper":
      return `the paper says: ${reason.statement}`;
    case "another sample":
      return `not decided before ${reason.sample} is put right`;
    case "cannot be":
      return reason.reason;
    case "observation":
      return `as ${table.salts[reason.salt].formula}, ${sight(table, reason.cell, reason.wouldShow, reason.fact)}`;
  }
}

function sight(table: PredictionTable, cell: string, reading: number, fact: number): string {
  const words = table.cells.find(({ id }) => id === cell)?.words[reading];
  return `at ${cell} would show: ${words}${fact < 0 ? "" : ` (${table.facts[fact]})`}`;
}

/**
 * The clearest reason. Best is one test at which every salt of the ion clashes and all would show the same; else a statement of the
 * paper, because a salt that only the paper excludes came closest; else the salt that clashes with the fewest observations stands
 * for all.
 *
 * @param row the ion's evidence
 * @param tests the test at each place of the row, as its place in the table's cells
 * @example "at a(ii) would show: dissolves, colourless solution (99 % as Al(OH)4-)"
 */
export function reasonFor(
  table: PredictionTable,
  ion: IonStanding,
  row: EvidenceRow,
  tests: readonly number[],
): string {
  const decisive = row.wouldShow.findIndex((readings) => readings.length === 1);
  if (decisive >= 0) {
    const cell = table.cells[tests[decisive]].id;
    const own = ion.reasons.find((reason) => reason.by === "observation" && reason.cell === cell);
    return sight(table, cell, row.wouldShow[decisive][0], own?.by === "observation" ? own.fact : -1);
  }
  const paper = ion.reasons.find((reason) => reason.by === "paper");
  if (paper) return `its own tests fit, but ${clause(table, paper)}`;
  const first =
    ion.reasons.find((reason) => reason.by === "observation" && reason.salt === row.closest) ?? ion.reasons[0];
  const others = new Set(ion.reasons.map((reason) => clause(table, reason))).size - 1;
  return `${clause(table, first)}${others > 0 ? `; its other salts are out too (${others})` : ""}`;
}
