/** Steps worded for a sample: behaviour from the specification. */
import { expect, test } from "vitest";
import { benchOf, wordSteps, wordTest } from "../../../src/components/carry-out/step-words.ts";
import type { BenchPlan } from "../../../src/engine/planning/bench-plan.ts";
import type { GivenSample, Part, Step } from "../../../src/engine/practical.ts";

const MASS = { do: "take", mass: { g: 0.3 } } as Step;
const VOLUME = { do: "take", volume: { cm3: 1 } } as Step;
const Q = { label: "Q", given: "both" } as GivenSample;

test.each<[string, Step, string]>([
  ["what is weighed out is the solid", MASS, "Put 0.3 g of solid Q into"],
  ["what is measured by volume is the solution", VOLUME, "Put 1 cm3 of solution Q into"],
])("of a sample given as a solid and its solution, %s", (_, step, says) => {
  const part = { label: "a", title: "", tests: [{ steps: [step] }] } as unknown as Part;
  const bench = benchOf(part, [Q], { tubes: [], reagents: [] } as unknown as BenchPlan);
  expect(wordSteps([step], bench, false)[0]).toContain(says);
});

test.each<[Step[], string]>([
  [
    [MASS, { do: "heat solid", how: "strongly" }, { do: "test gas", with: "glowing splint" }],
    "the solid heated strongly, then glowing splint",
  ],
  [
    [MASS, { do: "heat solid", how: "strongly" }, { do: "test gas", with: "rod with ammonia" }],
    "the solid heated strongly, then rod with ammonia",
  ],
  [[{ do: "warm" }, { do: "test gas", with: "damp red litmus" }], "warmed, then damp red litmus"],
  [[{ do: "test gas", with: "limewater" }], "limewater"],
])("what a gas is tested with is part of the test's name", (steps, name) => {
  expect(wordTest({ steps }, { reagents: [] })).toBe(name);
});
