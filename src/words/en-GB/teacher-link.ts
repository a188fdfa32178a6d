/** A link to a practical for a class: the page on which a teacher makes it. */

export const pageTitle = (practical: string) => `A link for a class: ${practical}`;
export const pageAbout = (practical: string) =>
  `For teachers: choose what a class sees of "${practical}", and send the link or show its QR code.`;
export const BACK_TO_WALKTHROUGH = "Back to the walkthrough";
export const LEAD =
  "Choose what your class sees when it opens the link. Nothing is sent or stored: all of it stands in the link.";
export const NEEDS_SCRIPT =
  "Choosing here, and the QR code, need JavaScript. The table below says how to write the link by hand.";

/** What is chosen. */
export const OPENS = "Opens";
export const WALKTHROUGH = "the walkthrough";
export const PRACTICE = "blind practice, the same unknowns for all";
export const BEGINS = "Begins";
export const EMPTY = "The record is empty";
export const HIDDEN = "The conclusion is hidden until asked";
export const NUMBER = "Number of the set";
export const ANOTHER = "Another number";
export const stillSet = (fault: string, seed: number) => `${fault} The link below is still that of set ${seed}.`;
export const LINK = "The link";
export const COPY = "Copy";
export const COPIED = "Copied.";
export const NOT_COPIED = "The browser did not copy it: choose the link and copy it by hand.";
export const qrCode = (link: string) => `QR code of the link ${link}`;
export const NO_QR_CODE =
  "The QR code could not be drawn: check the connection and load the page again. The link above works without it.";

/** Where the page begins. */
export const AT_HEAD = "at its head";
export const carryOutPart = (label: string, title: string) => `Carry out, part ${label}: ${title}`;
/** What a student sees who opens it. */
export const practiseSet = (seed: number) => `Everybody practises blind with the same unknowns, set ${seed}.`;
/** @param start where it opens, if not at its head */
export function opens(start: string | undefined, empty: boolean, hidden: boolean): string {
  const where = start === undefined ? "opens at its head" : `opens at “${start}”`;
  const what = empty ? "with an empty record" : "with its record filled in";
  const told = hidden
    ? "what the tests tell and the conclusion stay hidden until the student asks for them, and a line says so"
    : "the conclusion is shown";
  return `The walkthrough ${where}, ${what}; ${told}.`;
}

/** In a frame. */
export const FRAME = "In a frame of a learning platform";
export const FRAME_ABOUT =
  "These parts also have pages of their own, made for a frame of another site. Copy the address of one into your platform:";
export const NAMES_SALTS = ", which names the salts";

/** How the link is written. */
export const WRITTEN = "How the link is written";
export const HEADS = { end: "At the end of the address", does: "What it does" };
/** Before what it does, on a phone. */
export const DOES = "Does";
export const OWN_RECORD =
  "The record is empty; what a student chooses in it is added to their own address, which they can send back.";
export const HELD = "Everything that names the salts is hidden until the student presses a button. With the one above:";
/** The names of the places stand after the first; after the second an example; then the third. */
export const PLACE = ["The page opens there:", "or a part of the paper,", "Always last."] as const;
export const SEED = "Blind practice with the unknowns of that number, a whole number from 1 to 999999.";
export const NOT_LOCKED =
  "Hidden is not locked: a student who looks for the answer finds it, here or on the pages for teachers. Without JavaScript the whole walkthrough is shown.";
