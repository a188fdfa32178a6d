/** What a practice is drawn from where there is little to draw from. */
import { expect, test } from "vitest";
import { ownSet } from "../../src/build/answer.ts";
import { practiceOf } from "../../src/build/practice.ts";
import { predictor } from "../../src/build/predictor.ts";
import { tabulate } from "../../src/engine/bench/tabulate.ts";
import { DEFAULT_TUBES } from "../../src/engine/constants/glassware.ts";
import { planBench } from "../../src/engine/planning/plan-bench.ts";
import { practical } from "../../src/engine/practical.ts";
import { phrase } from "../../src/engine/wording/phrase.ts";

const one = (salt: string, cations: string[]) =>
  practical.parse({
    title: "One solution and a flame",
    summary: "One solution of a nitrate, and a flame.",
    level: "foundation",
    minutes: 10,
    order: 1,
    samples: [{ label: "H", given: "solution", concentration: "0.1 mol/dm3", salt }],
    paper: { cations, anions: ["NO3-"] },
    parts: [{ label: "a", title: "Flame test", tests: [{ steps: [{ flame: true }] }] }],
    record: {},
  });

function drawsOf(of: ReturnType<typeof one>): string[] {
  const { table } = tabulate(of, predictor, phrase);
  const { draws } = practiceOf(of, planBench(of, table, DEFAULT_TUBES));
  return draws.map(([salt]) => table.salts[salt].formula);
}

test("the walkthrough's own set is drawn where there is no other", () => {
  expect(drawsOf(one("KNO3", ["K+"]))).toEqual(["KNO3"]);
});

test("nothing is drawn where every set would put lead into a flame, the walkthrough's own too", () => {
  expect(drawsOf(one("Pb(NO3)2", ["Pb^2+"]))).toEqual([]);
});

test("an answer that the paper does not allow is a fault, and no salt in its place", () => {
  const of = one("KNO3", ["K+"]);
  const { table } = tabulate(of, predictor, phrase);
  expect(() => ownSet(table, [{ ...of.samples[0], salt: "ZnSO4" }])).toThrow(
    "sample H: ZnSO4 is no salt this paper allows",
  );
});
