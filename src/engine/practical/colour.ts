/** The colours a record may name, from constants. */
import * as z from "zod/mini";
import { COLOURS } from "../constants/colours.ts";
import { describe } from "./quantity.ts";
import type { Colour } from "./same-colour.ts";

export { type Colour, sameColour } from "./same-colour.ts";

const NAMES = Object.keys(COLOURS) as [Colour, ...Colour[]];

export const colour = z.enum(NAMES, {
  error: (issue) =>
    issue.input === "clear"
      ? 'found "clear", which means see-through, not uncoloured; expected a colour such as "colourless" or "pale blue"'
      : `found ${describe(issue.input)}, expected a colour such as "white", "pale blue" or "colourless"`,
});
