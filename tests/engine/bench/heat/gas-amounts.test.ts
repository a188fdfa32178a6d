/** Moles of gas from a heated solid, by the equations of textbooks. */
import { expect, test } from "vitest";
import { gasesPerMole } from "../../../../src/engine/bench/heat/gas-amounts.ts";

test.each<[string, "gently" | "strongly", number, number]>([
  ["NaHCO3", "strongly", 0.5, 0], // 2 NaHCO3 -> Na2CO3 + H2O + CO2; sodium carbonate stays
  ["ZnCO3", "strongly", 1, 0], // ZnCO3 -> ZnO + CO2
  ["(NH4)2CO3", "strongly", 1, 0], // (NH4)2CO3 -> 2 NH3 + H2O + CO2
  ["FeSO4*7H2O", "strongly", 0, 0.5], // 2 FeSO4 -> Fe2O3 + SO2 + SO3
  ["CuSO4*5H2O", "gently", 0, 0], // water only, short of the temperature at which the sulfate falls apart
  ["KNO3", "strongly", 0, 0], // oxygen
])("%s heated %s: %s mol of CO2, %s mol of SO2", (formula, how, CO2, SO2) => {
  expect(gasesPerMole(formula, how)).toEqual({ CO2, SO2 });
});
