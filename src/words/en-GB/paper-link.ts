/** What is wrong with a link that should hold a paper. */

export const codeTooLong = (letters: number, most: number) =>
  `It is ${letters} letters long; a link with a paper has at most ${most}.`;
export const CUT_OFF = "It is damaged or was cut off. Ask for the link again, and copy all of it.";
export const unpacksTo = (kB: number) => `It unpacks to more than ${kB} kB; no paper is so long.`;
export const NO_PAPER = "What it holds is not a paper. Ask for the link again, and copy all of it.";
