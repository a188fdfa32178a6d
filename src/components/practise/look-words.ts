/** What is to be seen, told plainly part by part: enough for somebody who cannot see the drawing, and not the words a mark scheme credits. */
import { GAS_EVIDENCE } from "../../engine/practical/gases.ts";
import type { GasTest, Observation } from "../../engine/practical.ts";
import type { AskedOf } from "../../engine/wording/asked-of.ts";
import type { TubeState } from "./tube-state.ts";

const hue = (colour: string): string => (colour === "colourless" ? "without any colour" : colour);

/** The tube as it stands, in a sentence or two. */
export function wordTube({ cm3, liquid, solid }: TubeState): string[] {
  const said: string[] = [];
  if (solid?.dry) said.push(`A dry solid${solid.colour ? `, ${hue(solid.colour)}` : ""}.`);
  else if (solid) said.push(`There is a solid in it${solid.colour ? `, ${hue(solid.colour)}` : ""}.`);
  if (cm3 > 0 && liquid) said.push(`The liquid is ${hue(liquid)}.`);
  return said;
}

/** What the paper, splint or limewater looks like where it showed a gas. */
const SIGNS: Readonly<Record<string, string>> = {
  [GAS_EVIDENCE.NH3]: "The red litmus paper is blue now.",
  [GAS_EVIDENCE.CO2]: "The limewater is no longer see-through: it looks like thin milk.",
  "limewater turns milky, then clear in excess":
    "The limewater first looks like thin milk; with more of the gas it is see-through again.",
  [GAS_EVIDENCE.SO2]: "The purple of the paper is gone.",
  [GAS_EVIDENCE.H2]: "At the flame there is a short, high bark.",
  [GAS_EVIDENCE.O2]: "The glow of the splint bursts into flame.",
  [GAS_EVIDENCE.Cl2]: "The litmus paper has lost its colour.",
  [GAS_EVIDENCE.HCl]: "The blue litmus paper is red now.",
  [GAS_EVIDENCE.H2O]: "The white powder is blue now.",
  "acidified dichromate(VI) paper turns from orange to green": "The orange of the paper is green now.",
  "cobalt(II) chloride paper turns from blue to pink": "The blue of the paper is pink now.",
  "white smoke on the rod": "White smoke hangs round the rod.",
};

/** What is held in the gas. */
const HELD: Readonly<Partial<Record<GasTest, string>>> = {
  "damp red litmus": "red litmus paper",
  "damp blue litmus": "blue litmus paper",
  limewater: "limewater",
  "glowing splint": "splint",
  "lighted splint": "flame of the splint",
  "rod with hydrochloric acid": "air round the rod",
  "rod with ammonia": "air round the rod",
  "anhydrous copper(II) sulfate": "white powder",
};

/** What has happened since the test began. */
export function wordSight(seen: Observation, before: TubeState, after: TubeState, asked: AskedOf): string[] {
  const said: string[] = [];
  const { precipitate, fate, gas, residue, flame, fumes, sublimate, droplets, indicator } = seen;
  if (seen.effervescence) said.push("Bubbles rise through it.");
  if (precipitate) {
    const less = fate === "partly dissolves" ? ", though less than at first" : "";
    const cloud =
      precipitate.amount === "slight"
        ? `A little of something ${precipitate.colour} clouds it${less}: you can still just see through.`
        : `Something ${precipitate.colour} clouds it all through${less}: you cannot see through any more.`;
    said.push(
      fate === "dissolves" ? `At first it goes cloudy, ${precipitate.colour}; by the end the cloud is gone.` : cloud,
    );
  } else if (before.solid && fate === "dissolves") said.push("The solid is gone.");
  else if (before.solid && fate === "partly dissolves") said.push("Less of the solid is left than before.");
  else if (before.solid && !residue && flame === undefined && residue !== false)
    said.push(
      `The ${before.solid.colour && before.solid.colour !== "colourless" ? `${before.solid.colour} ` : ""}solid is still there.`,
    );
  if (after.cm3 > 0 && after.liquid && flame === undefined && !indicator) {
    const same = before.liquid === after.liquid && before.cm3 > 0;
    said.push(`The liquid is ${same ? "as it was, " : ""}${hue(after.liquid)}.`);
  }
  if (gas) said.push(SIGNS[gas.evidence] ?? `Of the gas: ${gas.evidence}.`);
  if (gas === false || (asked.gasTest && gas === undefined))
    said.push(`The ${(asked.gasTest && HELD[asked.gasTest]) ?? "paper"} looks as it did before.`);
  if (indicator) said.push(`The spot on the paper is ${indicator}.`);
  if (fumes) said.push(`Above it the tube fills with something ${fumes}.`);
  if (droplets) said.push("Higher up the glass is wet inside.");
  if (sublimate) said.push(`Higher up, where the glass is cool, it is coated ${sublimate}.`);
  if (residue === false) said.push("The bottom of the tube is empty.");
  if (residue && residue.hot !== undefined) said.push(`While it is hot, what is left is ${hue(residue.hot)}.`);
  if (residue && residue.cold !== undefined) said.push(`Cooled down, what is left is ${hue(residue.cold)}.`);
  if (flame === false) said.push("The flame looks as it does without the sample.");
  else if (flame) said.push(`The edge of the flame is ${flame}.`);
  return said.length > 0 ? said : ["It looks as it did before."];
}
