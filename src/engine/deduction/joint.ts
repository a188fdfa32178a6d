/**
 * Counts the ways of giving every sample one of its salts so that the rules of the paper hold, and says which salts take part. Ion by ion
 * where that is possible (ion-by-ion.ts), for it remembers least; otherwise sample by sample (trellis.ts). Both are exact.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { countIonByIon } from "./ion-by-ion.ts";
import type { Rule } from "./rules.ts";
import { type Block, fold, trellisOf } from "./trellis.ts";

export interface Joint {
  /** Exact up to 2^53. */
  assignments: number;
  /** left[s]: salts that sample s holds in some assignment, in the order given. */
  left: number[][];
}

/** @param salts salts[s]: what sample s may hold by its own observations. */
export function joint(table: PredictionTable, salts: readonly number[][], rules: readonly Rule[]): Joint {
  const counted = countIonByIon(table, salts, rules);
  if (counted) {
    const { assignments, ways } = counted;
    return { assignments, left: salts.map((list, s) => list.filter((_, i) => ways[s][i] > 0)) };
  }
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

/**
 * For each salt a sample may hold: in how many assignments it does; 0 when in none. Same order as `salts`. Exact up to 2^53.
 * Ions that every sample treats alike share their assignments evenly, so each block is counted once.
 */
export function waysOf(table: PredictionTable, salts: readonly number[][], rules: readonly Rule[]): number[][] {
  const counted = countIonByIon(table, salts, rules);
  if (counted) return counted.ways;
  const options = salts.map((list) => list.map((salt) => ({ salt, mark: 0, cost: 0 })));
  const trellis = trellisOf(table, options, rules);
  const after = fold(trellis, 0, 0, 1, (value, next, ways) => value + ways * next);
  const through = new Map<Block, number>();
  let before = new Map<string, { cation: number; anion: number; ways: number }>([
    ["", { cation: 0, anion: 0, ways: 1 }],
  ]);
  for (let s = 0; s < trellis.length; s++) {
    const reached: typeof before = new Map();
    for (const { cation, anion, ways: ways0 } of before.values()) {
      trellis.step(s, cation, anion, (c, a, ways, block) => {
        const key = `${c} ${a}`;
        const at = reached.get(key) ?? { cation: c, anion: a, ways: 0 };
        at.ways += ways0 * ways;
        reached.set(key, at);
        through.set(block, (through.get(block) ?? 0) + ways0 * ways * (after[s + 1][c]?.[a] ?? 0));
      });
    }
    before = reached;
  }
  return salts.map((list, s) => {
    const ways = new Map(
      trellis.blocks[s].flatMap((block) =>
        block.salts.map((salt) => [salt, (through.get(block) ?? 0) / block.salts.length]),
      ),
    );
    return list.map((salt) => ways.get(salt) ?? 0);
  });
}
