/** The languages a site is built in. Each is an edition of its own, in a folder of its own but for the first, with the words of no other. */
import { LANGUAGE } from "#words/language.ts";
import { LANGUAGES, type Language, TAGS } from "../words/tags.ts";

/** Names the one language to build, whatever the department lists. */
const VARIABLE = "IONWRIGHT_LANGUAGE";

/** A setting that cannot be used as it is. */
export class LanguageFault extends Error {
  override name = "SettingFault";
}

/**
 * The languages of a site, the first at its base: the one that the environment names, or the department's.
 * @throws LanguageFault when the interface is not written in it
 */
export function siteLanguages(
  environment: Readonly<Record<string, string | undefined>>,
  { languages }: { languages: readonly Language[] },
): readonly Language[] {
  const named = environment[VARIABLE];
  if (named === undefined || named === "") return languages;
  if ((TAGS as string[]).includes(named)) return [named as Language];
  throw new LanguageFault(`${VARIABLE} is "${named}". Give one of ${TAGS.join(", ")}.`);
}

/** The folder of an edition below the site's base: empty for the first, else `de/`. */
export const editionFolder = (language: Language, languages: readonly Language[]): string =>
  languages[0] === language ? "" : `${language}/`;

/**
 * The language of a page of content where it is another than the site's: what is not translated stands in English, and says so.
 * @param file its path in the project; a department writes in the first of its own languages
 */
export const foreignLanguage = (file: string | undefined): Language | undefined =>
  LANGUAGE !== TAGS[0] && file?.startsWith("src/content/") && !file.startsWith(`src/content/${LANGUAGE}/`)
    ? TAGS[0]
    : undefined;

/** The same page in one of the site's languages. */
export interface Edition {
  language: Language;
  /** The language's own name. */
  name: string;
  /** Path on the host. */
  path: string;
  /** The page itself. */
  here: boolean;
}

/**
 * A page in all languages of its site; none where there is only one.
 * @param path of the page on its host
 * @param base of the edition it belongs to, as the build was given it
 */
export function editionsOf(path: string, base: string, languages: readonly Language[], language = LANGUAGE): Edition[] {
  if (languages.length < 2) return [];
  const own = base.replace(/\/?$/, "/");
  const root = own.slice(0, own.length - editionFolder(language, languages).length);
  return languages.map((one) => ({
    language: one,
    name: LANGUAGES[one].name,
    path: root + editionFolder(one, languages) + path.slice(own.length),
    here: one === language,
  }));
}
