/** Carbonates (also basic ones) and hydrogencarbonates. */
import { saltOf } from "../salt.ts";
import type { MakeUp } from "./make-up.ts";
import { freeMetal, oxideOf } from "./oxide-series.ts";
import { gas, solid } from "./reaction.ts";
import type { Ways } from "./ways.ts";

export function carbonateWays({ water, cations, anions }: MakeUp): Ways {
  const [cation] = cations;
  if (water > 0 || cations.length !== 1 || cation === "NH4+") return [];
  if (anions[0] === "HCO3-") return [[solid(saltOf(cation, "CO3^2-").formula), gas("H2O"), gas("CO2")]];
  if (!anions.includes("CO3^2-")) return [];
  const oxide = solid(oxideOf(cation));
  if (anions.includes("OH-")) return [[oxide, gas("H2O"), gas("CO2")]];
  return [[oxide, gas("CO2")], ...freeMetal(cation).map((metal) => [solid(metal), gas("CO2"), gas("O2")])];
}
