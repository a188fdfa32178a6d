import { describe, expect, test } from "vitest";
import { componentsOf } from "../../../src/engine/bench/composition.ts";
import { ionsOf, saltOf } from "../../../src/engine/bench/salt.ts";
import { ANIONS, CATIONS } from "../../../src/engine/constants/ions.ts";
import { isBalanced, parseEquation } from "../../../src/engine/formula/equation.ts";

describe("the formula of two ions", () => {
  test.each([
    ["Na+", "Cl-", "NaCl"],
    ["Al^3+", "SO4^2-", "Al2(SO4)3"],
    ["NH4+", "SO4^2-", "(NH4)2SO4"],
    ["NH4+", "NO3-", "NH4NO3"],
    ["Fe^2+", "Cl-", "FeCl2"],
    ["Fe^3+", "NO3-", "Fe(NO3)3"],
    ["Ag+", "CO3^2-", "Ag2CO3"],
    ["Cu^2+", "SO4^2-", "CuSO4"],
  ])("%s and %s: %s", (cation, anion, formula) => {
    expect(saltOf(cation, anion).formula).toBe(formula);
  });

  test.each(CATIONS.flatMap((cation) => ANIONS.map((anion) => [cation, anion] as const)))("%s %s and back", (c, a) => {
    const salt = saltOf(c, a);
    expect(ionsOf(salt.formula)).toEqual(salt);
    const parts = Object.entries(salt.ions).map(([ion, count]) => `${count} ${ion}`);
    expect(isBalanced(parseEquation(`${salt.formula} = ${parts.join(" + ")}`))).toBe(true);
  });
});

describe("the ions of a formula", () => {
  test.each([
    ["CuSO4*5H2O", "Cu^2+", "SO4^2-"],
    ["CuSO4.5H2O", "Cu^2+", "SO4^2-"],
    ["Na2CO3*10H2O", "Na+", "CO3^2-"],
    ["MnSO4*H2O", "Mn^2+", "SO4^2-"],
    ["CaSO4*0.5H2O", "Ca^2+", "SO4^2-"], // plaster of Paris: half a water is a usual way of writing it
  ])("%s", (formula, cation, anion) => {
    expect(ionsOf(formula)).toMatchObject({ cation, anion });
  });

  test.each(["NaHSO4", "H2SO4", "Fe3O4", "HCl", "(NH4)2Fe(SO4)2*6H2O", "KCr(SO4)2*12H2O", "K", "H2O", "CsCl"])(
    "%s is no salt of one known cation and one known anion",
    (formula) => {
      expect(ionsOf(formula)).toBeUndefined();
    },
  );
});

describe("components", () => {
  test.each([
    ["NH4+", "SO4^2-", { NH3: 2, "H+": 2, "SO4^2-": 1 }],
    ["Al^3+", "SO4^2-", { "Al^3+": 2, "SO4^2-": 3 }],
  ])("of the salt of %s and %s", (cation, anion, components) => {
    expect(componentsOf(saltOf(cation, anion).ions)).toEqual(components);
  });

  test("hydroxide is water less a proton, hydrogencarbonate is carbonate and a proton", () => {
    expect(componentsOf({ "Ca^2+": 1, "OH-": 2 })).toEqual({ "Ca^2+": 1, "H+": -2, H2O: 2 });
    expect(componentsOf({ "Na+": 1, "HCO3-": 1 })).toEqual({ "Na+": 1, "CO3^2-": 1, "H+": 1 });
  });

  test.each(["CH3COOH", "Xx+", "constructor", "__proto__", "toString"])("refuses %s by name", (ion) => {
    expect(() => componentsOf(Object.fromEntries([[ion, 1]]))).toThrow(RangeError);
  });
});
