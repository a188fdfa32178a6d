/** An observation in the words of the trade. */
import { CLEARS_AGAIN, GAS_EVIDENCE } from "../practical/gases.ts";

import type { Gas, GasSeen, Observation } from "../practical.ts";

export const GAS_NAMES: Record<Gas, string> = {
  NH3: "ammonia",
  CO2: "carbon dioxide",
  SO2: "sulfur dioxide",
  H2: "hydrogen",
  O2: "oxygen",
  Cl2: "chlorine",
  NO2: "nitrogen dioxide",
  HCl: "hydrogen chloride",
  H2O: "water vapour",
};

/**
 * Words an observation: "white precipitate, dissolves to a colourless solution".
 * @param solid what is in the tube at the start: a precipitate, or a dry sample
 */
export function phrase(seen: Observation, solid: "precipitate" | "solid" = "precipitate"): string {
  const words: string[] = [];
  if (seen.effervescence !== undefined) words.push(seen.effervescence ? "effervescence" : "no effervescence");
  if (seen.precipitate === false) words.push("no precipitate");
  else if (seen.precipitate) {
    const { colour, amount } = seen.precipitate;
    words.push(`${amount === "slight" ? "faint " : ""}${colour} precipitate`);
  }
  if (seen.fate) {
    const what = seen.precipitate ? "it" : solid;
    if (seen.fate === "remains") words.push(`${what} remains`);
    if (seen.fate === "partly dissolves")
      words.push(seen.precipitate ? "some of it dissolves" : `some of the ${solid} dissolves`);
    if (seen.fate === "dissolves") words.push(`${what} dissolves`);
  }
  if (seen.solution) words.push(wordSolution(seen, seen.solution));
  if (seen.gas) words.push(wordGas(seen.gas));
  if (seen.gas === false)
    words.push(seen.none ? "no visible change, gas test shows nothing" : "gas test shows nothing");
  if (seen.indicator) words.push(`indicator turns ${seen.indicator}`);
  if (seen.fumes) words.push(`${seen.fumes} fumes`);
  if (seen.droplets) words.push("drops of liquid on the cool wall");
  if (seen.sublimate) words.push(`${seen.sublimate} solid on the cool wall`);
  if (seen.residue === false) words.push("nothing left");
  else if (seen.residue) words.push(wordResidue(seen.residue));
  if (seen.flame === false) words.push("no flame colour");
  else if (seen.flame) words.push(`${seen.flame} flame`);
  return words.length === 0 ? "no visible change" : words.join(", ");
}

/** A colour of its own beside a solid; what the liquid turns to where no solid tells the story. */
function wordSolution({ fate, precipitate }: Observation, colour: string): string {
  if (fate === "dissolves") return `giving ${/^[aeiou]/.test(colour) ? "an" : "a"} ${colour} solution`;
  return fate || precipitate ? `${colour} solution` : `solution turns ${colour}`;
}

/** The evidence, with the gas it names. Clouded limewater names none: carbon dioxide and sulfur dioxide both do it. */
function wordGas({ formula, evidence }: GasSeen): string {
  const limewater = evidence === GAS_EVIDENCE.CO2 || evidence === CLEARS_AGAIN;
  return limewater ? evidence : `${evidence} (${GAS_NAMES[formula]})`;
}

/** "residue yellow hot, white cold", or one colour when it does not change. */
function wordResidue({ hot, cold }: Exclude<Observation["residue"], false | undefined>): string {
  if (hot === undefined || hot === cold) return `${cold} residue${hot === undefined ? " when cold" : ""}`;
  return cold === undefined ? `residue ${hot} when hot` : `residue ${hot} when hot, ${cold} when cold`;
}
