/** Where what is not collected goes. Apart, for pages that show the list only. */

/** Washed away later. */
export const BEAKER = "Becherglas für Abfall";
/** Washed away at once, for what should meet nothing else. */
export const STRAIGHT = "Ausguss, Glas für Glas";
