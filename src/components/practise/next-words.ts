/** What to practise next, from the marks that were lost. */
import type { Reckoning } from "./reckoning.ts";

const ADVICE: Readonly<Record<Reckoning["lost"][number]["for"], string>> = {
  none: 'Write "no visible change" where nothing happens: an empty line earns nothing, and "no reaction" is a conclusion.',
  precipitate: "For every solid that appears write the word precipitate and its colour.",
  fate: "When a reagent is added in excess, or to a solid, say what becomes of the solid: it dissolves, dissolves in part, or remains.",
  solution: "When a solid is gone, name the colour of the solution: colourless, not clear.",
  effervescence: "Look for bubbles at once when acid goes in, and write effervescence.",
  "gas test":
    "A gas earns its mark by its test: name the paper, splint or limewater and what it did. That it showed nothing is an observation too.",
  "gas name": "After the test of a gas, name the gas.",
  indicator: "Write down the colour of the indicator.",
  residue: "After heating, say whether anything is left.",
  hot: "Look at a heated residue while it is hot, and write its colour down.",
  cold: "Look at a heated residue once more when it is cold.",
  fumes: "When a solid is heated, look above it for coloured fumes.",
  sublimate: "When a solid is heated, look at the cool glass for a solid that settles there.",
  droplets: "When a solid is heated, look at the cool glass for drops.",
  flame: "Name the colour of the flame in the trade's words: lilac, brick red, light green.",
  conclusion: "For each ion ask which other ions the paper allows, and name the tests that rule those out.",
  empty: "Write something for every tube: where nothing happens, that is the observation.",
};

/** So many pieces of advice: more is read by nobody. */
const TOLD = 3;

export const wordNext = ({ lost }: Reckoning): string[] =>
  lost.slice(0, TOLD).map(({ for: what, times }) => `${ADVICE[what]} (${times === 1 ? "one mark" : `${times} times`})`);
