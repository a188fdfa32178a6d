/** The bench for a paper of one's own, besides what `prepare.ts` says of any bench. */

export const MINUTE_BY_MINUTE = "Who does what when, minute by minute";
export const WORKING = "Working it out …";
export const ORDER_NOT_FETCHED = "It could not be fetched. Load the page again.";
