/** The colours of a record as people write them: "reddish brown", "redbrown", "very dark green", "grey-white". */
import { COLOURS } from "../constants/colours.ts";
import type { Colour } from "../practical/same-colour.ts";
import { OTHER_COLOURS } from "./spellings.ts";

const NAMES: readonly (readonly [name: string, colour: Colour])[] = [
  ...Object.entries(OTHER_COLOURS),
  ...(Object.keys(COLOURS) as Colour[]).map((name) => [name, name] as const),
].sort((a, b) => b[0].length - a[0].length);

const bare = (text: string): string => text.replace(/[- ]/g, "");
const byName = new Map(NAMES.map(([name, colour]) => [bare(name), colour]));

/** They say how strong a colour is, or what it leans to. */
const QUALIFIER = "very|pale|light|dark|deep|bright|dirty|dull|strong|vivid|rich|intense|murky|[a-z]{2,12}ish";
const ONE = NAMES.map(([name]) => name.replace(/[- ]/g, "[- ]?")).join("|");

/** Any colour, with qualifiers before it and a second colour joined by a hyphen. */
const COLOUR = new RegExp(`(?<![a-z-])(?:(?:${QUALIFIER})[- ])*(?:${ONE})(?:-(?:${ONE}))*(?![a-z])`, "g");

/** The text, or a pattern, with its colours marked: "‹pale blue› solution". */
export const inBrackets = (text: string): string => text.replace(COLOUR, "‹$&›");

/** Silver halides are told apart by these words alone: a name of two of them, such as "creamy white", decides neither. */
const HALIDES = [/whit/, /cream/, /yellow/];

/** A name that lies between two colours which tell one ion from another, and is none of the list. */
export const isBetween = (written: string): boolean =>
  HALIDES.filter((one) => one.test(written)).length > 1 && !bare(written).endsWith("yellowishwhite");

/**
 * The colour of the list that a name means. `exact` is false where the list has no such name and its nearest, the last word of it, is taken:
 * "grey-white" is a white.
 */
export function colourNamed(written: string): { colour: Colour; exact: boolean } | undefined {
  const words = written.trim().split(/[- ]+/);
  let exact = true;
  for (let from = 0; from < words.length; from++) {
    const colour = byName.get(bare(words.slice(from).join(" ")));
    if (colour) return { colour, exact };
    exact &&= words[from] === "very";
  }
  return undefined;
}
