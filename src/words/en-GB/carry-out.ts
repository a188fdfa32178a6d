/** Carry out: the parts with their cautions, and what happens in each test. */

export const HEADING = "Carry out";
export const ABOUT = "one fresh tube for each sample in each part";
/** Beside a part that is done on some of the samples. */
export const onlyOn = (letters: string) => `(${letters} only)`;
export const besidePart = (label: string) => `Beside part ${label}`;
/** Before an author's note. */
export const WHY = "Why.";
export const PAPER_SAYS = "The paper says:";

export const HAPPENS = "What happens and why";
export const NAMES_SALTS = "(names the salts)";
/** After a heading that stands at many tests, for those who hear it alone. */
export const inCell = (cell: string) => `in ${cell}`;
export const NOTHING_SHOWS = "nothing reacts so that it shows.";
export const curveOf = (sample: string) => `Curve of ${sample}`;
export const NO_CONSTANT = "What no constant says";
export const TOO_SLOW = "What minutes are too short for";
export const HELD_BACK = "more stable, but too slow to form:";

/** A caution in the margin, what the department says of its laboratory, and its own bottles. */
export const TAKE_CARE = "Take care:";
/** Before a part that may be unsafe on what a sample may be. */
export const ASK_FIRST = "Ask first.";
export const OUR_LABORATORY = "In our laboratory.";
export const EMERGENCY = "In an emergency.";
export const HOUSE_BOTTLES = "With the bottles of this school:";
