/** Faults in content, as data; their words and their excerpt of the source. */

/** A place in a source file, counted from 1. */
export interface SourcePlace {
  file: string;
  line: number;
  column: number;
}

export interface ContentFault extends SourcePlace {
  /** What is wrong, in a few words: "record P a(ii)". */
  what: string;
  /** What the author stated, when something was. */
  stated?: string;
  /** What the engine (or the schema) found. */
  found: string;
  /** What to do about it. */
  advice: string;
  /** The source line, to show where. */
  excerpt?: string;
}

/** Thrown when content must not be published. Its message lists every fault of the run. */
export class ContentFaults extends Error {
  override name = "ContentFaults";
  readonly faults: readonly ContentFault[];

  constructor(faults: readonly ContentFault[]) {
    super(
      `${faults.length} fault${faults.length === 1 ? "" : "s"} in the content\n\n${faults.map(wordFault).join("\n\n")}`,
    );
    this.faults = faults;
  }
}

/** Of a long line, so much is shown to both sides of the place. */
const SHOWN = 120;

/** The line with a caret under the place, each behind the line's number; cut to what fits a terminal. */
function wordExcerpt({ line, column }: SourcePlace, excerpt: string): string[] {
  const number = String(line);
  const at = column - 1;
  const from = Math.max(0, at - SHOWN);
  const before = `${from > 0 ? "…" : ""}${excerpt.slice(from, at)}`;
  const after = `${excerpt.slice(at, at + SHOWN)}${excerpt.length > at + SHOWN ? "…" : ""}`;
  return [`  ${number} | ${before}${after}`, `  ${" ".repeat(number.length)} | ${" ".repeat(before.length)}^`];
}

/** Room for a list of all reagents or pages; what is longer quotes something endless. */
const LONGEST = 4000;
const cut = (words: string): string => (words.length > LONGEST ? `${words.slice(0, LONGEST)}…` : words);

/** One fault as an author reads it: place, what, stated, found, advice, excerpt with a caret. */
export function wordFault(fault: ContentFault): string {
  const lines = [`${fault.file}:${fault.line}:${fault.column}  ${cut(fault.what)}`];
  if (fault.stated !== undefined) lines.push(`  stated: ${cut(fault.stated)}`);
  lines.push(`  found:  ${cut(fault.found)}`, `  to do:  ${cut(fault.advice)}`);
  if (fault.excerpt !== undefined) lines.push(...wordExcerpt(fault, fault.excerpt));
  return lines.join("\n");
}
