/** What somebody typed or a link carries, as a fault quotes it. */

export const NOTHING = "nichts";
export const quote = (text: string) => `„${text}“`;
export const inLinkOneOf = (what: string, found: string, expected: string) =>
  `Im Link, ${what}: gefunden ${found}, erwartet wird eines von ${expected}.`;
export const wholeNumber = (what: string, found: string, least: number, most: number) =>
  `${what}: gefunden ${found}, erwartet wird eine ganze Zahl von ${least} bis ${most}.`;
/** A fault of a link; `fault` begins with the name of an entry. */
export const inLink = (fault: string) => `Im Link, ${fault}`;
