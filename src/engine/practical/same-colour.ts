/** When two names of colours can be the same sight. Apart from the schemas, for the bench runs without zod. */
import { COLOURS } from "../constants/colours.ts";

/** A colour named as a mark scheme would: "white", "red-brown", "colourless". */
export type Colour = keyof typeof COLOURS & string;

/** True when a person could write either name for the same sight (boards differ: "brown" and "red-brown" for iron(III) hydroxide). */
export function sameColour(a: Colour, b: Colour): boolean {
  return a === b || COLOURS[a].alsoCalled.includes(b) || COLOURS[b].alsoCalled.includes(a);
}
