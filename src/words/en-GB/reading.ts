/** What the reader of records asks and answers. Its patterns know one vocabulary: that of `wording/reading/`, in English. */

import type { Colour } from "../../engine/practical/same-colour.ts";

/** Gases as that vocabulary names them. */
export { GASES as GASES_READ } from "./observation.ts";

/** The line in the reader's vocabulary; it is in lower case. */
export const inReaderWords = (line: string): string => line;

export const tooLong = (letters: number, most: number) =>
  `This is ${letters} letters long; write one observation in at most ${most}.`;
export const NOTHING_WRITTEN = "Nothing is written yet.";
export const NAMES_NOTHING =
  'This names nothing that is seen: write a colour and of what, a gas with its test, or "no visible change".';
export const notUnderstood = (words: string) => `Not understood: "${words}".`;
export const DENIED =
  'It says that something was not seen, or hardly, so nothing of this line is read: write what was seen, such as "no precipitate", "insoluble" or "no visible change".';
export const readAs = (written: string, colour: Colour) => `"${written}" is read as ${colour}.`;

export const WHICH_GAS = "Which gas was it: what did its test show?";
export const WHAT_DID_THE_GAS_SHOW = "What did the test of the gas show?";
export const IN_EXCESS = "What happened in excess: did it dissolve, did some of it dissolve, or did it remain?";
export const SOLUTION_NOW = "What colour is the solution now?";
export const HOT = "What colour was the residue while it was hot?";
export const COLD = "What colour is the residue when cold?";

export const WHICH_ACID_GAS =
  "Hydrogen chloride, sulfur dioxide and nitrogen dioxide all turn damp blue litmus red: which was it?";
export const notItsSign = (its: string, named: string) =>
  `That sign is the one of ${its}, not of ${named}: which was it?`;
export const howShown = (gas: string, sign: string) => `How was ${gas} shown? Credit is given for the test: "${sign}".`;
export const LIMEWATER = "What did the limewater show: did it turn milky, or stay as it was?";
export const SMOKE = "White smoke near what: a rod with hydrochloric acid, or one with ammonia?";
export const SMELL = "A smell names no gas: what did its test show?";

export const CLEAR = '"Clear" is not a colour: it means see-through. Write colourless, or name the colour.';
export const ofWhat = (colour: Colour) => `What is ${colour}: a precipitate, the solution, a flame, a residue?`;
export const noPlace = (word: string) => `"${word}" is understood, but a record here has no place for it.`;
export const NO_REACTION = '"No reaction" is a conclusion: write what is seen, "no visible change".';
export const ON_STANDING = "A colour that comes on standing belongs to a later look: only the first is kept.";
export const COLOURLESS_SOLID = "A precipitate that can be seen has a colour: which?";
export const PRECIPITATE_COLOUR = "What colour is the precipitate?";
export const ONE_PRECIPITATE =
  "Two colours of the precipitate are named, or one between two: which was it? Hold it against white paper.";
export const ONE_SOLUTION = "Two colours of the solution are named: which has it at the end?";
export const ONE_FLAME = "Two colours of the flame are named: which is the sample's?";
export const ONE_FATE = "It is said to remain and to dissolve: which is so at the end?";
export const ONE_GAS = "Two gases are named: which was it?";
export const ONE_SIGN = "Signs are written that do not go together: what did the gas test show?";
