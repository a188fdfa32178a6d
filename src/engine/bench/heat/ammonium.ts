/** Ammonium salts: into ammonia and the acid, or, with an oxidising anion, into nitrogen or its oxide. */
import type { MakeUp } from "./make-up.ts";
import { gas, type Substance, solid } from "./reaction.ts";
import type { Ways } from "./ways.ts";

/** What the anion becomes: the gas of its acid, or that and water. */
const WAYS: Readonly<Record<string, readonly Substance[][]>> = {
  "Cl-": [[gas("NH3"), gas("HCl")]],
  "Br-": [[gas("NH3"), gas("HBr")]],
  "I-": [[gas("NH3"), gas("HI")]],
  "CO3^2-": [[gas("NH3"), gas("CO2"), gas("H2O")]],
  "HCO3-": [[gas("NH3"), gas("CO2"), gas("H2O")]],
  "SO3^2-": [[gas("NH3"), gas("SO2"), gas("H2O")]],
  "SO4^2-": [
    [gas("NH3"), solid("NH4HSO4")],
    [gas("NH3"), gas("SO3"), gas("H2O")],
  ],
  "HSO4-": [[gas("NH3"), gas("SO3"), gas("H2O")]],
  "NO3-": [[gas("N2O"), gas("H2O")]],
  "NO2-": [[gas("N2"), gas("H2O")]],
  "Cr2O7^2-": [[solid("Cr2O3"), gas("N2"), gas("H2O")]],
};

export function ammoniumWays({ water, cations, anions }: MakeUp): Ways {
  if (water > 0 || cations.length !== 1 || cations[0] !== "NH4+" || anions.length !== 1) return [];
  return (WAYS[anions[0]] ?? []).map((way) => [...way]);
}

/** The hydrogen halides that meet ammonia again on the cool wall as the salt they came from. */
export const RECOMBINES: readonly string[] = ["HCl", "HBr", "HI"];
