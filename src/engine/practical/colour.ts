/** The colours a record may name, from constants: the schema and the rule for when two names can be the same sight. */
import { z } from "zod";
import { COLOURS } from "../constants/colours.ts";
import { describe } from "./quantity.ts";

/** A colour named as a mark scheme would: "white", "red-brown", "colourless". */
export type Colour = keyof typeof COLOURS & string;

const NAMES = Object.keys(COLOURS) as [Colour, ...Colour[]];

export const colour = z.enum(NAMES, {
  error: (issue) =>
    issue.input === "clear"
      ? 'found "clear", which means see-through, not uncoloured; expected a colour such as "colourless" or "pale blue"'
      : `found ${describe(issue.input)}, expected a colour such as "white", "pale blue" or "colourless"`,
});

/** True when a person could write either name for the same sight (boards differ: "brown" and "red-brown" for iron(III) hydroxide). */
export function sameColour(a: Colour, b: Colour): boolean {
  return a === b || COLOURS[a].alsoCalled.includes(b) || COLOURS[b].alsoCalled.includes(a);
}
