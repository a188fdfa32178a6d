/** A paper from a file, and as one or as a link: what is read, what is wrong with it, what is written. */

/** From a file. */
export const FILE = "File (.mdx):";
export const OR_ITS_TEXT = "Or its text, from the first --- to the second";
export const THIS_TEXT = "this text";
export const READING = "Reading …";
export const OPEN_TEXT = "Open this text";
export const NOT_LOADED = "The reader could not be loaded. Check the connection and load the page again.";
export const tooManyBytes = (bytes: number) => `The file has ${bytes} bytes; no practical is so long.`;
export const tooLong = (letters: number, most: number) =>
  `The file has ${letters} letters; a practical has at most ${most}.`;
export const IS_OPEN = "The paper of the file is open. An answer in it is left out: here the record decides.";
export const IS_OPEN_IN_PART = "What could be read of the file is open; what is wrong is marked.";
export const hasFaults = (count: number) =>
  `${count === 1 ? "This has a fault." : `This has ${count} faults.`} Your paper is as it was.`;
export const andMore = (count: number) => `And ${count} more.`;
export const OPEN_WHAT_COULD = "Open what could be read, as a new paper";
export const line = (line: number, column: number) => `Line ${line}, column ${column}`;
export const faultAt = (place: string, path: string, message: string) => `${place} (${path}): ${message}.`;
export const fault = (place: string, what: string, found: string, advice: string) =>
  `${place}: ${what}. Found: ${found}. To do: ${advice}.`;

/** As a link. */
export const CANNOT_LINK = "This browser cannot make such a link. Save the paper as a file.";
export const TOO_LONG_FOR_LINK = "The paper is too long for a link. Save it as a file.";
export const COPIED = "The link is copied.";
export const COPY_BELOW = "The link stands below: copy it from there.";

/** As a file. */
export const twoParts = (letter: string) =>
  `Two parts are called ${letter || "nothing"}. Give each a letter of its own, then save.`;
export const SAVED = "The file is saved. Its text stands below as well.";
export const TITLE = "A paper of my own";
export const SUMMARY = "A paper entered on the page for papers of one's own. Its author writes a summary here.";
/** Beside entries of the file. */
export const LEVEL_IS = "foundation, core or stretch";
export const ORDER_IS = "its place in the course";
export const ANSWER_IS = "the answer: write the salt here, such as ZnSO4*7H2O";
export const RECORD_IS = "what was seen, as the guide for authors says";
export const WRITE_HERE = "Write here, in your own words, where the samples come from and what there is to find out.";
