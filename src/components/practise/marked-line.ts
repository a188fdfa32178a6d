/** One line of the reader's record, read and marked. */

import { type MarkedLine, markLine } from "../../engine/wording/mark-line.ts";
import { readWords } from "../../engine/wording/read-words.ts";
import type { Practice, PracticeTest } from "./practice-table.ts";
import { tubeBefore } from "./tube-state.ts";
import type { Unknown } from "./unknowns.ts";

export interface OwnLine extends MarkedLine {
  /** What is credited in full. */
  model: string;
}

/** @param c place of the test; done on this sample and predicted */
export function markedLine(
  practice: Practice,
  tests: readonly PracticeTest[],
  of: Unknown,
  c: number,
  text: string,
): OwnLine {
  const cell = practice.table.cells[c];
  const seen = of.seen[c];
  const { solid, liquid } = tubeBefore(practice, tests, of, c);
  const read = text.trim() ? readWords(text, { ...tests[c].asked, solid: solid !== undefined }) : undefined;
  return {
    ...markLine(read, seen?.accepted ?? [], { solid: cell.dry ? "solid" : "precipitate", liquid }),
    model: seen ? cell.words[seen.reading] : "",
  };
}
