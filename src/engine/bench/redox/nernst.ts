/**
 * The potential of a couple in a mixture. Nernst's equation with the activities of the mixture: Davies coefficients for dissolved species,
 * 1 for solids, the pressure in atm for gases. Standard potentials are those at 25 C, whatever the temperature.
 */
import { CAPPED_IONIC_STRENGTH, davies, daviesA } from "../../equilibrium/activity.ts";
import { parseFormula } from "../../formula/parse.ts";
import type { HalfEquation, Part } from "./half-equation.ts";

/** R ln 10 / F, V/K. CODATA: 8.31446 J/(mol K), 96485.33 C/mol. */
const VOLTS_PER_KELVIN = (8.31446 * Math.LN10) / 96485.33;
const KELVIN = 273.15;

/** What is not there yet counts as a trace of this molality, mol/kg: too little to be seen. Our choice. */
export const TRACE = 1e-6;

/** Oxygen in air, atm. */
const OXYGEN_OF_AIR = 0.21;

/** Dissolved species by molality, mol/kg, and what their activities hang on. */
export interface Solution {
  molality: Pick<ReadonlyMap<string, number>, "get">;
  pH: number;
  celsius: number;
  ionicStrength: number;
}

/** Half the sum of z^2 m, mol/kg. */
export function ionicStrengthOf(molality: ReadonlyMap<string, number>): number {
  let sum = 0;
  for (const [id, m] of molality) sum += m * chargeOf(id) ** 2;
  return sum / 2;
}

const charges = new Map<string, number>();
function chargeOf(id: string): number {
  let charge = charges.get(id);
  if (charge === undefined) {
    charge = parseFormula(id).charge;
    charges.set(id, charge);
  }
  return charge;
}

/** Potential of the couple, V. */
export function potentialOf(half: HalfEquation, solution: Solution): number {
  const log = (parts: readonly Part[]) =>
    parts.reduce((sum, part) => sum + part.coefficient * logActivity(part, half, solution), 0);
  const slope = (VOLTS_PER_KELVIN * (solution.celsius + KELVIN)) / half.electrons;
  return half.couple.volts + slope * (log(half.oxidised) - log(half.reduced));
}

function logActivity(part: Part, half: HalfEquation, solution: Solution): number {
  if (part.id === "H2O" || part.state === "solid") return 0;
  if (part.id === "H+") return -solution.pH;
  if (part.state === "gas") return Math.log10(half.couple.fromAir ? OXYGEN_OF_AIR : (half.couple.gasAtm ?? 1));
  const { f, neutral } = davies(solution.ionicStrength, CAPPED_IONIC_STRENGTH);
  const logGamma = part.charge === 0 ? neutral : -daviesA(solution.celsius) * part.charge ** 2 * f;
  const molality = solution.molality.get(part.id) ?? 0;
  return Math.log10(molality > 0 ? molality : TRACE) + logGamma;
}
