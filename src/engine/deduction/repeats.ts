/** When a record fits nothing: the fewest observations that must be wrong, those most easily misread first. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import type { Candidate } from "./candidates.ts";
import type { Repeat, Repetition } from "./conclusion.ts";
import { type ClashSet, fewestClashes } from "./fewest-clashes.ts";
import { joint } from "./joint.ts";
import { easeOf } from "./misreading.ts";
import type { Rule } from "./rules.ts";
import type { Work } from "./work.ts";

/** Sets told: no reader looks through more, and a wild record could have thousands. */
const TOLD = 24;

/** A salt a sample may hold, with the least likely slip among those it needs. */
interface Slipped extends Candidate {
  ease: number;
}

/**
 * The smallest sets of places whose observations, left blank, let some assignment agree: the most easily misread first, then by sample and
 * cell; the first 24 of all there are. None when even a blank record fits nothing. The record itself must fit nothing.
 *
 * A set is as hard to misread as the least likely slip of the assignment that explains it best. So the sets that need no slip less likely
 * than a given one are those of the salts that need none: they are listed for one kind of slip after the other until enough are found.
 */
export function repeatsOf(
  table: PredictionTable,
  record: TableRecord,
  candidates: Candidate[][],
  rules: readonly Rule[],
  work: Work,
): Repetition {
  const [any] = fewestClashes(table, candidates, rules, 1, work);
  if (!any) return { repeats: [] };
  const size = any.flat().length;
  const slipped = withinReach(candidates, size).map((list, s) =>
    list.map((one): Slipped => ({ ...one, ease: hardest(table, record, s, one) })),
  );
  const eases = [...new Set(slipped.flat().map(({ ease }) => ease))].sort((a, b) => a - b);
  const found = new Map<string, ClashSet>();
  for (const ease of eases) {
    const within = slipped.map((list) => list.filter((one) => one.ease <= ease));
    // Sets of easier slips are listed again, so that many more are asked for.
    for (const set of fewestClashes(table, within, rules, found.size + TOLD + 1, work, size)) {
      const key = set.map((cells) => cells.join()).join(";");
      if (!found.has(key)) found.set(key, set);
    }
    if (found.size > TOLD) break;
  }
  const repeats = [...found.values()].slice(0, TOLD).map((blank) => leadingTo(table, candidates, rules, blank, work));
  return { repeats, ...(found.size > TOLD && { moreRepeats: true }) };
}

/** What may stand in an assignment of so many clashes, when every other sample clashes with as little as it can. */
function withinReach(candidates: readonly Candidate[][], clashes: number): Candidate[][] {
  const least = candidates.map((list) => Math.min(...list.map((one) => one.clashes.length)));
  const spare = clashes - least.reduce((sum, each) => sum + each, 0);
  return candidates.map((list, s) => list.filter((one) => one.clashes.length <= least[s] + spare));
}

/** The least likely slip that gives this record of a sample with this salt. */
function hardest(table: PredictionTable, record: TableRecord, s: number, { row, clashes }: Candidate): number {
  const { label, set } = table.samples[s];
  const eases = clashes.map((c) =>
    easeOf(table, set, row, c, record[label][table.cells[c].id], table.sets[set].main[row][c]),
  );
  return Math.max(0, ...eases);
}

/** What blanking the cells of a set leads to. */
function leadingTo(
  table: PredictionTable,
  candidates: Candidate[][],
  rules: readonly Rule[],
  blank: ClashSet,
  work: Work,
): Repeat {
  const agreeing = candidates.map((list, s) =>
    list.filter(({ clashes }) => clashes.every((cell) => blank[s].includes(cell))),
  );
  const { left } = joint(
    table,
    agreeing.map((list) => list.map(({ salt }) => salt)),
    rules,
    work,
  );
  const places = blank.flatMap((cells, s) => {
    const { label, set } = table.samples[s];
    return cells.map((c) => {
      // Those that needed this very place blank say what should have been there.
      const rows = agreeing[s].filter(({ salt, clashes }) => clashes.includes(c) && left[s].includes(salt));
      const lookFor = [...new Set(rows.map(({ row }) => table.sets[set].main[row][c]))];
      return { sample: label, cell: table.cells[c].id, lookFor };
    });
  });
  return { places, leadsTo: Object.fromEntries(table.samples.map(({ label }, s) => [label, left[s]])) };
}
