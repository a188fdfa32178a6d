/** The bench for a paper of one's own. */

export const TAKE_CARE = "Take care";
export const TUBES_TO_SCALE = "Tubes, drawn to one scale";
export const MIND = "Mind:";
export const CHECK = "Check before you begin";

export const ORDER = "Order of work";
export const MINUTE_BY_MINUTE = "Who does what when, minute by minute";
export const WORKING = "Working it out …";
export const ORDER_NOT_FETCHED = "It could not be fetched. Load the page again.";

export const SET_OUT = "Set out";
export const WHAT = "What";
export const USED = "Used";
export const SAMPLE = "sample";
export const smallPieces = (count: number) => `${count} small pieces`;

export const GASES = "Gases to be ready for";
/** Heads of the columns, repeated beside each entry on a phone. */
export const GAS = "Gas";
export const TESTS = "Tests";
export const FROM = "From";
export const HAVE_READY = "Have ready";

export const EMPTIED = "Where each tube is emptied";
export const ALKALI_FIRST =
  "Tubes with alkali first, tubes with acid last and a little at a time, in the fume cupboard if a sulfite may be there.";
export const TUBES = "Tubes";
export const INTO = "Into";
export const HOW = "How";
