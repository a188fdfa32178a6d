/** Where what is not collected goes, by name: small enough for a page that shows the list. */

/** Washed away later. */
export const BEAKER = "waste beaker";

/** Washed away at once, for what should meet nothing else. */
export const STRAIGHT = "sink, tube by tube";
