/** Why a mark of a record's line is lost. */
import type { Colour } from "../../engine/practical/same-colour.ts";

export const CONCLUDED = '"No reaction" is a conclusion: the mark is for what is seen.';
export const NOTHING_READ = "Nothing that could be read stands in this line.";
export const SAID_TWICE = "Two things that exclude one another are written: the mark is for the one that was seen.";
export const NOTHING_CHANGED = 'Nothing changed here: write "no visible change".';
export const BUBBLES = "Bubbles were seen: write effervescence.";
export const NO_PRECIPITATE = "There was no precipitate.";
export const PRECIPITATE = "That a precipitate formed, and its colour, is not said.";
export const FATES = {
  remains: "The solid remained.",
  "partly dissolves": "The solid dissolved in part.",
  dissolves: "The solid dissolved.",
};
export const FATE = "What became of the solid is not said.";
export const CLEAR = 'The colour of the solution is not said; "clear" is no colour.';
export const GAS_SHOWED_NOTHING = "That the gas test showed nothing is not said.";
export const GAS_TEST = "The test of the gas, and what it showed, is not said.";
export const GAS_ONLY_NAMED = "The gas is named, but the mark is for its test.";
export const OTHER_SIGN = "This is not what the test of the gas showed.";
export const itWas = (gas: string) => `It was ${gas}.`;
export const GAS_NAME = "The gas is not named.";
export const NOTHING_LEFT = "Nothing was left: that is not said.";
export const flameWas = (colour: Colour) => `The flame was ${colour}.`;
export const NO_FLAME = "The flame had no colour of its own.";
export const DROPLETS = "The drops on the cool wall are not noted.";
/** What has a colour. */
const NAMES = {
  precipitate: "precipitate",
  solution: "solution",
  hot: "hot residue",
  cold: "cold residue",
  flame: "flame",
  indicator: "indicator",
  fumes: "fumes",
  sublimate: "solid on the cool wall",
};
type Coloured = keyof typeof NAMES;
export const notSaid = (of: Coloured) => `The colour of the ${NAMES[of]} is not said.`;
export const otherColour = (of: Coloured, was: Colour, not: Colour) => `The ${NAMES[of]} was ${was}, not ${not}.`;
