/**
 * Counts the ways of giving every sample one of its salts so that the rules of the paper hold, and says which salts take part. Ion by ion
 * where that is possible (ion-by-ion.ts), for it remembers least; otherwise sample by sample (trellis.ts). Both are exact.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { countIonByIon } from "./ion-by-ion.ts";
import type { Rule } from "./rules.ts";
import { atStart, fold, type Layer, rowOf, trellisOf } from "./trellis.ts";
import type { Work } from "./work.ts";

export interface Joint {
  /** Exact up to 2^53. */
  assignments: number;
  /** left[s]: salts that sample s holds in some assignment, in the order given. */
  left: number[][];
}

/**
 * @param salts salts[s]: what sample s may hold by its own observations.
 * @throws TooMuchWork
 */
export function joint(table: PredictionTable, salts: readonly number[][], rules: readonly Rule[], work: Work): Joint {
  const counted = countIonByIon(table, salts, rules, work);
  if (counted) {
    const { assignments, ways } = counted;
    return { assignments, left: salts.map((list, s) => list.filter((_, i) => ways[s][i] > 0)) };
  }
  const options = salts.map((list) => list.map((salt) => ({ salt, mark: 0, cost: 0 })));
  const trellis = trellisOf(table, options, rules, work);
  const values = fold(trellis, 0, 0, 1, (value, next, ways, block) => {
    block.through += next;
    return value + ways * next;
  });
  return {
    assignments: atStart(values),
    left: salts.map((list, s) => {
      const kept = new Set(trellis.blocks[s].flatMap((block) => (block.through > 0 ? block.salts : [])));
      return list.filter((salt) => kept.has(salt));
    }),
  };
}

/**
 * For each salt a sample may hold: in how many assignments it does; 0 when in none. Same order as `salts`. Exact up to 2^53.
 * Ions that every sample treats alike share their assignments evenly, so each block is counted once.
 * @throws TooMuchWork
 */
export function waysOf(
  table: PredictionTable,
  salts: readonly number[][],
  rules: readonly Rule[],
  work: Work,
): number[][] {
  const counted = countIonByIon(table, salts, rules, work);
  if (counted) return counted.ways;
  const options = salts.map((list) => list.map((salt) => ({ salt, mark: 0, cost: 0 })));
  const trellis = trellisOf(table, options, rules, work);
  const after = fold(trellis, 0, 0, 1, (value, next, ways) => value + ways * next);
  let before: Layer = [Float64Array.of(1)];
  for (let s = 0; s < trellis.length; s++) {
    const reached: Layer = [];
    before.forEach((row, cation) => {
      row?.forEach((ways0, anion) => {
        if (ways0 === 0) return;
        trellis.step(s, cation, anion, (c, a, ways, block) => {
          rowOf(trellis, reached, s + 1, c, 0)[a] += ways0 * ways;
          block.through += ways0 * ways * (after[s + 1][c]?.[a] ?? 0);
        });
      });
    });
    before = reached;
  }
  return salts.map((list, s) => {
    const ways = new Map(
      trellis.blocks[s].flatMap((block) => block.salts.map((salt) => [salt, block.through / block.salts.length])),
    );
    return list.map((salt) => ways.get(salt) ?? 0);
  });
}
