/** Carry out: the parts with their cautions, and what happens in each test. */

export const HEADING = "Durchführen";
export const ABOUT = "in jedem Teil ein frisches Reagenzglas für jede Probe";
/** Beside a part that is done on some of the samples. */
export const onlyOn = (letters: string) => `(nur ${letters})`;
export const besidePart = (label: string) => `Zu Teil ${label}`;
/** Before an author's note. */
export const WHY = "Warum.";
export const PAPER_SAYS = "Die Aufgabe sagt:";

export const HAPPENS = "Was geschieht, und warum";
export const NAMES_SALTS = "(nennt die Salze)";
/** After a heading that stands at many tests, for those who hear it alone. */
export const inCell = (cell: string) => `in ${cell}`;
export const NOTHING_SHOWS = "nichts reagiert so, dass man es sieht.";
export const curveOf = (sample: string) => `Kurve von ${sample}`;
export const NO_CONSTANT = "Was keine Konstante sagt";
export const TOO_SLOW = "Wofür Minuten zu kurz sind";
export const HELD_BACK = "beständiger, aber zu langsam in der Bildung:";

/** A caution in the margin, what the department says of its laboratory, and its own bottles. */
/** Before a part that may be unsafe on what a sample may be. */
export const ASK_FIRST = "Erst fragen.";
export const TAKE_CARE = "Vorsicht:";
export const OUR_LABORATORY = "In unserem Labor.";
export const EMERGENCY = "Im Notfall.";
export const HOUSE_BOTTLES = "Mit den Flaschen dieser Schule:";
