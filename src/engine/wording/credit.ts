/**
 * What of an observation earns credit by itself: each thing seen counts once, a gas once for its test and once for its name. Common practice
 * of marking, no source; a department's own scheme comes first.
 */
import type { Observation } from "../practical.ts";
import { GAS_NAMES, phrase } from "./phrase.ts";

/** The parts of an observation that are marked apart, in words. Never empty. `solid`: what is in the tube at the start. */
export function creditsIn(seen: Observation, solid: "precipitate" | "solid" = "precipitate"): string[] {
  const credits: string[] = [];
  const one = (part: Observation) => credits.push(phrase(part, solid));
  if (seen.none) one({ none: true });
  if (seen.effervescence !== undefined) one({ effervescence: seen.effervescence });
  if (seen.precipitate !== undefined) one({ precipitate: seen.precipitate });
  if (seen.fate) one({ fate: seen.fate });
  if (seen.solution) credits.push(`${seen.solution} solution`);
  if (seen.gas) {
    credits.push(seen.gas.evidence);
    credits.push(`named: ${GAS_NAMES[seen.gas.formula]}`);
  }
  if (seen.gas === false) one({ gas: false });
  if (seen.indicator) one({ indicator: seen.indicator });
  if (seen.fumes) one({ fumes: seen.fumes });
  if (seen.droplets) one({ droplets: true });
  if (seen.sublimate) one({ sublimate: seen.sublimate });
  if (seen.residue === false) one({ residue: false });
  if (seen.residue && seen.residue.hot !== undefined) credits.push(`${seen.residue.hot} when hot`);
  if (seen.residue && seen.residue.cold !== undefined) credits.push(`${seen.residue.cold} when cold`);
  if (seen.flame !== undefined) one({ flame: seen.flame });
  return credits;
}
