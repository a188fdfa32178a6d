/** Kinetic gates and estimates: their data hold together, and they act when their needs are met and not before. */
import { describe, expect, test } from "vitest";
import { REDOX_GATES } from "../../../src/engine/constants/kinetic-gates.ts";
import { HYDROLYSIS_ENTHALPY } from "../../../src/engine/constants/log-k/estimates.ts";
import { reactions } from "../../../src/engine/constants/log-k/index.ts";
import { compileDatabase } from "../../../src/engine/equilibrium/species.ts";
import { imbalance, parseEquation } from "../../../src/engine/formula/equation.ts";
import { cm3, saltWith, show, take, test as tryGas, warm } from "./show.ts";

const { species, phases, components } = compileDatabase();
const dissolved = new Map(species.map((one) => [one.id, one]));
const solids = new Map(phases.map((one) => [one.id, one]));

describe.each(REDOX_GATES.map((gate) => [gate.id, gate] as const))("%s", (_, { equation, change, extent }) => {
  const { left, right } = parseEquation(equation);

  test("its equation balances", () => {
    expect(imbalance(parseEquation(equation))).toEqual({ elements: {}, charge: 0 });
  });

  test("its change is that of its equation, component by component", () => {
    const sum: Record<string, number> = {};
    const add = (id: string, moles: number) => {
      sum[id] = (sum[id] ?? 0) + moles;
    };
    for (const [terms, sign] of [[left, -1] as const, [right, 1] as const]) {
      for (const { coefficient, formula } of terms) {
        const water = formula.text === "H2O(l)";
        if (water) add("H2O", sign * coefficient);
        if (formula.text === "Al(s)" || water) continue; // foil is no component: it comes from outside
        const one = dissolved.get(formula.text.replace("(aq)", "")) ?? solids.get(formula.text);
        if (!one) throw new Error(`${formula.text} is no dissolved species`);
        for (const [index, moles] of one.nu) add(components[index].id, sign * coefficient * moles);
        add("H2O", sign * coefficient * one.water);
      }
    }
    expect(Object.fromEntries(Object.entries(sum).filter(([, moles]) => moles !== 0))).toEqual(change);
    expect(extent).toBeGreaterThan(0);
    expect(extent).toBeLessThanOrEqual(1);
  });
});

describe("aluminium, alkali and nitrate need one another and heat", () => {
  const foil = { add: "Al(s)", pieces: 1 };
  const litmus = tryGas("damp red litmus");
  const ammonia = (ion: string, ...steps: unknown[]) =>
    show(saltWith(ion), [take, ...steps, litmus])[0].readings[0].gas;

  test("together they give ammonia", () => {
    expect(ammonia("NO3-", cm3("NaOH(aq)", 2), foil, warm)).toMatchObject({ formula: "NH3" });
  });
  test.each([
    ["no foil", "NO3-", [cm3("NaOH(aq)", 2), warm]],
    ["no heat", "NO3-", [cm3("NaOH(aq)", 2), foil]],
    ["no nitrate", "Cl-", [cm3("NaOH(aq)", 2), foil, warm]],
  ])("%s, no ammonia", (_, ion, steps) => {
    expect(ammonia(ion, ...steps)).toBe(false);
  });
  test("without alkali the engine has no chemistry for the foil and says so", () => {
    expect(show(saltWith("NO3-"), [take, cm3("H2O(l)", 2), foil, warm, litmus])[0].readings).toEqual([]);
  });
});

test("the hydrolysis enthalpy is the mean for each proton over the complexes of one metal ion with a published enthalpy", () => {
  let enthalpy = 0;
  let protons = 0;
  for (const { reaction, phase, dH, dHSource } of reactions) {
    const { left, right } = parseEquation(reaction);
    const set = right.slice(1).find(({ formula }) => formula.text === "H+")?.coefficient ?? 0;
    const oneMetalIon = left.length === 2 && left[0].coefficient === 1;
    // "as log K": read in the same published source; the others are remembered or rounded estimates.
    if (phase !== "aqueous" || dH === null || dHSource !== "as log K" || set === 0 || !oneMetalIon) continue;
    enthalpy += dH;
    protons += set;
  }
  expect(protons).toBeGreaterThan(20);
  expect(Math.round(enthalpy / protons)).toBe(HYDROLYSIS_ENTHALPY.value);
});
