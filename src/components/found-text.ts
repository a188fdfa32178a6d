/** What somebody typed or a link carries, as a fault quotes it. */
import { NOTHING, quote } from "#words/found.ts";

/** Longest text of an entry that is quoted back. */
const QUOTED = 20;

/** "nothing", or the text between quotation marks, cut when it is long. */
export function foundText(text: string): string {
  const typed = text.trim();
  if (typed === "") return NOTHING;
  return quote(typed.length > QUOTED ? `${typed.slice(0, QUOTED)}…` : typed);
}
