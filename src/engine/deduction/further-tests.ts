/**
 * What other tests would settle where those of a paper leave a sample open: the best one, for each thing it may show the best one after
 * that, and so on until the sample is settled or nothing more helps. Each is the best next one; no shorter chain is looked for. Only tests
 * that leave less whatever they show are offered: one that might show the same for all salts left is not worth a reader's way to the bench.
 * None is offered that is unsafe on a salt the sample may still hold.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { waysOf } from "./joint.ts";
import { type Held, type NextTest, type Outcome, testsOf } from "./next-test.ts";
import { rulesOf } from "./rules.ts";
import { aPagesWork } from "./work.ts";

/** What is open, and the best test for it. */
export interface Remaining {
  /** Salts (indices) the sample may still hold: two or more. */
  open: number[];
  /** Absent when no test listed that is safe on all of them surely tells more. */
  test?: FurtherTest;
}

export interface FurtherTest extends NextTest {
  outcomes: FurtherOutcome[];
  atBorder: FurtherOutcome[];
}

export interface FurtherOutcome extends Outcome {
  /** What remains if this is seen; absent when it settles the sample. */
  after?: Remaining;
}

/**
 * For each sample that may hold several salts, what further tests on it would tell. Ways are counted over all samples together; a sample is
 * followed by its own tests only.
 * @param table what the further tests would show: a table of these tests for the same samples and the same paper. A salt that is not in a
 *   sample's set counts as one that may show anything.
 * @param left left[s]: salts (indices) that sample s may hold
 * @returns in the order of the samples; empty when all are settled, or when no choice of these salts obeys the paper
 * @throws TooMuchWork
 */
export function furtherTests(
  table: PredictionTable,
  left: readonly (readonly number[])[],
): { sample: string; remaining: Remaining }[] {
  const lists = left.map((list) => [...list]);
  const ways = waysOf(table, lists, rulesOf(table), aPagesWork());
  return table.samples.flatMap(({ label }, s) => {
    const held = lists[s].map((salt, i) => ({ salt, ways: ways[s][i] })).filter((one) => one.ways > 0);
    const remaining = remainingOf(table, s, held, []);
    return remaining ? [{ sample: label, remaining }] : [];
  });
}

/** In how many assignments a sample holds a salt does not change with its other salts, so the ways are counted once. */
function remainingOf(
  table: PredictionTable,
  s: number,
  held: readonly Held[],
  done: readonly string[],
): Remaining | undefined {
  if (held.length < 2) return undefined;
  const open = held.map(({ salt }) => salt);
  const ways = held.reduce((sum, one) => sum + one.ways, 0);
  const isSafe = (cell: string) =>
    !table.cells.some(({ id, unsafeOn }) => id === cell && unsafeOn?.some((salt) => open.includes(salt)));
  const isOpen = (cell: string) => !done.includes(cell) && isSafe(cell);
  const best = testsOf(table, s, held, isOpen).find(({ worst }) => worst < ways);
  if (!best) return { open };
  const followed = (outcome: Outcome): FurtherOutcome => {
    const those = held.filter(({ salt }) => outcome.salts.includes(salt));
    const after = remainingOf(table, s, those, [...done, best.cell]);
    return { ...outcome, ...(after && { after }) };
  };
  return { open, test: { ...best, outcomes: best.outcomes.map(followed), atBorder: best.atBorder.map(followed) } };
}

/** All branches of what remains, together. */
export interface Onward {
  /** The tests that may be needed, in the order in which they are first met. */
  cells: string[];
  /** Salts left together at the end of some branch: no test listed tells them apart. */
  alike: number[][];
}

export function onward(from: Remaining): Onward {
  const cells = new Set<string>();
  const alike = new Map<string, number[]>();
  for (let level = [from]; level.length > 0; ) {
    for (const { test, open } of level) {
      if (test) cells.add(test.cell);
      else alike.set(open.join(), open);
    }
    level = level.flatMap(({ test }) =>
      test ? [...test.outcomes, ...test.atBorder].flatMap(({ after }) => after ?? []) : [],
    );
  }
  return { cells: [...cells], alike: [...alike.values()] };
}
