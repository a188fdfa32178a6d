/** What the language itself settles: its tag, and how it joins and counts. */
import type { Language } from "../tags.ts";

export const LANGUAGE: Language = "de";
/** What stands between whole and parts of a number. */
export const DECIMAL = ",";
/** The last two of a list: "a, b und c", "a oder b". */
export const AND = "und";
export const OR = "oder";
/** What a page without a translation says, in the language of the site. */
export const UNTRANSLATED = "Diese Seite ist noch nicht übersetzt; sie steht auf Englisch.";
