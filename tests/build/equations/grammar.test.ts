import { expect, test } from "vitest";
import { findEquations } from "../../../src/build/equations/find-equations.ts";
import { reactions } from "../../../src/engine/constants/log-k/index.ts";
import { sourceFiles } from "../../architecture/source-files.ts";
import { scopesOf } from "./highlighter.ts";

const COEFFICIENT = "constant.numeric.coefficient";
const FORMULA = "entity.name.type.formula";
const STATE = "storage.modifier.state";
const PLUS = "keyword.operator.plus";
const ARROW = "keyword.operator.arrow";

test("a line is parted into coefficients, formulas, states, signs and a remark", () => {
  expect(scopesOf("Zn^2+(aq) + 2 OH-(aq) -> Zn(OH)2(s) # white, then 2 more")).toEqual([
    ["Zn^2+", FORMULA],
    ["(aq)", STATE],
    ["+", PLUS],
    ["2", COEFFICIENT],
    ["OH-", FORMULA],
    ["(aq)", STATE],
    ["->", ARROW],
    ["Zn(OH)2", FORMULA],
    ["(s)", STATE],
    ["# white, then 2 more", "comment.line.number-sign"],
  ]);
});

test.each([
  ["[Cu(NH3)4]^2+(aq)", ["[Cu(NH3)4]^2+", FORMULA], ["(aq)", STATE]],
  ["CuSO4*5H2O(s)", ["CuSO4*5H2O", FORMULA], ["(s)", STATE]],
  ["Na2CO3.10H2O(s)", ["Na2CO3.10H2O", FORMULA], ["(s)", STATE]],
  ["Al(OH)3(s, fresh)", ["Al(OH)3", FORMULA], ["(s, fresh)", STATE]],
  ["(NH4)2SO4(aq)", ["(NH4)2SO4", FORMULA], ["(aq)", STATE]],
  ["[Ag(NH3)2]+", ["[Ag(NH3)2]+", FORMULA]],
  ["e-", ["e-", FORMULA]],
  ["1/2 I2(s)", ["1/2", COEFFICIENT], ["I2", FORMULA], ["(s)", STATE]],
  ["0.5Br2(l)", ["0.5", COEFFICIENT], ["Br2", FORMULA], ["(l)", STATE]],
])("%s", (line, ...scopes) => {
  expect(scopesOf(line)).toEqual(scopes);
});

test("what is no chemistry is marked as such", () => {
  const unreadable = ([, scope]: [string, string]) => scope === "invalid.illegal";
  for (const line of ["H₂O(l)", "ag+(aq)", "NaCl(liquid)", "Ag+ → Ag"]) {
    expect.soft(scopesOf(line).filter(unreadable), line).not.toEqual([]);
  }
});

test("the grammar reads all that the engine's parser reads: every reaction of the constants and every equation of the pages", () => {
  const pages = [...sourceFiles("src/content", [".mdx"])].flatMap(
    ([path, page]) => findEquations(path, page).equations,
  );
  const lines = [...reactions.map(({ reaction }) => reaction), ...pages.map(({ text }) => text)];
  expect(pages.length).toBeGreaterThan(0);
  expect(lines.length).toBeGreaterThan(100);
  expect(lines.filter((line) => scopesOf(line).some(([, scope]) => scope === "invalid.illegal"))).toEqual([]);
});
