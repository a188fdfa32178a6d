/** From what heating does to a solid to what is said of it: residue hot and cold, coloured fumes, drops, a solid on the cool wall, gases. */
import { GAS_EVIDENCE, type Gas, type GasSeen, type GasTest, type Observation } from "../practical.ts";
import type { HeatOutcome } from "./heat/heat-solid.ts";

/** Gases each test at the mouth of the tube shows, with what is seen. Boards' gas tables; acid gases on litmus: common practice. */
const SHOWN: Record<GasTest, readonly (readonly [gas: Gas, evidence: string])[]> = {
  "damp red litmus": [["NH3", GAS_EVIDENCE.NH3]],
  "damp blue litmus": [
    ["HCl", GAS_EVIDENCE.HCl],
    ["SO2", "damp blue litmus turns red"],
    ["NO2", "damp blue litmus turns red"],
  ],
  limewater: [
    ["CO2", GAS_EVIDENCE.CO2],
    ["SO2", GAS_EVIDENCE.CO2],
  ],
  "glowing splint": [["O2", GAS_EVIDENCE.O2]],
  "lighted splint": [["H2", GAS_EVIDENCE.H2]],
  "acidified manganate(VII) paper": [["SO2", GAS_EVIDENCE.SO2]],
};

/** What a gas test held over a heated solid shows; false when it shows nothing. */
export function gasOverHeated(outcome: HeatOutcome, test: GasTest): GasSeen | false {
  const shown = SHOWN[test].find(([gas]) => outcome.gases.includes(gas));
  return shown ? { formula: shown[0], evidence: shown[1] } : false;
}

/** The solid's part of the observation. A residue that looks the same as the solid taken is still a residue to record. */
export function heatReading(outcome: HeatOutcome): Observation {
  const { residue, vapours, sublimate, gases } = outcome;
  const [fumes] = vapours;
  return {
    residue: residue ? { hot: residue.hot, cold: residue.cold } : false,
    ...(fumes && { fumes }),
    ...(sublimate && { sublimate: sublimate.colour }),
    ...(gases.includes("H2O") && { droplets: true as const }),
  };
}
