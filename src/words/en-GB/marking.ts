/** Why a mark of a record's line is lost. */

export const CONCLUDED = '"No reaction" is a conclusion: the mark is for what is seen.';
export const NOTHING_READ = "Nothing that could be read stands in this line.";
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
export const flameWas = (colour: string) => `The flame was ${colour}.`;
export const NO_FLAME = "The flame had no colour of its own.";
export const DROPLETS = "The drops on the cool wall are not noted.";
/** What has a colour, in "the colour of the ... is not said" and "the ... was white, not blue". */
export const notSaid = {
  solution: "The colour of the solution is not said.",
  hot: "The colour of the hot residue is not said.",
  cold: "The colour of the cold residue is not said.",
  flame: "The colour of the flame is not said.",
  indicator: "The colour of the indicator is not said.",
  fumes: "The colour of the fumes is not said.",
  sublimate: "The colour of the solid on the cool wall is not said.",
};
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
export const otherColour = (of: keyof typeof NAMES, was: string, not: string) =>
  `The ${NAMES[of]} was ${was}, not ${not}.`;
