import fc from "fast-check";
import { expect, test } from "vitest";
import { FormulaError, parseFormula } from "../../../src/engine/formula/parse.ts";

// Counted by hand.
test.each([
  ["Ag+", { Ag: 1 }, 1],
  ["Cu^2+", { Cu: 1 }, 2],
  ["Cu^+", { Cu: 1 }, 1],
  ["Cl^-", { Cl: 1 }, -1],
  ["[AgCl4]^3-", { Ag: 1, Cl: 4 }, -3],
  ["SO4^2-", { S: 1, O: 4 }, -2],
  ["NH4+", { N: 1, H: 4 }, 1],
  ["CH3COO-", { C: 2, H: 3, O: 2 }, -1],
  ["(NH4)2SO4", { N: 2, H: 8, S: 1, O: 4 }, 0],
  ["[Ag(NH3)2]+", { Ag: 1, N: 2, H: 6 }, 1],
  ["[Pb6(OH)8]^4+", { Pb: 6, O: 8, H: 8 }, 4],
  ["K4[Fe(CN)6]", { K: 4, Fe: 1, C: 6, N: 6 }, 0],
  ["CuSO4*5H2O", { Cu: 1, S: 1, O: 9, H: 10 }, 0],
  ["CuSO4.5H2O", { Cu: 1, S: 1, O: 9, H: 10 }, 0],
  ["MnSO4*H2O", { Mn: 1, S: 1, O: 5, H: 2 }, 0],
  ["CuCO3*Cu(OH)2", { Cu: 2, C: 1, O: 5, H: 2 }, 0],
  ["e-", {}, -1],
  ["  NaCl ", { Na: 1, Cl: 1 }, 0],
])("%s", (text, elements, charge) => {
  expect(parseFormula(text)).toEqual({ text: text.trim(), elements, charge });
});

test.each([
  ["AgCl(s)", { state: "s" }],
  ["Fe^3+(aq)", { charge: 3, state: "aq" }],
  ["CO2(g)", { state: "g" }],
  ["H2O(l)", { state: "l" }],
  ["Al(OH)3(aq)", { elements: { Al: 1, O: 3, H: 3 }, state: "aq" }],
  ["Al(OH)3(s, fresh)", { elements: { Al: 1, O: 3, H: 3 }, state: "s", form: "fresh" }],
  ["CaSO3*0.5H2O(s)", { elements: { Ca: 1, S: 1, O: 3.5, H: 1 }, state: "s" }],
  ["CaSO3.0.5H2O(s)", { elements: { Ca: 1, S: 1, O: 3.5, H: 1 }, state: "s" }],
])("the state of %s", (text, expected) => {
  expect(parseFormula(text)).toMatchObject(expected);
});

test("a formula without a state has neither state nor form", () => {
  expect(Object.keys(parseFormula("NaCl"))).toEqual(["text", "elements", "charge"]);
});

const message = (text: string) => {
  try {
    return parseFormula(text);
  } catch (error) {
    if (error instanceof FormulaError) return error.message;
    throw error;
  }
};

test("what is said of a bad formula", () => {
  const bad = ["", "cl", "Xo2", "2 NaCl", "Cu2++", "Fe+2", "Cu^2", "SO4^0-", "H0", "[Ag(NH3)2+", "(NH4)2SO4]", "()2"];
  bad.push("CuSO4*", "CuSO4*0H2O", "AgCl(solid)", "AgCl(aq, fresh)", "NaCl, KCl", "H₂O");
  expect(bad.map(message)).toMatchInlineSnapshot(`
    [
      "Cannot read "": found nothing at character 1, expected a formula such as CuSO4*5H2O.",
      "Cannot read "cl": found "c" at character 1, expected the symbol of an element or an opening bracket.",
      "Cannot read "Xo2": found "Xo" at character 1, expected the symbol of an element.",
      "Cannot read "2 NaCl": found "2" at character 1, expected the symbol of an element or an opening bracket.",
      "Cannot read "Cu2++": found "+" at character 5, expected a state such as (aq), or the end (a charge above 1 is written ^2+).",
      "Cannot read "Fe+2": found "2" at character 4, expected a state such as (aq), or the end (a charge above 1 is written ^2+).",
      "Cannot read "Cu^2": found "^2" at character 3, expected a charge such as ^2+ or ^3-.",
      "Cannot read "SO4^0-": found "^0-" at character 4, expected a charge such as ^2+, or none.",
      "Cannot read "H0": found "0" at character 2, expected a count of 1 or more, without a leading zero.",
      "Cannot read "[Ag(NH3)2+": found "+" at character 10, expected "]" to close the "[" of character 1.",
      "Cannot read "(NH4)2SO4]": found "]" at character 10, expected an element, a bracket, *, a charge such as ^2+, a state such as (aq), or the end.",
      "Cannot read "()2": found ")" at character 2, expected the symbol of an element or an opening bracket.",
      "Cannot read "CuSO4*": found the end at character 7, expected the symbol of an element or an opening bracket.",
      "Cannot read "CuSO4*0H2O": found "0" at character 7, expected a number above 0.",
      "Cannot read "AgCl(solid)": found "(solid)" at character 5, expected one of the states (aq), (s), (l), (g), or a solid with its form such as (s, fresh).",
      "Cannot read "AgCl(aq, fresh)": found "(aq, fresh)" at character 5, expected one of the states (aq), (s), (l), (g), or a solid with its form such as (s, fresh).",
      "Cannot read "NaCl, KCl": found "," at character 5, expected an element, a bracket, *, a charge such as ^2+, a state such as (aq), or the end.",
      "Cannot read "H₂O": found "₂" at character 2, expected an element, a bracket, *, a charge such as ^2+, a state such as (aq), or the end.",
    ]
  `);
});

test("the error carries its parts", () => {
  expect(() => parseFormula("Fe+2")).toThrow(
    expect.objectContaining({ name: "FormulaError", text: "Fe+2", position: 4, found: '"2"' }),
  );
});

test("any text is either read or refused with a FormulaError inside it", () => {
  const scraps = fc.constantFrom(
    ..."AgClNH()[]^+-*.0125saq, ",
    "(aq)",
    "(s, fresh)",
    "*5H2O",
    "^2+",
    "constructor",
    "₂",
  );
  fc.assert(
    fc.property(fc.array(scraps, { maxLength: 12 }), (parts) => {
      try {
        const { elements } = parseFormula(parts.join(""));
        for (const count of Object.values(elements)) expect(count).toBeGreaterThan(0);
      } catch (error) {
        if (!(error instanceof FormulaError)) throw error;
        expect(error.position).toBeGreaterThanOrEqual(1);
        expect(error.position).toBeLessThanOrEqual(error.text.length + 1);
      }
    }),
    { seed: 1, numRuns: 2000 },
  );
});
