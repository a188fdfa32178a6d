/** What each way of testing a gas shows, and of which gas. */
import { GAS_EVIDENCE } from "../practical/gases.ts";
import type { Gas, GasSeen, GasTest } from "../practical.ts";

const SMOKE = "white smoke on the rod";

/** Boards' gas tables (chlorine bleaches damp litmus); acid gases on litmus and the rods: common practice, that of carbon dioxide by its pH as well (see VISIBILITY). The first gas of a row that is there is the one named. */
const SIGNS: Readonly<Record<GasTest, readonly (readonly [gas: Gas, evidence: string])[]>> = {
  "damp red litmus": [
    ["NH3", GAS_EVIDENCE.NH3],
    ["Cl2", GAS_EVIDENCE.Cl2],
  ],
  "damp blue litmus": [
    ["Cl2", GAS_EVIDENCE.Cl2],
    ["HCl", GAS_EVIDENCE.HCl],
    ["SO2", "damp blue litmus turns red"],
    ["NO2", "damp blue litmus turns red"],
    ["CO2", "damp blue litmus turns red"],
  ],
  limewater: [
    ["CO2", GAS_EVIDENCE.CO2],
    ["SO2", GAS_EVIDENCE.CO2],
  ],
  "glowing splint": [["O2", GAS_EVIDENCE.O2]],
  "lighted splint": [["H2", GAS_EVIDENCE.H2]],
  "acidified manganate(VII) paper": [["SO2", GAS_EVIDENCE.SO2]],
  "acidified dichromate(VI) paper": [["SO2", "acidified dichromate(VI) paper turns from orange to green"]],
  "rod with hydrochloric acid": [["NH3", SMOKE]],
  "rod with ammonia": [["HCl", SMOKE]],
  "anhydrous copper(II) sulfate": [["H2O", GAS_EVIDENCE.H2O]],
  "cobalt(II) chloride paper": [["H2O", "cobalt(II) chloride paper turns from blue to pink"]],
};

/** Whether the sign is so faint that a careful hand may find it or not: carbon dioxide is a weak acid, and slow to dissolve. */
export const isFaint = (test: GasTest, gas: Gas): boolean => test === "damp blue litmus" && gas === "CO2";

/** The first of the gases that the test shows, with its sign; undefined when it shows none of them. */
export function signOf(test: GasTest, gases: readonly Gas[]): GasSeen | undefined {
  const shown = SIGNS[test].find(([gas]) => gases.includes(gas));
  return shown && { formula: shown[0], evidence: shown[1] };
}
