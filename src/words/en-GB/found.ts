/** What somebody typed or a link carries, as a fault quotes it. */

export const NOTHING = "nothing";
export const quote = (text: string) => `“${text}”`;
export const inLinkOneOf = (what: string, found: string, expected: string) =>
  `In the link, ${what}: found ${found}, expected one of ${expected}.`;
export const wholeNumber = (what: string, found: string, least: number, most: number) =>
  `${what}: found ${found}, expected a whole number from ${least} to ${most}.`;
/** A fault of a link; `fault` begins with the name of an entry. */
export const inLink = (fault: string) => `In the link, ${fault.charAt(0).toLowerCase()}${fault.slice(1)}`;
