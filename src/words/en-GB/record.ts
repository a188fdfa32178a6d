/** The record of a walkthrough. */

/** Said of any test, besides its own sights: no observation is ever worded like one of these. */
export const NOT_DONE = "not done";
export const ELSE = "something else";
export const NOT_ASKED = "not asked";

export const HEADING = "Record";
export const ABOUT = "change what was seen; the conclusion follows";
export const TABLE = "The record";
export const TEST = "Test";
/** A place of the record: "a(i) for K". */
export const cellFor = (cell: string, sample: string) => `${cell} for ${sample}`;
export const CHANGED = "changed";
/** Before what stood there. */
export const WAS = ", was:";

export const RESET = "Reset to the walkthrough's record";
export const EMPTY = "Start with an empty record";
export const UNDO = "Undo";
export const AS_GIVEN = "As recorded in the walkthrough.";
export const changed = (count: number) => `${count} changed.`;
export const filledIn = (done: number, of: number) => `Your own record: ${done} of ${of} filled in.`;

export const UNREADABLE = "Part of the link could not be read.";
/** @param own the record was begun empty */
export const unreadableLeft = (own: boolean) =>
  own ? "There your record is empty." : "There the record is as the walkthrough has it.";
export const IN_ADDRESS = "The address of this page now holds your record: copy it to keep or share it.";
export const IN_FRAME = "This record goes when the page is closed: print it, or open the walkthrough to keep yours.";
export const FROM_DISK = "This page was opened from disk and keeps no record: print it to keep yours.";

/** Spoken after a change, what was done before what follows from it. */
export const FOUND_IN_LINK = "The record is the one in the link";
export const EMPTIED = "The record is empty: no test is done";
export const BACK = "Back to the walkthrough's record";
export const UNDONE = "Undone";
export const STILL_THAT_OF_THE_WALKTHROUGH =
  "the conclusion could not be fetched, so it is still that of the walkthrough";

export const CONCLUDE_HEADING = "Conclude";
export const CONCLUDE_ABOUT = "from this record and what the paper says";
export const HELD = "Your teacher hides the conclusion until you ask.";
export const SHOW_CONCLUSION = "Show the conclusion";
export const WORKING = "Working it out …";
export const NOT_LOADED =
  "The conclusion could not be fetched, so the one below is still that of the walkthrough. Your record is kept in this page's address: check the connection and load the page again.";
export const NEEDS_SCRIPT =
  "Changing the record needs JavaScript; the lists below are switched off and show the walkthrough's own record, with all that follows from it.";

/** What is wrong with a link. */
export const linkTooLong = (letters: number, most: number) =>
  `The link is ${letters} characters long, expected at most ${most}.`;
/** Of an entry that can say one thing only. */
export const onlyUnderstood = (entry: string, found: string, own: string) =>
  `${entry}: found ${found}; only ${own} is understood there.`;
export const noSuchPlace = (name: string, such: string) =>
  `${name}: found no such place in this record, expected one such as ${such}.`;
export const noSuchSight = (place: string, found: string) =>
  `${place}: found ${found}, expected an observation of its list.`;
export const givenTwice = (place: string, times: number) => `${place}: found ${times} entries, expected one.`;
export const moreLikeThese = (count: number) => `And ${count} more like these.`;
export const nothingBehindMark = (found: string) => `${found}: nothing is read behind “#”, a record stands behind “?”.`;
export const quote = (text: string) => `“${text}”`;
