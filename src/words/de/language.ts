/** What the language itself settles: its tag, and how it joins and counts. */
import type { Language } from "../tags.ts";

export const LANGUAGE: Language = "de";
/** What a reader typed, its figures as the engine reads them: 0.1 where 0,1 stands, and "about" for "etwa". */
export const typedFigures = (typed: string): string =>
  typed.replace(/(\d),(?=\d)/g, "$1.").replace(/^(etwa|ca\.) +/i, "about ");
/** The last two of a list: "a, b und c", "a oder b". */
export const AND = "und";
export const OR = "oder";
/** "a", "a und b", "a, b und c"; with `OR` "a, b oder c". */
export const list = (words: readonly string[], last: string = AND): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words[words.length - 1]}`;
/** What a page without a translation says, in the language of the site. */
export const UNTRANSLATED = "Diese Seite ist noch nicht übersetzt; sie steht auf Englisch.";
