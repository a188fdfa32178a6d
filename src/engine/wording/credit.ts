/**
 * What of an observation earns credit by itself: each thing seen counts once, a gas once for its test and once for its name. Common practice
 * of marking, no source; a department's own scheme comes first.
 */
import * as say from "#words/observation.ts";
import type { Observation } from "../practical.ts";
import { phrase } from "./phrase.ts";

/** What a credit is for; a gas has two. */
export type CreditFor =
  | Exclude<keyof Observation, "gas" | "residue" | "stays">
  | "gas test"
  | "gas name"
  | "residue"
  | "hot"
  | "cold";

/** One mark. */
export interface Credit {
  for: CreditFor;
  words: string;
}

/** The parts of an observation that are marked apart. Never empty. `solid`: what is in the tube at the start. */
export function creditsOf(seen: Observation, solid: "precipitate" | "solid" = "precipitate"): Credit[] {
  const credits: Credit[] = [];
  const one = (what: CreditFor, part: Observation) => credits.push({ for: what, words: phrase(part, solid) });
  const add = (what: CreditFor, words: string) => credits.push({ for: what, words });
  if (seen.none) one("none", { none: true });
  if (seen.effervescence !== undefined) one("effervescence", { effervescence: seen.effervescence });
  if (seen.precipitate !== undefined) one("precipitate", { precipitate: seen.precipitate });
  if (seen.fate) one("fate", { fate: seen.fate });
  if (seen.solution) add("solution", say.solution(seen.solution));
  if (seen.gas) {
    add("gas test", say.evidence(seen.gas.evidence));
    add("gas name", say.gasNamed(say.GASES[seen.gas.formula]));
  }
  if (seen.gas === false) one("gas test", { gas: false });
  if (seen.indicator) one("indicator", { indicator: seen.indicator });
  if (seen.fumes) one("fumes", { fumes: seen.fumes });
  if (seen.droplets) one("droplets", { droplets: true });
  if (seen.sublimate) one("sublimate", { sublimate: seen.sublimate });
  if (seen.residue === false) one("residue", { residue: false });
  if (seen.residue && seen.residue.hot !== undefined) add("hot", say.residueAt("hot", seen.residue.hot));
  if (seen.residue && seen.residue.cold !== undefined) add("cold", say.residueAt("cold", seen.residue.cold));
  if (seen.flame !== undefined) one("flame", { flame: seen.flame });
  return credits;
}

/** The same in words only. */
export const creditsIn = (seen: Observation, solid?: "precipitate" | "solid"): string[] =>
  creditsOf(seen, solid).map(({ words }) => words);
