/** Where what is not collected goes. Apart, for pages that show the list only. */

/** Washed away later. */
export const BEAKER = "waste beaker";
/** Washed away at once, for what should meet nothing else. */
export const STRAIGHT = "sink, tube by tube";
