import { describe, expect, test } from "vitest";
import { gas, reactionOf, type Substance, solid } from "../../../../src/engine/bench/heat/reaction.ts";
import { waysOf } from "../../../../src/engine/bench/heat/ways.ts";
import { salts } from "../../../../src/engine/constants/salts.ts";
import { SUBSTANCES } from "../../../../src/engine/constants/thermochemistry/index.ts";
import { isBalanced, parseEquation } from "../../../../src/engine/formula/equation.ts";

/** Equations as textbooks print them (from memory). */
const TEXTBOOK: readonly (readonly [string, Substance[], Substance[], string])[] = [
  [
    "lead(II) nitrate",
    [solid("Pb(NO3)2")],
    [solid("PbO"), gas("NO2"), gas("O2")],
    "2 Pb(NO3)2(s) = 2 PbO(s) + 4 NO2(g) + O2(g)",
  ],
  [
    "iron(II) sulfate",
    [solid("FeSO4")],
    [solid("Fe2O3"), gas("SO2"), gas("SO3")],
    "2 FeSO4(s) = Fe2O3(s) + SO2(g) + SO3(g)",
  ],
  [
    "sodium hydrogencarbonate",
    [solid("NaHCO3")],
    [solid("Na2CO3"), gas("H2O"), gas("CO2")],
    "2 NaHCO3(s) = Na2CO3(s) + H2O(g) + CO2(g)",
  ],
  [
    "potassium manganate(VII)",
    [solid("KMnO4")],
    [solid("K2MnO4"), solid("MnO2"), gas("O2")],
    "2 KMnO4(s) = K2MnO4(s) + MnO2(s) + O2(g)",
  ],
  [
    "sodium thiosulfate",
    [solid("Na2S2O3")],
    [solid("Na2SO4"), solid("Na2S5")],
    "4 Na2S2O3(s) = 3 Na2SO4(s) + Na2S5(s)",
  ],
  ["iron(II) oxide in air", [solid("FeO"), gas("O2")], [solid("Fe2O3")], "4 FeO(s) + O2(g) = 2 Fe2O3(s)"],
];

describe("balancing", () => {
  test.each(TEXTBOOK)("%s", (_, from, to, equation) => {
    expect(reactionOf(from, to)?.equation).toBe(equation);
  });

  test.each([
    ["an element is missing on the right", [solid("CaCO3")], [solid("CaO")]],
    ["a product is not needed", [solid("CaCO3")], [solid("CaO"), gas("CO2"), gas("O2")]],
    ["the numbers are not determined", [solid("NH4NO3")], [gas("N2"), gas("O2"), gas("H2O"), gas("N2O")]],
  ])("no reaction where %s", (_, from, to) => {
    expect(reactionOf(from, to)).toBeUndefined();
  });
});

describe("ways of change", () => {
  const solids = [
    ...new Set([
      ...salts.map(({ formula }) => formula),
      ...SUBSTANCES.filter((row) => row.state === "s").map((row) => row.formula),
    ]),
  ];
  const ways = solids.flatMap((formula) => waysOf(formula).map(({ equation }) => [equation] as const));

  test("there are ways to check", () => {
    expect(ways.length).toBeGreaterThan(150);
  });

  test.each(ways)("%s is balanced", (equation) => {
    expect(isBalanced(parseEquation(equation))).toBe(true);
  });

  test("sodium chloride has none", () => {
    expect(waysOf("NaCl")).toEqual([]);
  });
});
