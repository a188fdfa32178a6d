/** A rack that could not be drawn anew for other tubes: loaded with the walkthrough, as the rest of the rack's words are not. */

export const NOT_DRAWN = "Not drawn.";
export const PLANNED_ONES = "The tubes above are the planned ones: check the connection and load the page again.";
