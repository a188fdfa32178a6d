/** Papers whose statements tie the samples together in more ways than a page should follow. */
import { describe, expect, test } from "vitest";
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";
import { deduce, undecided } from "../../../src/engine/deduction/deduce.ts";
import { furtherTests } from "../../../src/engine/deduction/further-tests.ts";
import { nextTests } from "../../../src/engine/deduction/next-test.ts";
import { proofOfIon } from "../../../src/engine/deduction/proof.ts";
import { toTheEnd } from "../../../src/engine/deduction/to-the-end.ts";
import { aPagesWork, STEPS, TooMuchWork } from "../../../src/engine/deduction/work.ts";
import { freeTable } from "./free-table.ts";
import { HOSTILE, uneven } from "./hostile-paper.ts";

const { ions, letters, said: all } = HOSTILE;

describe("eight samples with five groups that differ, five ions that must be there, and both numbers in all", () => {
  const table = freeTable(ions, letters, all, uneven);
  const left = table.samples.map(({ set }) => table.sets[set].salts);
  test.each<[string, () => unknown]>([
    ["what follows", () => deduce(table, {})],
    ["what is left", () => undecided(table, {})],
    ["a proof", () => proofOfIon(table, {}, 0, "cations", "Zn^2+")],
    ["what to test next", () => nextTests(table, {})],
    ["what another test would tell", () => furtherTests(table, left)],
  ])("%s is refused, not worked at without end", (_what, ask) => {
    expect(ask).toThrow(TooMuchWork);
  });

  test("where the tests lead is left open", () => {
    expect(toTheEnd(table, {}, 2, 60)).toBeUndefined();
  });

  test("no more steps are taken than allowed, and always as many", () => {
    const taken = () => {
      const work = aPagesWork();
      expect(() => deduce(table, {}, work)).toThrow(TooMuchWork);
      return STEPS - work.left;
    };
    const first = taken();
    // The last handful of steps is asked for at once.
    expect(first).toBeLessThan(STEPS * 1.01);
    expect(taken()).toBe(first);
  });
});

/** In how many steps it is answered, or that it is not. */
function stepsOf(table: PredictionTable, ask: typeof deduce | typeof nextTests): number {
  const work = aPagesWork();
  ask(table, {}, work);
  return STEPS - work.left;
}

test.each([
  ["no statements", {}],
  ["a number of each kind in all", { inAll: { cations: 5, anions: 4 } }],
  ["groups of one kind", { share: [{ samples: ["A", "B"], ion: "cation" }], differ: all.differ.slice(0, 2) }],
  ["one sample holds ammonium", { contains: [{ ion: "NH4+", count: 1 }] }],
])("a paper of six samples is followed: %s", (_says, said) => {
  const table = freeTable(ions, "ABCDEF", said, uneven);
  for (const ask of [deduce, nextTests]) expect(stepsOf(table, ask)).toBeLessThan(STEPS);
});
