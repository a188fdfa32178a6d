/** What is to be seen, told plainly part by part: enough for somebody who cannot see the drawing, and not the words a mark scheme credits. */
import * as say from "#words/practise-look.ts";
import type { Colour, Observation } from "../../engine/practical.ts";
import type { AskedOf } from "../../engine/wording/asked-of.ts";
import type { TubeState } from "./tube-state.ts";

/** The tube as it stands, in a sentence or two. */
export function wordTube({ cm3, liquid, solid }: TubeState): string[] {
  const said: string[] = [];
  if (solid?.dry) said.push(say.drySolid(solid.colour));
  else if (solid) said.push(say.solidInIt(solid.colour));
  if (cm3 > 0 && liquid) said.push(say.liquid(liquid, false));
  return said;
}

/** The colour that a reagent of a test gives the liquid where it does nothing, by what any salt may show there. */
export function colourOfReagent(readings: readonly Observation[]): Colour | undefined {
  const colours = new Set(readings.flatMap(({ stays }) => stays ?? []));
  return colours.size === 1 ? [...colours][0] : undefined;
}

/**
 * What has happened since the test began.
 * @param reagent the colour of what was added
 */
export function wordSight(
  seen: Observation,
  before: TubeState,
  after: TubeState,
  asked: AskedOf,
  reagent?: Colour,
): string[] {
  const said: string[] = [];
  const { precipitate, fate, gas, residue, flame, fumes, sublimate, droplets, indicator } = seen;
  if (seen.effervescence) said.push(say.BUBBLES);
  if (precipitate) {
    const { colour, amount } = precipitate;
    said.push(
      fate === "dissolves"
        ? say.cloudGone(colour)
        : say.clouds(colour, amount !== "plain", fate === "partly dissolves"),
    );
  } else if (before.solid && fate === "dissolves") said.push(say.SOLID_GONE);
  else if (before.solid && fate === "partly dissolves") said.push(say.LESS_SOLID);
  else if (before.solid && !residue && flame === undefined && residue !== false)
    said.push(say.solidStill(before.solid.colour));
  if (after.cm3 > 0 && after.liquid && flame === undefined && !indicator) {
    const same = before.liquid === after.liquid && before.cm3 > 0;
    // A colour that came with the reagent and went: the liquid is what it was, and yet this is what is seen.
    const hasLost = same && seen.solution !== undefined && (reagent ? reagent !== after.liquid : !precipitate && !fate);
    said.push(hasLost ? say.colourGone(reagent, after.liquid) : say.liquid(after.liquid, same));
  }
  if (gas) said.push(say.sign(gas.evidence));
  if (gas === false || (asked.gasTest && gas === undefined)) said.push(say.heldAsBefore(asked.gasTest));
  if (indicator) said.push(say.spot(indicator));
  if (fumes) said.push(say.fumes(fumes));
  if (droplets) said.push(say.DROPLETS);
  if (sublimate) said.push(say.sublimate(sublimate));
  if (residue === false) said.push(say.EMPTY);
  if (residue && residue.hot !== undefined) said.push(say.leftHot(residue.hot));
  if (residue && residue.cold !== undefined) said.push(say.leftCold(residue.cold));
  if (flame === false) said.push(say.NO_FLAME);
  else if (flame) said.push(say.flame(flame));
  return said.length > 0 ? said : [say.AS_BEFORE];
}
