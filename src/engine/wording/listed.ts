/** Words in a row as a sentence has them. */

/** @example listed(["P", "Q", "R"], "and") // "P, Q and R" */
export const listed = (words: readonly string[], last: "and" | "or"): string =>
  words.join(", ").replace(/, ([^,]*)$/, ` ${last} $1`);
