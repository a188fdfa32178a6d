/** Amounts that no vessel can hold: the solver says that it has no answer, quickly, and never makes one up. */
import { describe, expect, test } from "vitest";
import { createSolver } from "../../../src/engine/equilibrium/solve.ts";

const solve = createSolver();
const { NaN: NONE, POSITIVE_INFINITY: ENDLESS } = Number;

describe("no answer for", () => {
  test.each<[string, Record<string, number>, number]>([
    ["a total that is no number", { "Na+": NONE, "Cl-": 0.1 }, 1],
    ["protons that are no number", { "H+": NONE, "Cl-": 0.1 }, 1],
    ["endless totals", { "Na+": ENDLESS, "Cl-": ENDLESS }, 1],
    ["endless alkali", { "H+": -ENDLESS }, 1],
    ["less than nothing of an ion", { "Na+": -0.1, "Cl-": 0.1 }, 1],
    ["no water", { "Na+": 0.1, "Cl-": 0.1 }, 0],
    ["less than no water", { "Na+": 0.1, "Cl-": 0.1 }, -1],
    ["water that is no number", { "Na+": 0.1, "Cl-": 0.1 }, NONE],
    ["endless water", { "Na+": 0.1, "Cl-": 0.1 }, ENDLESS],
    ["all water taken away by reagents", { H2O: -56 }, 1],
  ])("%s", (_, totals, waterKg) => {
    expect(solve({ totals, waterKg })).toMatchObject({ converged: false, reason: expect.stringMatching(/./) });
  });

  test("a temperature that is no number, or absolute zero", () => {
    for (const celsius of [NONE, -273.15, -300]) {
      expect(solve({ totals: { "Na+": 0.1, "Cl-": 0.1 }, waterKg: 1 }, { celsius }).converged).toBe(false);
    }
  });

  test("a gas pressure that is no number or not above zero", () => {
    const totals = { "Na+": 0.2, "CO3^2-": 0.1, "H+": 0.2 };
    for (const pressure of [NONE, -1, 0]) {
      expect(solve({ totals, waterKg: 1 }, { gases: { "CO2(g)": pressure } }).converged).toBe(false);
    }
  });
});

// Far beyond any solution (and beyond the activity law) the steps do not settle: 20 mol of magnesium carbonate to 1 kg of water.
test("a mixture it cannot settle is told by its components", () => {
  const beyond = solve({ totals: { "Mg^2+": 20, "CO3^2-": 20 }, waterKg: 1 });
  expect(beyond).toEqual({ converged: false, reason: "no equilibrium found for H+, CO3^2-, Mg^2+" });
});

test("says so in a short time, and solves the next mixture as if nothing had been", () => {
  const mixture = { totals: { "Ag+": 0.01, "NO3-": 0.01, "K+": 0.02, "I-": 0.02 }, waterKg: 1 };
  const before = solve(mixture);
  for (let n = 0; n < 100; n++) solve({ totals: { "Ag+": ENDLESS, "I-": 0.1, "NO3-": 0.1 }, waterKg: 1 });
  expect(solve(mixture)).toEqual(before);
});

test("strong solutions far outside the law still conserve what was put in", () => {
  const result = solve({ totals: { "Na+": 100, "Cl-": 100 }, waterKg: 1 });
  if (!result.converged) throw new Error(result.reason);
  expect(result.molality.get("Na+")).toBeCloseTo(100, 5);
});
