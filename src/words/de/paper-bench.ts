/** The bench for a paper of one's own, besides what `prepare.ts` says of any bench. */

export const MINUTE_BY_MINUTE = "Was wann zu tun ist, Minute für Minute";
export const WORKING = "Wird ausgerechnet …";
export const ORDER_NOT_FETCHED = "Das ließ sich nicht laden. Lade die Seite neu.";
