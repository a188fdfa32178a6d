/** Why a paper of one's own could not be worked out, and what the worker says of its parts. */

export const NOT_STARTED = "The calculation could not be started in this browser.";
export const TOO_LONG =
  "The calculation took too long and was stopped. Tick fewer ions, or enter fewer tests; what you typed is kept.";
export const FAILED = "The calculation failed. What you typed is kept; load the page again to try once more.";
export const UNREADABLE =
  "The calculation gave an answer that cannot be read. Load the page again; what you typed is kept.";
export const tooManySalts = (many: number, most: number) =>
  `These lists of ions leave ${many} different things a sample could hold; more than ${most} are not worked out. Tick the ions your paper names.`;
export const tooManySights = (test: string) =>
  `Test ${test} could show more different things than one line of a record has room for. Tick fewer ions, or give some of its steps a line of their own.`;
export const noEquilibrium = (why: string) =>
  `This could not be worked out: ${why}. Look at the strengths and volumes.`;
/** A step that reads well and cannot be done. */
export const impossible = (found: string, advice: string) => `found ${found}; ${advice}`;
/** In the place of a caution that has been said. */
export const asBeside = (part: string) => `As beside part ${part}.`;
