/** That an order of work can be done, and that none is shorter. */
import fc from "fast-check";
import load from "highs";
import { describe, expect, test } from "vitest";
import type { Means, TubeWork } from "../../../../src/engine/planning/order-of-work/bench-work.ts";
import { after, beginning, type Moment, nextBar } from "../../../../src/engine/planning/order-of-work/moment.ts";
import { shortest } from "../../../../src/engine/planning/order-of-work/shortest.ts";
import { layOut } from "../../../../src/engine/planning/order-of-work/workload.ts";
import { faultsOf } from "./faults.ts";
import { meansWith, tubesOf } from "./random-work.ts";
import { canEndBy } from "./work-by-milp.ts";

describe("orders of random benches", () => {
  test("can be done as they stand", () => {
    fc.assert(
      fc.property(tubesOf(6), meansWith(2), (tubes, means) => {
        expect(faultsOf(tubes, means, shortest(tubes, means).bars)).toEqual([]);
      }),
      { numRuns: 1000, seed: 5 },
    );
  });

  test("are as short as a general-purpose solver of integer programmes finds them (HiGHS)", async () => {
    const highs = await load();
    const seen = { proved: 0, rinsed: 0 };
    fc.assert(
      fc.property(tubesOf(4), meansWith(2), (tubes, means) => {
        const { bars, end, least } = shortest(tubes, means);
        expect(least).toBe(end);
        expect(faultsOf(tubes, means, bars)).toEqual([]);
        expect(canEndBy(highs, tubes, means, end - 1)).toBe(false);
        expect(canEndBy(highs, tubes, means, end)).toBe(true);
        seen.proved++;
        if (bars.some(({ rinsed }) => rinsed)) seen.rinsed++;
      }),
      { numRuns: 120, seed: 6 },
    );
    expect(seen.proved).toBeGreaterThanOrEqual(100);
    expect(seen.rinsed).toBeGreaterThanOrEqual(40);
  }, 300_000);

  test("are as short as a general-purpose solver finds them when some turns and waits are long", async () => {
    const highs = await load();
    fc.assert(
      fc.property(tubesOf(4, { work: 12, wait: 20 }), meansWith(2), (tubes, means) => {
        const { bars, end, least } = shortest(tubes, means);
        expect(least).toBe(end);
        expect(faultsOf(tubes, means, bars)).toEqual([]);
        expect(canEndBy(highs, tubes, means, end - 1)).toBe(false);
      }),
      { numRuns: 40, seed: 9 },
    );
  }, 300_000);

  test("are as short as the best of all sequences, with tubes to be rinsed", () => {
    fc.assert(
      fc.property(tubesOf(4), meansWith(2), (tubes, means) => {
        fc.pre(tubes.reduce((sum, { turns }) => sum + turns.length, 0) <= 6);
        expect(shortest(tubes, means).end).toBe(bestOfAll(tubes, means));
      }),
      { numRuns: 400, seed: 7 },
    );
  });

  test("are never shorter than their bound when the search gives up", () => {
    fc.assert(
      fc.property(tubesOf(6), meansWith(2), fc.integer({ min: 1, max: 200 }), (tubes, means, most) => {
        const hasty = shortest(tubes, means, most);
        const { end } = shortest(tubes, means);
        expect(faultsOf(tubes, means, hasty.bars)).toEqual([]);
        expect(hasty.least).toBeLessThanOrEqual(end);
        expect(hasty.end).toBeGreaterThanOrEqual(end);
      }),
      { numRuns: 300, seed: 8 },
    );
  });
});

/** The shortest end over every sequence of turns, none left out. */
function bestOfAll(tubes: TubeWork[], means: Means): number {
  const load = layOut(tubes, means);
  let best = Number.POSITIVE_INFINITY;
  const go = (moment: Moment, end: number, left: number) => {
    if (left === 0) best = Math.min(best, end);
    tubes.forEach((_, tube) => {
      const bar = nextBar(load, moment, tube);
      if (!bar || bar.start === Number.POSITIVE_INFINITY) return;
      go(after(load, moment, bar), Math.max(end, bar.start + bar.work), left - 1);
    });
  };
  go(
    beginning(load),
    0,
    tubes.reduce((sum, { turns }) => sum + turns.length, 0),
  );
  return best;
}
