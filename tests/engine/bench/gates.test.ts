/** Kinetic gates and estimates: their data hold together, and they act when their needs are met and not before. */
import { describe, expect, test } from "vitest";
import { HYDROLYSIS_ENTHALPY } from "../../../src/engine/constants/log-k/estimates.ts";
import { reactions } from "../../../src/engine/constants/log-k/index.ts";
import { parseEquation } from "../../../src/engine/formula/equation.ts";
import { cm3, saltWith, show, take, test as tryGas, warm } from "./show.ts";

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
