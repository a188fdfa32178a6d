import { expect, test } from "vitest";
import { spokenEquation } from "../../../src/engine/formula/spoken-equation.ts";

// How formulas are read aloud letter by letter: common practice, no source.
test.each([
  ["Ag+(aq) + Cl-(aq) -> AgCl(s)", "Ag plus, aqueous, and Cl minus, aqueous, gives Ag Cl, solid"],
  ["SO4^2-(aq)", "S O 4, 2 minus, aqueous"],
  ["NH4+ + OH- = NH3(g) + H2O(l)", "N H 4, plus and O H minus gives N H 3, gas, and H 2 O, liquid"],
  ["Al(OH)3(s, fresh)", "Al open bracket O H close bracket 3, solid"],
  ["CuSO4*5H2O(s)", "Cu S O 4 dot 5 H 2 O, solid"],
  ["1/2 I2(s) + e-", "1/2 I 2, solid, and e minus"],
  ["[Cu(NH3)4]^2+", "open square bracket Cu open bracket N H 3 close bracket 4 close square bracket, 2 plus"],
])("%s", (equation, spoken) => {
  expect(spokenEquation(equation)).toBe(spoken);
});
