/** When a record fits nothing: the fewest observations that must be wrong. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Candidate } from "./candidates.ts";
import type { Repeat } from "./conclusion.ts";
import { type ClashSet, fewestClashes } from "./fewest-clashes.ts";
import { joint } from "./joint.ts";
import type { Rule } from "./rules.ts";

/** No reader looks through more, and a wild record could have thousands. */
const MOST = 24;

/**
 * All smallest sets of places whose observations, left blank, let some assignment agree; by sample, then by cell; at most 24. None
 * when even a blank record fits nothing. The record itself must fit nothing.
 */
export const repeatsOf = (table: PredictionTable, candidates: Candidate[][], rules: readonly Rule[]): Repeat[] =>
  fewestClashes(table, candidates, rules, MOST).map((blank) => leadingTo(table, candidates, rules, blank));

function leadingTo(table: PredictionTable, candidates: Candidate[][], rules: readonly Rule[], blank: ClashSet): Repeat {
  const salts = candidates.map((list, s) =>
    list.filter(({ clashes }) => clashes.every((cell) => blank[s].includes(cell))).map(({ salt }) => salt),
  );
  const { left } = joint(table, salts, rules);
  return {
    places: blank.flatMap((cells, s) =>
      cells.map((cell) => ({ sample: table.samples[s].label, cell: table.cells[cell].id })),
    ),
    leadsTo: Object.fromEntries(table.samples.map(({ label }, s) => [label, left[s]])),
  };
}
