/** What is to be seen in a tube, told plainly part by part: not the words a mark scheme credits. */
import type { Colour } from "../../engine/practical/same-colour.ts";
import type { GasTest } from "../../engine/practical.ts";

const hue = (colour: Colour): string => (colour === "colourless" ? "without any colour" : colour);
const ofHue = (colour: Colour | undefined): string => (colour ? `, ${hue(colour)}` : "");

/** The tube as it stands. */
export const drySolid = (colour: Colour | undefined) => `A dry solid${ofHue(colour)}.`;
export const solidInIt = (colour: Colour | undefined) => `There is a solid in it${ofHue(colour)}.`;
/** @param same as it was before the test */
export const liquid = (colour: Colour, same: boolean) => `The liquid is ${same ? "as it was, " : ""}${hue(colour)}.`;

/** @param of the colour of the reagent, where it is known */
export const colourGone = (of: Colour | undefined, left: Colour) =>
  `The ${of ?? "colour"} of the reagent is gone: the liquid is ${hue(left)}.`;

/** What has happened since. */
export const BUBBLES = "Bubbles rise through it.";
/** @param less than at first */
export function clouds(colour: Colour, slight: boolean, less: boolean): string {
  const than = less ? ", though less than at first" : "";
  return slight
    ? `A little of something ${colour} clouds it${than}: you can still just see through.`
    : `Something ${colour} clouds it all through${than}: you cannot see through any more.`;
}
export const cloudGone = (colour: Colour) => `At first it goes cloudy, ${colour}; by the end the cloud is gone.`;
export const SOLID_GONE = "The solid is gone.";
export const LESS_SOLID = "Less of the solid is left than before.";
export const solidStill = (colour: Colour | undefined) =>
  `The ${colour && colour !== "colourless" ? `${colour} ` : ""}solid is still there.`;

/** What the paper, splint or limewater looks like where it showed a gas, by the evidence as the constants word it. */
const SIGNS: Readonly<Record<string, string>> = {
  "damp red litmus turns blue": "The red litmus paper is blue now.",
  "limewater turns milky": "The limewater is no longer see-through: it looks like thin milk.",
  "limewater turns milky, then clear in excess":
    "The limewater first looks like thin milk; with more of the gas it is see-through again.",
  "acidified manganate(VII) paper turns from purple to colourless": "The purple of the paper is gone.",
  "lighted splint gives a squeaky pop": "At the flame there is a short, high bark.",
  "glowing splint relights": "The glow of the splint bursts into flame.",
  "damp litmus is bleached": "The litmus paper has lost its colour.",
  "damp blue litmus turns red": "The blue litmus paper is red now.",
  "anhydrous copper(II) sulfate turns blue": "The white powder is blue now.",
  "acidified dichromate(VI) paper turns from orange to green": "The orange of the paper is green now.",
  "cobalt(II) chloride paper turns from blue to pink": "The blue of the paper is pink now.",
  "white smoke on the rod": "White smoke hangs round the rod.",
};
export const sign = (evidence: string): string => SIGNS[evidence] ?? `Of the gas: ${evidence}.`;

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
export const heldAsBefore = (test: GasTest | undefined) =>
  `The ${(test && HELD[test]) ?? "paper"} looks as it did before.`;
export const spot = (colour: Colour) => `The spot on the paper is ${colour}.`;

export const fumes = (colour: Colour) => `Above it the tube fills with something ${colour}.`;
export const DROPLETS = "Higher up the glass is wet inside.";
export const sublimate = (colour: Colour) => `Higher up, where the glass is cool, it is coated ${colour}.`;
export const EMPTY = "The bottom of the tube is empty.";
export const leftHot = (colour: Colour) => `While it is hot, what is left is ${hue(colour)}.`;
export const leftCold = (colour: Colour) => `Cooled down, what is left is ${hue(colour)}.`;
export const NO_FLAME = "The flame looks as it does without the sample.";
export const flame = (colour: Colour) => `The edge of the flame is ${colour}.`;
export const AS_BEFORE = "It looks as it did before.";
