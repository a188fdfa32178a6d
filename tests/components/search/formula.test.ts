import { expect, test } from "vitest";
import { ionNames } from "#words/ion-names.ts";
import { SUBSTANCES } from "#words/search.ts";
import { meaningOf } from "../../../src/components/search/formula.ts";
import { reagents } from "../../../src/engine/constants/reagents.ts";
import { GASES } from "../../../src/engine/practical.ts";

/** Names after the IUPAC Red Book 2005, from memory. */
test.each([
  ["SO4", "sulfate", "SO₄"],
  ["SO42-", "sulfate", "SO₄"],
  ["SO4^2-", "sulfate", "SO₄"],
  ["so42-", "sulfate", "SO₄"],
  ["NO3-", "nitrate", "NO₃"],
  ["NO2-", "nitrite", "NO₂⁻"],
  ["NO2", "nitrogen dioxide", "NO₂"],
  ["NH4+", "ammonium", "NH₄"],
  ["NH3", "ammonia", "NH₃"],
  ["NH3(aq)", "ammonia", "NH₃"],
  ["CO2", "carbon dioxide", "CO₂"],
  ["CO3", "carbonate", "CO₃"],
  ["Co2+", "cobalt(II)", "Co²⁺"],
  ["co2", "carbon dioxide", "CO₂"],
  ["Cu2+", "copper(II)", "Cu²⁺"],
  ["Cu", "copper", undefined],
  ["Fe3+", "iron(III)", "Fe³⁺"],
  ["[Cu(NH3)4]2+", "tetraamminecopper(II)", "[Cu(NH₃)₄]"],
  ["CuSO4", "copper sulfate", "CuSO₄"],
  ["cuso4", "copper sulfate", "CuSO₄"],
  ["CuSO4.5H2O", "copper sulfate", "CuSO₄"],
  ["ZnSO4", "zinc sulfate", "ZnSO₄"],
  ["(NH4)2SO4", "ammonium sulfate", "(NH₄)₂SO₄"],
  ["Na2CO3", "sodium carbonate", "Na₂CO₃"],
  ["Pb(NO3)2", "lead(II) nitrate", "Pb(NO₃)₂"],
  ["CoCl2", "cobalt(II) chloride", "CoCl₂"],
  ["AgNO3", "silver nitrate", "AgNO₃"],
])("%s is %s", (typed, name, printed) => {
  const meaning = meaningOf(typed);
  expect(meaning?.name).toBe(name);
  expect(meaning?.printed).toBe(printed);
});

test.each(["white", "In", "As", "shed", "100", "X1", "Zz2", "H", "<b>", "(", "[", "__proto__", "constructor"])(
  "%s is no formula of the table",
  (typed) => {
    const meaning = meaningOf(typed);
    // One letter may be an element: "H" is hydrogen.
    if (typed === "H") expect(meaning?.name).toBe("hydrogen");
    else expect(meaning).toBeUndefined();
  },
);

test.each(GASES)("the gas %s has a name", (gas) => {
  expect(SUBSTANCES[gas]).toBeDefined();
});

test.each(reagents.flatMap(({ kind, formula }) => (kind === "solution" && formula ? [formula] : [])))(
  "the reagent %s is understood",
  (formula) => {
    expect(meaningOf(formula)?.name).toBeTypeOf("string");
  },
);

test.each(Object.entries(ionNames))("%s is the ion %s", (ion, name) => {
  expect(meaningOf(ion)?.name).toBe(name);
});
