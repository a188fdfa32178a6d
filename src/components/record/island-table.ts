/** The table of predictions as the record's island needs it: what only Read and Prepare print is left out, for it weighs on every visit. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";

/** Gases stand in the plan, and the figure behind a reason in the list under Read. */
export function islandTable(table: PredictionTable): PredictionTable {
  return {
    ...table,
    cells: table.cells.map((cell) => ({ ...cell, comesOff: [] })),
    sets: table.sets.map((set) => ({
      ...set,
      cannotBe: set.cannotBe.map(({ salt, reason }) => ({ salt, reason: reason.split(": ")[0] })),
    })),
  };
}
