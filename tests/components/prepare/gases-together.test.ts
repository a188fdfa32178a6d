import { expect, test } from "vitest";
import { gasesTogether } from "../../../src/components/prepare/gases-together.ts";

const limewater = "limewater";
const red = "damp red litmus paper";

test("tests that could give a gas from the same salts stand on one line, in the order of the paper", () => {
  const lines = gasesTogether([
    { cell: "a(i)", gas: "NH3", from: ["NH4Cl"], have: red },
    { cell: "a(i)", gas: "CO2", from: ["ZnCO3"], have: limewater },
    { cell: "a(ii)", gas: "NH3", from: ["NH4Cl"], have: red },
    { cell: "a(ii)", gas: "CO2", from: ["MgCO3", "ZnCO3"], have: limewater },
    { cell: "b", gas: "CO2", from: ["MgCO3", "ZnCO3"], have: limewater },
  ]);
  expect(lines.map(({ gas, tests }) => `${gas} ${tests.join(" ")}`)).toEqual([
    "NH3 a(i) a(ii)",
    "CO2 a(i)",
    "CO2 a(ii) b",
  ]);
  expect(lines[2]).toMatchObject({ from: ["MgCO3", "ZnCO3"], have: limewater });
});
