/** What the language itself settles: its tag, and how it joins and counts. */
import type { Language } from "../tags.ts";

export const LANGUAGE: Language = "en-GB";
/** What stands between whole and parts of a number. */
export const DECIMAL = ".";
/** The last two of a list: "a, b and c", "a or b". */
export const AND = "and";
export const OR = "or";
/** What a page without a translation says, in the language of the site. */
export const UNTRANSLATED = "This page has not been translated yet.";
