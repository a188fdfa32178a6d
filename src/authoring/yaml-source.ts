/** YAML that a person wrote, as data, with the place in the file of every entry. */
import { type ErrorCode, LineCounter, parseDocument } from "yaml";
import { ContentFaults, type SourcePlace } from "./faults.ts";
import { tellYaml } from "./yaml-faults.ts";

export interface YamlSource {
  file: string;
  data: unknown;
  /** Place of an entry, or of the nearest entry around it that exists. */
  placeOf(path: readonly (string | number)[]): SourcePlace & { excerpt: string };
}

/** Where a piece of YAML stands in its file, and what a fault calls it. */
export interface YamlPlace {
  file: string;
  /** "the frontmatter". */
  called: string;
  /** All lines of the file, for excerpts. */
  lines: readonly string[];
  /** Lines of the file above the first of the YAML. */
  above: number;
}

/** One slip may spoil every line that follows; so many places are told. */
const TOLD = 12;

function told({ code, message }: { code: ErrorCode; message: string }, more: string) {
  const { found, advice } = tellYaml(code);
  // The reader runs out of room where thousands of entries lie one within the other.
  const why = message.includes("call stack") ? "more entries within each other than can be read" : found;
  return { found: `${why}${more}`, advice };
}

/** @throws ContentFaults with the first places that are not YAML */
export function readYaml(yaml: string, { file, called, lines, above }: YamlPlace): YamlSource {
  const counter = new LineCounter();
  const document = parseDocument(yaml, { lineCounter: counter, prettyErrors: false });
  const at = (offset: number) => {
    const { line, col } = counter.linePos(offset);
    return { file, line: line + above, column: Math.max(col, 1), excerpt: lines[line + above - 1] ?? "" };
  };
  if (document.errors.length > 0) {
    const more = document.errors.length - TOLD;
    throw new ContentFaults(
      document.errors.slice(0, TOLD).map((error, index) => ({
        ...at(error.pos[0]),
        what: `${called} is not YAML`,
        ...told(error, index === TOLD - 1 && more > 0 ? `; and ${more} more like it` : ""),
      })),
    );
  }
  return {
    file,
    data: plainData(document, file, called),
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
function plainData(document: ReturnType<typeof parseDocument>, file: string, called: string): unknown {
  try {
    return document.toJS();
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    throw new ContentFaults([
      {
        file,
        line: 1,
        column: 1,
        what: `${called} repeats itself without end`,
        found: "entries that name each other in a circle, or far too many of them",
        advice: "write repeated entries out instead of using YAML aliases",
      },
    ]);
  }
}
