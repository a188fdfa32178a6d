/** What somebody typed or a link carries, as a fault quotes it. */

/** Longest text of an entry that is quoted back. */
const QUOTED = 20;

/** "nothing", or the text between quotation marks, cut when it is long. */
export function foundText(text: string): string {
  const typed = text.trim();
  if (typed === "") return "nothing";
  return `“${typed.length > QUOTED ? `${typed.slice(0, QUOTED)}…` : typed}”`;
}
