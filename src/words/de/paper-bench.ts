/** The bench for a paper of one's own. */

export const TAKE_CARE = "Vorsicht";
export const TUBES_TO_SCALE = "Reagenzgläser, alle im selben Maßstab";
export const MIND = "Achtung:";
export const CHECK = "Prüfe, bevor du beginnst";

export const ORDER = "Reihenfolge der Arbeit";
export const MINUTE_BY_MINUTE = "Was wann zu tun ist, Minute für Minute";
export const WORKING = "Wird ausgerechnet …";
export const ORDER_NOT_FETCHED = "Das ließ sich nicht laden. Lade die Seite neu.";

export const SET_OUT = "Bereitstellen";
export const WHAT = "Was";
export const USED = "Verbraucht";
export const SAMPLE = "Probe";
export const smallPieces = (count: number) => `${count} kleine Stücke`;

export const GASES = "Gase, auf die du gefasst sein musst";
/** Heads of the columns, repeated beside each entry on a phone. */
export const GAS = "Gas";
export const TESTS = "Versuche";
export const FROM = "Aus";
export const HAVE_READY = "Halte bereit";

export const EMPTIED = "Wohin jedes Reagenzglas geleert wird";
export const ALKALI_FIRST =
  "Erst die Gläser mit Lauge, zuletzt die mit Säure und immer nur ein wenig, im Abzug, wenn ein Sulfit dabei sein kann.";
export const TUBES = "Gläser";
export const INTO = "Wohin";
export const HOW = "Wie";
