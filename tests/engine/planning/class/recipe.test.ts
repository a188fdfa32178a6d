import { describe, expect, test } from "vitest";
import { ALSO_SOLD, makings } from "../../../../src/engine/constants/preparation.ts";
import { reagents } from "../../../../src/engine/constants/reagents.ts";
import { salts } from "../../../../src/engine/constants/salts.ts";
import { stocks } from "../../../../src/engine/constants/stocks.ts";
import { classSheet } from "../../../../src/engine/planning/class/class-sheet.ts";
import { measured, reagentRecipe, saltRecipe, stockOf } from "../../../../src/engine/planning/class/recipe.ts";
import { bottleNamed, bottlesOf, weighed } from "../../../../src/engine/planning/class/store-bottles.ts";
import type { Supply } from "../../../../src/engine/planning/class/supply.ts";
import { reagentOf } from "../../../../src/engine/planning/reagent-plan.ts";
import { reference } from "../../../verification/reference.ts";
import { isAnswer, workedExample } from "../../../verification/worked/example.ts";

const { masses, stocks: published } = reference<{
  masses: { formula: string; molPerDm3: number; gPerDm3: number }[];
  stocks: { stock: string; molPerDm3: number; cm3PerDm3: number; source: string; status: string }[];
}>("preparations.json");

test.each(masses)("$gPerDm3 g of $formula make 1 dm3 of $molPerDm3 mol/dm3", ({ formula, molPerDm3, gPerDm3 }) => {
  // Printed to 0.01 g, from molar masses printed to three decimals.
  const { perDm3 } = weighed(bottleNamed(formula), molPerDm3);
  expect(Math.abs(perDm3 - gPerDm3)).toBeLessThanOrEqual(0.0051 + 0.0002 * gPerDm3);
});

test.each(published)("$cm3PerDm3 cm3 of $stock make 1 dm3 of $molPerDm3 mol/dm3 ($source, $status)", (row) => {
  // Printed to whole cm3 from strengths of three figures.
  const { perDm3 } = measured(stockOf(row.stock), row.molPerDm3);
  expect(Math.abs(perDm3 / row.cm3PerDm3 - 1)).toBeLessThan(0.03);
});

// tests/reference/worked-examples.json: W65 36 % HCl is 11.65 mol/dm3, W66 54.4 cm3 of 98 % H2SO4 hold 1 mol, W67 100 volume H2O2 is 8.3 to 8.9.
test("the stocks are as strong as the worked examples", () => {
  expect(isAnswer(workedExample("W65"), 1000 / stockOf("concentrated hydrochloric acid").cm3PerMol)).toBe(true);
  expect(isAnswer(workedExample("W66"), stockOf("concentrated sulfuric acid").cm3PerMol)).toBe(true);
  const peroxide = 1000 / stockOf("100 volume hydrogen peroxide").cm3PerMol;
  expect(peroxide).toBeGreaterThan(8.3);
  expect(peroxide).toBeLessThan(8.92);
});

const bottles = [...salts, ...ALSO_SOLD].map(({ formula }) => formula);

describe("what goes into a solution", () => {
  test("the salt as the store keeps it, and what else it is sold as", () => {
    // 0.05 mol x 630.37 g/mol = 31.52 g (W61: 0.10 mol/dm3 in Al3+), or with 18 water 0.05 x 666.40 = 33.32 g
    const [choices] = saltRecipe("Al2(SO4)3", 0.05).ingredients;
    expect(choices.map(({ formula, perDm3 }) => [formula, perDm3.toFixed(2)])).toEqual([
      ["Al2(SO4)3*16H2O", "31.52"],
      ["Al2(SO4)3*18H2O", "33.32"],
    ]);
    expect(isAnswer(workedExample("W61"), choices[0].perDm3)).toBe(true);
  });

  test("of a mixture each salt at the strength", () => {
    const { ingredients } = saltRecipe("NaCl + KNO3", 0.1);
    // 0.1 x 58.44 = 5.84; 0.1 x 101.10 = 10.11
    expect(ingredients.map(([{ formula, perDm3 }]) => [formula, perDm3.toFixed(2)])).toEqual([
      ["NaCl", "5.84"],
      ["KNO3", "10.11"],
    ]);
  });

  test("a double salt is one bottle", () => {
    // 0.1 x 474.37 (KAl(SO4)2*12H2O) = 47.44 g for 1 dm3
    const { ingredients } = saltRecipe("KAl(SO4)2*12H2O", 0.1);
    expect(ingredients.map((choices) => choices.map(({ what, perDm3 }) => [what, perDm3.toFixed(2)]))).toEqual([
      [["potassium aluminium sulfate (alum)", "47.44"]],
    ]);
  });

  test("880 or 25 % ammonia, 56 or 75 cm3 for each mol (British Pharmacopoeia, Appendix I A)", () => {
    const [choices] = reagentRecipe(reagentOf("NH3(aq)"), 2).ingredients;
    expect(choices.map(({ perDm3 }) => perDm3)).toEqual([112, 150]);
    expect(choices.every(({ care }) => care?.includes("Fume cupboard"))).toBe(true);
  });

  test.each(["HCl(aq)", "HNO3(aq)", "H2SO4(aq)"])("%s: acid into water", (id) => {
    const [[{ care }]] = reagentRecipe(reagentOf(id), 1).ingredients;
    expect(care).toContain("Acid into water, never water into acid");
  });

  test("acidified manganate(VII): 0.02 mol x 158.03 g/mol, and half a dm3 of 1 mol/dm3 acid for its 0.5 mol/dm3", () => {
    const { ingredients } = reagentRecipe(reagentOf("acidified KMnO4(aq)"), 0.02);
    expect(ingredients.map(([{ perDm3, unit }]) => [perDm3.toFixed(2), unit])).toEqual([
      ["3.16", "g"],
      ["500.00", "cm3"],
    ]);
  });

  test("a reagent cannot be stronger than its stock", () => {
    expect(() => reagentRecipe(reagentOf("HCl(aq)"), 12)).toThrow(
      "class sheet, concentrated hydrochloric acid (36 %, 1.18 g/cm3): found a solution of 12 mol/dm3, expected one weaker than its 11.6 mol/dm3",
    );
  });

  test("an acidified reagent leaves room for its acid", () => {
    // 5 x 114 cm3 of peroxide and 0.5 x 1000 cm3 of dilute acid are 1070 cm3.
    expect(() => reagentRecipe(reagentOf("acidified H2O2(aq)"), 5)).toThrow(
      "found 1070 cm3 of liquids for 1 dm3 of 5 mol/dm3, expected less than 1000 cm3",
    );
  });

  test.each([0, -1, Number.NaN])("nor is a solution of %s mol/dm3 made from one", (molPerDm3) => {
    expect(() => measured(stockOf("880 ammonia"), molPerDm3)).toThrow(RangeError);
  });
});

describe("water to begin with", () => {
  /** Of `make` cm3 exactly: one group that uses so much, nothing spare. */
  const sheetOf = (id: string, molPerDm3: number | null, make: number) => {
    const recipe = reagentRecipe(reagentOf(id), molPerDm3);
    const supply: Supply = { kind: "sample", label: "P", content: id, of: "solution", used: make, recipe, notes: [] };
    const sheet = classSheet(
      { supplies: [supply], counted: [], withTeacher: [], waste: [] },
      { groups: 1, sparePercent: 0, sampleCm3: make },
    );
    return sheet.supplies[0];
  };

  // 70 % of what is made, but never more than 90 % of the room that measured liquids leave; to 5 cm3, rounded down.
  test.each([
    ["acidified KMnO4(aq)", 0.02, 50, 20], // 25 cm3 of acid: 0.9 x 25 = 22.5
    ["acidified H2O2(aq)", 0.9, 50, 15], // 25 cm3 of acid and 0.9 x 114 / 20 = 5.13 of peroxide: 0.9 x 19.87 = 17.9
    ["AgNO3(aq)", 0.05, 50, 35], // a solid takes no room: 0.7 x 50
    ["HCl(aq)", 1, 100, 70], // 8.6 cm3 of acid: 0.7 x 100 is less than 0.9 x 91.4
    ["HCl(aq)", 11, 100, 0], // 94.6 cm3 of acid: 0.9 x 5.4 = 4.86
  ])("%s, %d mol/dm3: of %d cm3, %d", (id, strength, make, water) => {
    const sheet = sheetOf(id, strength, make);
    expect(sheet.make).toBe(make);
    expect(sheet.waterFirstCm3).toBe(water);
  });

  test("every reagent over its range has room for all its liquids and the water", () => {
    const solutions = reagents.filter(({ kind }) => kind === "solution");
    expect(solutions.length).toBeGreaterThan(25);
    for (const { id, concentration, range = [concentration, concentration] } of solutions) {
      for (const strength of range) {
        for (const make of [50, 60, 175, 450]) {
          const { ingredients, waterFirstCm3 } = sheetOf(id, strength, make);
          const liquids = ingredients.map((choices) =>
            Math.max(0, ...choices.map(({ unit, amount }) => (unit === "cm3" ? amount : 0))),
          );
          const all = liquids.reduce((sum, cm3) => sum + cm3, waterFirstCm3);
          expect(all, `${id} at ${strength} mol/dm3, ${make} cm3`).toBeLessThanOrEqual(make);
        }
      }
    }
  });
});

describe("the data", () => {
  test("every way of making names a reagent, and bottles and stocks that there are", () => {
    for (const [id, { weigh = [], stocks: from = [] }] of Object.entries(makings)) {
      expect(reagents.map((one) => one.id)).toContain(id);
      for (const one of from) expect(stocks.map((stock) => stock.id)).toContain(one);
      for (const { bought } of weigh) for (const formula of bought) expect(bottles, id).toContain(formula);
    }
  });

  test("every solution with a strength can be made up from something named", () => {
    const made = reagents.filter(({ kind, concentration }) => kind === "solution" && concentration !== null);
    expect(made.length).toBeGreaterThan(25);
    for (const reagent of made) {
      const { ingredients } = reagentRecipe(reagent, reagent.concentration);
      if (makings[reagent.id]?.ready) continue;
      for (const choices of ingredients) {
        // A bottle without a name would stand on the sheet by its formula.
        for (const { what, formula, perDm3 } of choices) {
          expect(what, reagent.id).not.toBe(formula);
          expect(perDm3, reagent.id).toBeGreaterThan(0);
        }
      }
      expect(ingredients.length, reagent.id).toBeGreaterThan(0);
    }
  });

  test("a stock that does not exist is named", () => {
    expect(() => stockOf("vinegar")).toThrow('class sheet, stocks: found "vinegar", expected one of 880 ammonia');
  });

  test("water of crystallisation tells two bottles of a salt apart, and nothing else does", () => {
    expect(bottlesOf("CaCl2").map(({ formula }) => formula)).toEqual(["CaCl2*2H2O", "CaCl2*6H2O"]);
    expect(bottlesOf("CuSO4*5H2O").map(({ formula }) => formula)).toEqual(["CuSO4*5H2O"]);
    expect(bottlesOf("Fe2(SO4)3")).toEqual([{ name: "Fe2(SO4)3", formula: "Fe2(SO4)3" }]);
  });
});
