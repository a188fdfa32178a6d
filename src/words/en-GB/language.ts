/** What the language itself settles: its tag, and how it joins and counts. */
import type { Language } from "../tags.ts";

export const LANGUAGE: Language = "en-GB";
/** What a reader typed, its figures as the engine reads them. */
export const typedFigures = (typed: string): string => typed;
/** The last two of a list: "a, b and c", "a or b". */
export const AND = "and";
export const OR = "or";
/** "a", "a and b", "a, b and c"; with `OR` "a, b or c". */
export const list = (words: readonly string[], last: string = AND): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words[words.length - 1]}`;
/** What a page without a translation says, in the language of the site. */
export const UNTRANSLATED = "This page has not been translated yet.";
