/** Identities that follow from the constants alone: K from the activities of a solved state, and what dilution must do. */
import { describe, expect, test } from "vitest";
import { createSolver, type EquilibriumResult } from "../../../src/engine/equilibrium/solve.ts";
import { parseEquation, type Term } from "../../../src/engine/formula/equation.ts";
import { database, entries } from "./mixtures.ts";

const solve = createSolver();

function settled(totals: Record<string, number>, waterKg = 1): EquilibriumResult {
  const result = solve({ totals, waterKg });
  if (!result.converged) throw new Error(result.reason);
  return result;
}

/** Some of every component at once, charge made up with nitrate: every species and every solid of the constants has a value here. */
const everything: Record<string, number> = Object.fromEntries(database.components.map(({ id }) => [id, 1e-3]));
everything["H+"] = 0.02;
everything["NO3-"] += database.components.reduce((sum, { id, charge }) => sum + charge * everything[id], 0);

describe("K recovered from activities, all components together", () => {
  const state = settled(everything);
  // tests/reference/equilibrium-open.json, activityModel: A and the three forms, written out again here; I held at 0.5 in production.
  const A = 0.5100247894124;
  const I = Math.min(state.ionicStrength, 0.5);
  const logGamma = (z: number) => (z === 0 ? 0.1 * I : -A * z * z * (Math.sqrt(I) / (1 + Math.sqrt(I)) - 0.3 * I));
  const solutes = [...state.molality.values()].reduce((sum, molality) => sum + molality, 0);
  const logActivity = ({ formula: { text, charge } }: Term): number => {
    if (text === "H2O") return Math.log10(1 - 0.017 * solutes);
    return Math.log10(state.molality.get(text) ?? Number.NaN) + logGamma(charge);
  };
  const sideOf = (terms: readonly Term[]) => terms.reduce((sum, term) => sum + term.coefficient * logActivity(term), 0);

  const species = database.species.filter(({ row }) => row !== undefined);
  test.each(species.map((one) => [one.id, one] as const))("%s", (_, { row }) => {
    const { left, right } = parseEquation(row?.reaction ?? "");
    expect(sideOf(right) - sideOf(left)).toBeCloseTo(row?.logK ?? Number.NaN, 9);
  });

  test.each(database.phases.map((one) => [one.id, one] as const))("saturation of %s", (id, { row }) => {
    const { right, left } = parseEquation(row?.reaction ?? "");
    const quotient = sideOf(right) - sideOf(left.slice(1));
    expect(state.saturation.get(id)).toBeCloseTo(quotient - (row?.logK ?? Number.NaN), 9);
  });

  test("the state holds every species and tells of every phase", () => {
    expect([...state.molality.keys()].sort()).toEqual(database.species.map(({ id }) => id).sort());
    expect([...state.saturation.keys()].sort()).toEqual(database.phases.map(({ id }) => id).sort());
    expect(entries.size).toBeGreaterThan(200);
  });
});

describe("dilution", () => {
  const waters = [1, 2, 5, 10, 100, 1000];

  // The mass action law with one equilibrium, a^2 c / (1 - a) = K, gives da/dc < 0 (Ostwald's law of dilution).
  test("ionises more of a weak base", () => {
    const parts = waters.map((kg) => {
      const { molality } = settled({ NH3: 0.1 }, kg);
      return ((molality.get("NH4+") ?? 0) * kg) / 0.1;
    });
    expect(parts).toEqual([...parts].sort((a, b) => a - b));
    expect(parts[0]).toBeCloseTo(Math.sqrt(10 ** -4.75 / 0.1), 3); // pKb 4.75, any data book: 1.3 % at 0.1 mol/kg
  });

  test("brings a strong acid's pH up, and never past neutral", () => {
    const pH = waters.map((kg) => settled({ "H+": 0.1, "Cl-": 0.1 }, kg).pH);
    expect(pH).toEqual([...pH].sort((a, b) => a - b));
    expect(pH[pH.length - 1]).toBeLessThan(7);
  });

  // A saturated solution of one solid in pure water is the same solution however much there is of it.
  test("of a solid under its own solution leaves the solution as it is and takes the solid down in proportion", () => {
    const under = (kg: number) => settled({ "Ca^2+": 0.2, "SO4^2-": 0.2 }, kg);
    const [one, two, four] = [1, 2, 4].map(under);
    const solid = (result: EquilibriumResult) => result.phases.get("CaSO4*2H2O(s)") ?? Number.NaN;
    for (const [id, molality] of one.molality) {
      expect(two.molality.get(id) ?? 0).toBeCloseTo(molality, 10);
      expect(four.molality.get(id) ?? 0).toBeCloseTo(molality, 10);
    }
    const perKg = (solid(one) - solid(two)) / (two.waterKg - one.waterKg);
    expect((solid(two) - solid(four)) / (four.waterKg - two.waterKg)).toBeCloseTo(perKg, 9);
    expect(perKg).toBeCloseTo(0.0153, 2); // solubility of gypsum at 25 C, 2.1 g CaSO4/dm3, CRC Handbook from memory
  });
});
