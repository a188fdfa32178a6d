/** W01 to W18: how much of a solid dissolves in water or beside a common ion, and the pH of one solution. */
import { molarMass } from "../../../src/engine/formula/molar-mass.ts";
import { given } from "./example.ts";
import { molality, type Solution, textbookBench } from "./mixture.ts";
import { ammonia, dm3, hydroxide, log, type Questions, WATER } from "./textbook.ts";

/** mol/dm3 of a component that the solid gives to the solution beside it. */
export function solubility(
  logK: Readonly<Record<string, number>>,
  solid: string,
  component: string,
  beside: Solution = WATER,
): number {
  const bench = textbookBench(logK);
  return bench.dissolved(bench.mix({ of: [beside], over: solid }), component);
}

export const SOLUBILITY_AND_PH: Questions = {
  W01: () => solubility({ "BaSO4(s)": log(given("W01", "Ksp")) }, "BaSO4(s)", "Ba^2+"),
  W02: () => solubility({ "BaSO4(s)": log(given("W02", "Ksp")) }, "BaSO4(s)", "Ba^2+") * molarMass("BaSO4") * 1000,
  W03: () => solubility({ "PbI2(s)": log(given("W03", "Ksp")) }, "PbI2(s)", "Pb^2+"),
  W04: () => solubility({ "PbCl2(s)": log(given("W04", "Ksp")) }, "PbCl2(s)", "Pb^2+"),
  W05: () => solubility({ "AgCl(s)": log(given("W05", "Ksp")) }, "AgCl(s)", "Ag+"),
  W06: () => solubility({ "Ag2CrO4(s)": log(given("W06", "Ksp")) }, "Ag2CrO4(s)", "CrO4^2-"),
  W07: () => solubility({ "Mg(OH)2(s, active)": hydroxide(given("W07", "Ksp"), 2) }, "Mg(OH)2(s, active)", "Mg^2+"),
  W08: () => solubility({ "CaSO4*2H2O(s)": log(given("W08", "Ksp")) }, "CaSO4*2H2O(s)", "Ca^2+"),
  W09: () =>
    solubility({ "BaSO4(s)": log(given("W09", "Ksp")) }, "BaSO4(s)", "Ba^2+", dm3({ "Na+": 0.2, "SO4^2-": 0.1 })),
  W10: () => solubility({ "AgCl(s)": log(given("W10", "Ksp")) }, "AgCl(s)", "Ag+", dm3({ "Na+": 0.1, "Cl-": 0.1 })),
  W11: () =>
    textbookBench({ "Ca(OH)2(s)": hydroxide(given("W11", "Ksp Ca(OH)2"), 2) }).mix({ of: [WATER], over: "Ca(OH)2(s)" })
      .pH,
  W12: () => solubility({ "Ca(OH)2(s)": hydroxide(given("W12", "Ksp"), 2) }, "Ca(OH)2(s)", "Ca^2+"),
  W13: () => textbookBench({ "NH4+": ammonia(given("W13", "Kb")) }).mix({ of: [dm3({ NH3: 0.1 })] }).pH,
  W14: () => textbookBench({ "NH4+": ammonia(given("W14", "Kb")) }).mix({ of: [dm3({ NH3: 1 })] }).pH,
  W15: () => molality(textbookBench({ "NH4+": ammonia(given("W15", "Kb")) }).mix({ of: [dm3({ NH3: 0.4 })] }), "OH-"),
  W16: () => textbookBench({ "NH4+": given("W16", "pKa") }).mix({ of: [dm3({ NH3: 1, "NH4+": 1, "Cl-": 1 })] }).pH,
  W17: () => textbookBench({}).mix({ of: [dm3({ "Na+": 0.4, "OH-": 0.4 })] }).pH,
  W18: () => textbookBench({}).mix({ of: [dm3({ "H+": 0.1, "NO3-": 0.1 })] }).pH,
};
