/** What a reader of YAML finds wrong, in the words of somebody who writes such a file and has not read the language's specification. */
import type { ErrorCode } from "yaml";

interface Told {
  found: string;
  advice: string;
}

const CLOSE = "close every bracket, brace and quotation mark on the line it belongs to";
const COLUMNS = "begin the entries of a group in one column, two further in than the group they belong to";

const TOLD: Partial<Record<ErrorCode, Told>> = {
  BAD_INDENT: { found: "a list or group that is not closed, or a line that stands too far out", advice: CLOSE },
  MISSING_CHAR: { found: "a quotation mark or bracket that is not closed, or a comma left out", advice: CLOSE },
  BLOCK_AS_IMPLICIT_KEY: {
    found: "a second colon in one entry, or a line that stands too far in",
    advice: `put text with a colon between quotation marks, and ${COLUMNS}`,
  },
  MULTILINE_IMPLICIT_KEY: {
    found: "a name of an entry that goes on over more than one line",
    advice: `write a colon after the name of each entry, and ${COLUMNS}`,
  },
  TAB_AS_INDENT: { found: "a tab before an entry", advice: "use spaces at the beginning of a line" },
  DUPLICATE_KEY: { found: "a second entry of this name in one group", advice: "keep one of them" },
  BAD_SCALAR_START: {
    found: "text that begins with a sign which means something else here",
    advice: "put the text between quotation marks",
  },
  UNEXPECTED_TOKEN: { found: "something that has no place here", advice: `${CLOSE}, and ${COLUMNS}` },
};

const OTHER: Told = { found: "something that cannot be read", advice: `${CLOSE}, and ${COLUMNS}` };

export const tellYaml = (code: ErrorCode): Told => TOLD[code] ?? OTHER;
