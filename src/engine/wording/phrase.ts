/** An observation in the words of the trade. */
import * as say from "#words/observation.ts";
import { CLEARS_AGAIN, GAS_EVIDENCE } from "../practical/gases.ts";
import type { GasSeen, Observation } from "../practical.ts";

/**
 * Words an observation: "white precipitate, dissolves to a colourless solution".
 * @param solid what is in the tube at the start: a precipitate, or a dry sample
 */
export function phrase(seen: Observation, solid: "precipitate" | "solid" = "precipitate"): string {
  const words: string[] = [];
  if (seen.effervescence !== undefined) words.push(say.effervescence(seen.effervescence));
  if (seen.precipitate === false) words.push(say.NO_PRECIPITATE);
  else if (seen.precipitate) words.push(say.precipitate(seen.precipitate.colour, seen.precipitate.amount));
  if (seen.fate) words.push(say.fate(seen.precipitate ? "it" : solid, seen.fate));
  if (seen.solution) words.push(wordSolution(seen, seen.solution));
  if (seen.gas) words.push(wordGas(seen.gas));
  const nothing = seen.stays ? say.noChange(seen.stays) : say.NO_CHANGE;
  if (seen.gas === false) words.push(seen.none ? `${nothing}, ${say.NO_SIGN}` : say.NO_SIGN);
  if (seen.indicator) words.push(say.indicator(seen.indicator));
  if (seen.fumes) words.push(say.fumes(seen.fumes));
  if (seen.droplets) words.push(say.DROPLETS);
  if (seen.sublimate) words.push(say.sublimate(seen.sublimate));
  if (seen.residue === false) words.push(say.NOTHING_LEFT);
  else if (seen.residue) words.push(say.residue(seen.residue.hot, seen.residue.cold));
  if (seen.flame === false) words.push(say.NO_FLAME);
  else if (seen.flame) words.push(say.flame(seen.flame));
  return words.length === 0 ? nothing : words.join(", ");
}

/** A colour of its own beside a solid; what the liquid turns to where no solid tells the story. */
function wordSolution({ fate, precipitate }: Observation, colour: NonNullable<Observation["solution"]>): string {
  if (fate === "dissolves") return say.dissolvedTo(colour);
  return fate || precipitate ? say.solution(colour) : say.solutionTurns(colour);
}

/** The evidence, with the gas it names. Clouded limewater names none: carbon dioxide and sulfur dioxide both do it. */
function wordGas({ formula, evidence }: GasSeen): string {
  const limewater = evidence === GAS_EVIDENCE.CO2 || evidence === CLEARS_AGAIN;
  return limewater ? say.evidence(evidence) : `${say.evidence(evidence)} (${say.GASES[formula]})`;
}
