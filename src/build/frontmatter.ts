/** The frontmatter of an MDX page as data, with the place in the file of every entry. */
import { LineCounter, parseDocument } from "yaml";
import { type ContentFault, ContentFaults, type SourcePlace } from "./faults.ts";

export interface Frontmatter {
  file: string;
  data: unknown;
  /** Place of an entry, or of the nearest entry around it that exists. */
  placeOf(path: readonly (string | number)[]): SourcePlace & { excerpt: string };
}

const FENCE = /^\uFEFF?---\r?\n([\s\S]*?)\r?\n---(?:\r?\n|$)/;

/**
 * Reads the frontmatter of `text`.
 * @throws ContentFaults when there is none or it is not YAML
 */
export function readFrontmatter(file: string, text: string): Frontmatter {
  const match = FENCE.exec(text);
  if (!match) {
    throw new ContentFaults([
      {
        file,
        line: 1,
        column: 1,
        what: "no frontmatter",
        found: "a page that does not begin with ---",
        advice: "begin with a line ---, then the practical, then a line ---",
      },
    ]);
  }
  const lines = text.split(/\r?\n/);
  const counter = new LineCounter();
  const document = parseDocument(match[1], { lineCounter: counter, prettyErrors: false });
  const at = (offset: number) => {
    const { line, col } = counter.linePos(offset);
    return { file, line: line + 1, column: Math.max(col, 1), excerpt: lines[line] ?? "" };
  };
  if (document.errors.length > 0) {
    throw new ContentFaults(
      document.errors.map(
        (error): ContentFault => ({
          ...at(error.pos[0]),
          what: "the frontmatter is not YAML",
          found: error.message,
          advice: "check indentation, colons and brackets at this place",
        }),
      ),
    );
  }
  return {
    file,
    data: plainData(document, file),
    placeOf(path) {
      for (let length = path.length; length > 0; length--) {
        const node = document.getIn(path.slice(0, length), true) as { range?: [number, number, number] } | undefined;
        if (node?.range) return at(node.range[0]);
      }
      return at(0);
    },
  };
}

/** The document as plain data. Aliases that unfold without end are refused by the reader; that is a fault of the page, not a crash. */
function plainData(document: ReturnType<typeof parseDocument>, file: string): unknown {
  try {
    return document.toJS();
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    throw new ContentFaults([
      {
        file,
        line: 1,
        column: 1,
        what: "the frontmatter repeats itself without end",
        found: error.message,
        advice: "write repeated entries out instead of using YAML aliases",
      },
    ]);
  }
}
