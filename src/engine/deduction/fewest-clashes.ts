/**
 * The assignments that clash with the fewest observations. Giving a sample a salt costs the recorded cells it clashes with; the cheapest
 * assignments that obey the paper name the smallest sets. Exact: first the least cost by dynamic programming over the samples, then only
 * branches that reach it.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Candidate } from "./candidates.ts";
import type { Rule } from "./rules.ts";
import { atStart, fold, type Layer, type Trellis, trellisOf } from "./trellis.ts";
import type { Work } from "./work.ts";

/** Order of the paper for sets of cells of one sample; a set that ends first comes later, for its next place is of a later sample. */
function byPaper(a: number[], b: number[]): number {
  const at = a.findIndex((cell, index) => cell !== b[index]);
  if (at < 0) return b.length > a.length ? 1 : 0;
  return b[at] === undefined ? -1 : a[at] - b[at];
}

/** Cells (indices) that some assignment clashes with, by sample. */
export type ClashSet = number[][];

/**
 * The smallest sets of clashes among all assignments that obey the paper, by sample, then by cell; at most `most`. None when no assignment
 * obeys it.
 * @param candidates candidates[s]: what sample s may hold, with the cells each clashes with
 * @param limit sets of more cells count as none
 * @throws TooMuchWork
 */
export function fewestClashes(
  table: PredictionTable,
  candidates: readonly Candidate[][],
  rules: readonly Rule[],
  most: number,
  work: Work,
  limit = Number.POSITIVE_INFINITY,
): ClashSet[] {
  if (candidates.some((list) => list.length === 0)) return [];
  // marks[s]: the different sets of clashing cells of sample s, in the order of the paper.
  const marks = candidates.map((list) =>
    [...new Map(list.map(({ clashes }) => [clashes.join(), clashes])).values()].sort(byPaper),
  );
  const lengths = marks.map((sets) => sets.map(({ length }) => length));
  const cheapest = lengths.map((all) => Math.min(...all));
  const widest = lengths.reduce((sum, all, s) => sum + Math.max(...all) - cheapest[s], 0);
  const allowed = limit - cheapest.reduce((sum, cost) => sum + cost, 0);
  for (let slack = 0; ; slack = slack * 2 || 1) {
    // Costs above each sample's cheapest; what costs more than the slack cannot stand in an answer within it.
    const options = candidates.map((list, s) => {
      const keys = marks[s].map((set) => set.join());
      return list
        .map(({ salt, clashes }) => ({ salt, mark: keys.indexOf(clashes.join()), cost: clashes.length - cheapest[s] }))
        .filter(({ cost }) => cost <= slack);
    });
    const trellis = trellisOf(table, options, rules, work);
    const rest = fold(trellis, slack, Number.POSITIVE_INFINITY, 0, (value, next, _ways, block) =>
      Math.min(value, next + block.cost),
    );
    const least = atStart(rest);
    if (least <= slack) return least <= allowed ? smallest(trellis, rest, marks, least, most) : [];
    if (slack >= widest || slack >= allowed) return [];
  }
}

/** Follows only branches that stay within `budget`. */
function smallest(trellis: Trellis, rest: Layer[], marks: number[][][], budget: number, most: number): ClashSet[] {
  const found: ClashSet[] = [];
  const descend = (states: [cation: number, anion: number][], budget: number, chosen: number[][]) => {
    const s = chosen.length;
    if (s === trellis.length) {
      found.push(chosen);
      return;
    }
    const reached = marks[s].map(() => ({ cost: 0, states: new Map<string, [number, number]>() }));
    for (const [cation, anion] of states) {
      trellis.step(s, cation, anion, (c, a, _ways, block) => {
        for (const { mark, cost } of block.marks) {
          if (!(cost + (rest[s + 1][c]?.[a] ?? Number.NaN) <= budget)) continue;
          reached[mark].cost = cost;
          reached[mark].states.set(`${c} ${a}`, [c, a]);
        }
      });
    }
    reached.forEach(({ cost, states }, mark) => {
      if (states.size > 0 && found.length < most)
        descend([...states.values()], budget - cost, [...chosen, marks[s][mark]]);
    });
  };
  descend([[0, 0]], budget, []);
  return found;
}
