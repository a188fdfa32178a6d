/** In which order the samples of a decided set settle: which can be told from their own tests, and which wait for another. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { candidates } from "./candidates.ts";
import { joint } from "./joint.ts";
import { rulesOf } from "./rules.ts";
import { recordOf } from "./separations.ts";
import { aPagesWork } from "./work.ts";

export interface SettlingOrder {
  /**
   * Letters, in rounds: a sample of the first is told from its own observations and what the paper says, one of a later round when those of
   * the rounds before are known too. Every observation of the sample is taken, none of those not settled yet.
   */
  rounds: string[][];
  /** Samples that only all observations together settle. */
  together: string[];
}

/**
 * @param salts a set that the tests decide, index of the salt of each sample
 * @throws TooMuchWork
 */
export function settlingOrder(table: PredictionTable, salts: readonly number[]): SettlingOrder {
  const work = aPagesWork();
  const rules = rulesOf(table);
  const record = recordOf(table, salts);
  const any = table.samples.map(({ set }) => table.sets[set].salts);
  const own = any.map((_, s) =>
    candidates(table, record, s).flatMap(({ salt, clashes }) => (clashes.length === 0 ? [salt] : [])),
  );
  const settled = new Set<number>();
  const rounds: string[][] = [];
  for (;;) {
    const known = any.map((all, s) => (settled.has(s) ? [salts[s]] : all));
    const next = [...any.keys()].filter(
      (s) => !settled.has(s) && joint(table, known.with(s, own[s]), rules, work).left[s].length === 1,
    );
    if (next.length === 0) break;
    for (const s of next) settled.add(s);
    rounds.push(next.map((s) => table.samples[s].label));
  }
  return { rounds, together: table.samples.flatMap(({ label }, s) => (settled.has(s) ? [] : [label])) };
}
