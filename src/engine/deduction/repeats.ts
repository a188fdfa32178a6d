/** When a record fits nothing: the fewest observations that must be wrong. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import type { Candidate } from "./candidates.ts";
import type { Conclusion, Repeat } from "./conclusion.ts";
import { type ClashSet, fewestClashes } from "./fewest-clashes.ts";
import { joint } from "./joint.ts";
import { easeOf } from "./misreading.ts";
import type { Rule } from "./rules.ts";

/** Sets looked at before they are ordered, and sets told: no reader looks through more, and a wild record could have thousands. */
const FOUND = 200;
const TOLD = 24;

/**
 * All smallest sets of places whose observations, left blank, let some assignment agree, the most easily misread first, then by sample and
 * cell; at most 24. None when even a blank record fits nothing. The record itself must fit nothing.
 */
export function repeatsOf(
  table: PredictionTable,
  record: TableRecord,
  candidates: Candidate[][],
  rules: readonly Rule[],
): Pick<Conclusion, "repeats" | "moreRepeats"> {
  const all = fewestClashes(table, candidates, rules, FOUND)
    .map((blank) => leadingTo(table, record, candidates, rules, blank))
    .sort((a, b) => a.ease - b.ease)
    .map(({ repeat }) => repeat);
  return { repeats: all.slice(0, TOLD), ...(all.length > TOLD && { moreRepeats: true }) };
}

/** What blanking the cells of a set leads to, with the ease of the least likely slip among them. */
function leadingTo(
  table: PredictionTable,
  record: TableRecord,
  candidates: Candidate[][],
  rules: readonly Rule[],
  blank: ClashSet,
): { repeat: Repeat; ease: number } {
  const agreeing = candidates.map((list, s) =>
    list.filter(({ clashes }) => clashes.every((cell) => blank[s].includes(cell))),
  );
  const { left } = joint(
    table,
    agreeing.map((list) => list.map(({ salt }) => salt)),
    rules,
  );
  let ease = 0;
  const places = blank.flatMap((cells, s) => {
    const { label, set } = table.samples[s];
    return cells.map((c) => {
      const { id } = table.cells[c];
      // Those that needed this very place blank say what should have been there.
      const rows = agreeing[s].filter(({ salt, clashes }) => clashes.includes(c) && left[s].includes(salt));
      const slips = rows.map(({ row }) => {
        const expected = table.sets[set].main[row][c];
        return { expected, ease: easeOf(table, set, row, c, record[label][id], expected) };
      });
      ease = Math.max(ease, Math.min(...slips.map((slip) => slip.ease)));
      return { sample: label, cell: id, lookFor: [...new Set(slips.map(({ expected }) => expected))] };
    });
  });
  return {
    repeat: { places, leadsTo: Object.fromEntries(table.samples.map(({ label }, s) => [label, left[s]])) },
    ease,
  };
}
