/** Counts the ways of giving every sample one of its salts so that the rules of the paper hold, and says which salts take part. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Rule } from "./rules.ts";
import { fold, trellisOf } from "./trellis.ts";

export interface Joint {
  /** Exact up to 2^53. */
  assignments: number;
  /** left[s]: salts that sample s holds in some assignment, in the order given. */
  left: number[][];
}

/** @param salts salts[s]: what sample s may hold by its own observations. */
export function joint(table: PredictionTable, salts: number[][], rules: readonly Rule[]): Joint {
  const options = salts.map((list) => list.map((salt) => ({ salt, mark: 0, cost: 0 })));
  const trellis = trellisOf(table, options, rules);
  const values = fold(trellis, 0, 0, 1, (value, next, ways, block) => {
    if (next > 0) block.taken = true;
    return value + ways * next;
  });
  return {
    assignments: values[0][0][0],
    left: salts.map((list, s) => {
      const kept = new Set(trellis.blocks[s].flatMap((block) => (block.taken ? block.salts : [])));
      return list.filter((salt) => kept.has(salt));
    }),
  };
}
