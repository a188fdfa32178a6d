import { expect, test } from "vitest";
import { imbalance, isBalanced, parseEquation } from "../../../src/engine/formula/equation.ts";
import { FormulaError } from "../../../src/engine/formula/parse.ts";

const terms = (side: ReturnType<typeof parseEquation>["left"]) => side.map((t) => [t.coefficient, t.formula.text]);

test.each([
  [
    "Ag+ + Cl- -> AgCl(s)",
    [
      [1, "Ag+"],
      [1, "Cl-"],
    ],
    [[1, "AgCl(s)"]],
  ],
  [
    "Ag+ + 2 NH3 = [Ag(NH3)2]+",
    [
      [1, "Ag+"],
      [2, "NH3"],
    ],
    [[1, "[Ag(NH3)2]+"]],
  ],
  [
    "1/2 I2 + 0.5 Br2 -> IBr",
    [
      [0.5, "I2"],
      [0.5, "Br2"],
    ],
    [[1, "IBr"]],
  ],
  [
    "Zn(OH)2(s, amorphous) + 2H+ = Zn^2+ + 2H2O",
    [
      [1, "Zn(OH)2(s, amorphous)"],
      [2, "H+"],
    ],
    [
      [1, "Zn^2+"],
      [2, "H2O"],
    ],
  ],
])("%s", (text, left, right) => {
  const equation = parseEquation(text);
  expect(terms(equation.left)).toEqual(left);
  expect(terms(equation.right)).toEqual(right);
});

// Balanced equations of the textbooks, and the same with one thing wrong; the difference is counted by hand.
test.each([
  ["Cu^2+ + 4 NH3 = [Cu(NH3)4]^2+", {}, 0],
  ["2 Cu^2+ + 4 I- = 2 CuI(s) + I2", {}, 0],
  ["8 Al + 3 NO3- + 5 OH- + 18 H2O = 8 [Al(OH)4]- + 3 NH3", {}, 0],
  ["Fe^3+ + e- = Fe^2+", {}, 0],
  ["1/3 Al^3+ + 1/3 Cl- + 2/3 Cl- = 1/3 AlCl3", {}, 0],
  ["Ag+ + NH3 = [Ag(NH3)2]+", { N: 1, H: 3 }, 0],
  ["Fe^3+ = Fe^2+", {}, -1],
  ["CO2(g) = CO3^2- + 2 H+", { O: 1, H: 2 }, 0],
])("the imbalance of %s", (text, elements, charge) => {
  const equation = parseEquation(text);
  expect(imbalance(equation)).toEqual({ elements, charge });
  expect(isBalanced(equation)).toBe(charge === 0 && Object.keys(elements).length === 0);
});

const message = (text: string) => {
  try {
    return parseEquation(text);
  } catch (error) {
    if (error instanceof FormulaError) return error.message;
    throw error;
  }
};

test("what is said of a bad equation", () => {
  const bad = ["Ag+ + Cl-", "Ag+ = Ag+ = Ag+", "Ag+ + Cx- = AgCl", "Ag+ +Cl- -> AgCl", "0 Ag+ = Ag+", "1/0 Ag+ = Ag+"];
  expect([...bad, "Ag+ +  = AgCl"].map(message)).toMatchInlineSnapshot(`
    [
      "Cannot read "Ag+ + Cl-": found the end at character 10, expected exactly one "=" or "->" with a space on either side.",
      "Cannot read "Ag+ = Ag+ = Ag+": found a second "=" at character 11, expected exactly one "=" or "->" with a space on either side.",
      "Cannot read "Ag+ + Cx- = AgCl": found "Cx" at character 7, expected the symbol of an element.",
      "Cannot read "Ag+ +Cl- -> AgCl": found " " at character 4, expected a state such as (aq), or the end (a charge above 1 is written ^2+).",
      "Cannot read "0 Ag+ = Ag+": found "0" at character 1, expected a coefficient above 0.",
      "Cannot read "1/0 Ag+ = Ag+": found "1/0" at character 1, expected a coefficient above 0.",
      "Cannot read "Ag+ +  = AgCl": found nothing at character 7, expected a formula such as CuSO4*5H2O.",
    ]
  `);
});
