/**
 * The smallest proof as an integer programme, for a general-purpose solver: as few observations as possible, of which every assignment
 * that would disprove it, all written down, clashes with one.
 */
import type load from "highs";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { allowed, couldGive, placesOf } from "./brute-force.ts";

/** The solver, loaded. */
export type Highs = Awaited<ReturnType<typeof load>>;

/** The recorded places (by number) that each assignment without the ion in sample `s` clashes with. */
export function clashesWithout(
  table: PredictionTable,
  record: TableRecord,
  s: number,
  kind: "cations" | "anions",
  ion: string,
): number[][] {
  const places = placesOf(table, record).map(({ sample, cell }) => {
    const at = table.samples.findIndex(({ label }) => label === sample);
    const c = table.cells.findIndex(({ id }) => id === cell);
    return { at, c, set: table.sets[table.samples[at].set], cell: table.cells[c], seen: record[sample][cell] };
  });
  return allowed(table, {})
    .filter((way) => !table.salts[way[s]][kind].includes(ion))
    .map((way) =>
      places.flatMap(({ at, c, set, cell, seen }, p) =>
        couldGive(set.accepts[set.salts.indexOf(way[at])][c], cell, seen) ? [] : [p],
      ),
    );
}

/** The least number of variables among 0 and 1 that covers every row, as a model in the CPLEX LP format; undefined when nothing is asked. */
export function coverModel(rows: readonly number[][]): string | undefined {
  const used = [...new Set(rows.flat())];
  if (used.length === 0) return undefined;
  return [
    "Minimize",
    ` obj: ${used.map((x) => `x${x}`).join(" + ")}`,
    "Subject To",
    ...rows.map((row, r) => ` r${r}: ${row.map((x) => `x${x}`).join(" + ")} >= 1`),
    "Binary",
    ` ${used.map((x) => `x${x}`).join(" ")}`,
    "End",
  ].join("\n");
}

/** @throws Error when the solver does not reach the optimum */
export function leastCover(highs: Highs, model: string): number {
  const { Status, ObjectiveValue } = highs.solve(model);
  if (Status !== "Optimal") throw new Error(`the integer programme ended ${Status}`);
  return Math.round(ObjectiveValue);
}
