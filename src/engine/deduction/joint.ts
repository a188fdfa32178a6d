/**
 * Counts the ways of giving every sample one of its salts so that the rules of the paper hold, and says which salts take part. Ion by ion
 * (ion-by-ion.ts), which remembers least, sample by sample (trellis.ts), which is always possible, or over pairs of partitions
 * (by-partition.ts), where statements on groups of both kinds would have much remembered. All are exact.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { countByPartition, partitionsOf } from "./by-partition.ts";
import { countIonByIon, type Ways } from "./ion-by-ion.ts";
import type { Rule } from "./rules.ts";
import { atStart, fold, type Layer, rowOf, trellisOf } from "./trellis.ts";
import { type Work, within } from "./work.ts";

export interface Joint {
  /** Exact up to 2^53. */
  assignments: number;
  /** left[s]: salts that sample s holds in some assignment, in the order given. */
  left: number[][];
}

type Question = readonly [table: PredictionTable, salts: readonly number[][], rules: readonly Rule[]];

/** Steps in which most records are answered. */
const SOON = 5_000;
/** Steps over pairs of partitions before which it is worth while to ask once more whether ion by ion takes fewer. */
const MANY = 50_000;

/**
 * @param salts salts[s]: what sample s may hold by its own observations.
 * @throws TooMuchWork
 */
export function joint(table: PredictionTable, salts: readonly number[][], rules: readonly Rule[], work: Work): Joint {
  const leftOf = ({ assignments, ways }: Ways) => ({
    assignments,
    left: salts.map((list, s) => list.filter((_, i) => ways[s][i] > 0)),
  });
  return answer([table, salts, rules], work, leftOf, jointBySample);
}

/**
 * For each salt a sample may hold: in how many assignments it does; 0 when in none. Same order as `salts`. Exact up to 2^53.
 * @throws TooMuchWork
 */
export function waysOf(
  table: PredictionTable,
  salts: readonly number[][],
  rules: readonly Rule[],
  work: Work,
): number[][] {
  return answer([table, salts, rules], work, ({ ways }) => ways, waysBySample);
}

/** By the way of counting that takes least work, or not much more. */
function answer<T>(
  question: Question,
  work: Work,
  from: (ways: Ways) => T,
  bySample: (question: Question, work: Work) => T,
): T {
  const byIonWithin = (steps: number) => within(work, steps, (some) => countIonByIon(...question, some));
  const atOnce = byIonWithin(SOON);
  if (atOnce) return from(atOnce);
  const soon = within(work, SOON, (some) => bySample(question, some));
  if (soon) return soon;
  const [table, salts, rules] = question;
  const partitions = within(work, work.left / 2, (some) => partitionsOf(salts.length, rules, some));
  if (!partitions || partitions.steps > MANY) {
    const byIon = byIonWithin(Math.min(partitions?.steps ?? Number.POSITIVE_INFINITY, work.left / 2));
    if (byIon) return from(byIon);
  }
  const byPartition =
    partitions &&
    partitions.steps < work.left / 2 &&
    within(work, work.left / 2, (some) => countByPartition(table, salts, rules, partitions, some));
  return byPartition ? from(byPartition) : bySample(question, work);
}

const trellisFor = ([table, salts, rules]: Question, work: Work) =>
  trellisOf(
    table,
    salts.map((list) => list.map((salt) => ({ salt, mark: 0, cost: 0 }))),
    rules,
    work,
  );

function jointBySample(question: Question, work: Work): Joint {
  const trellis = trellisFor(question, work);
  const values = fold(trellis, 0, 0, 1, (value, next, ways, block) => {
    block.through += next;
    return value + ways * next;
  });
  return {
    assignments: atStart(values),
    left: question[1].map((list, s) => {
      const kept = new Set(trellis.blocks[s].flatMap((block) => (block.through > 0 ? block.salts : [])));
      return list.filter((salt) => kept.has(salt));
    }),
  };
}

/** Ions that every sample treats alike share their assignments evenly, so each block is counted once. */
function waysBySample(question: Question, work: Work): number[][] {
  const trellis = trellisFor(question, work);
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
  return question[1].map((list, s) => {
    const ways = new Map(
      trellis.blocks[s].flatMap((block) => block.salts.map((salt) => [salt, block.through / block.salts.length])),
    );
    return list.map((salt) => ways.get(salt) ?? 0);
  });
}
