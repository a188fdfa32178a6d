/** Moles of gas from a heated solid, by the equations of textbooks. */
import { expect, test } from "vitest";
import { gasesPerMole } from "../../../../src/engine/bench/heat/gas-amounts.ts";

test.each<[string, "gently" | "strongly", number, number, number]>([
  ["NaHCO3", "strongly", 0.5, 0, 1], // 2 NaHCO3 -> Na2CO3 + H2O + CO2; sodium carbonate stays
  ["ZnCO3", "strongly", 1, 0, 1], // ZnCO3 -> ZnO + CO2
  ["(NH4)2CO3", "strongly", 1, 0, 4], // (NH4)2CO3 -> 2 NH3 + H2O + CO2
  ["FeSO4*7H2O", "strongly", 0, 0.5, 8], // 7 H2O first; 2 FeSO4 -> Fe2O3 + SO2 + SO3
  ["CuSO4*5H2O", "gently", 0, 0, 5], // water only, short of the temperature at which the sulfate falls apart
  ["KNO3", "strongly", 0, 0, 0.25], // 2 KNO3 -> 2 KNO2 + O2, of which half comes in the minutes of a test
])("%s heated %s: %s mol of CO2, %s mol of SO2, %s mol of gas", (formula, how, CO2, SO2, all) => {
  expect(gasesPerMole(formula, how)).toEqual({ CO2, SO2, all });
});
