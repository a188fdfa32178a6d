/** The record of a draft in the terms of the table that was worked out for it. */
import type { TableCell, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Observation } from "../../engine/practical.ts";
import type { Draft } from "./draft.ts";
import type { PaperWork } from "./paper-work.types.ts";

export interface RecordOf {
  record: TableRecord;
  /** Some observation has no words in the table yet: the worker must be asked. */
  unknown: boolean;
}

/** What was recorded at a cell of the table. */
const seenAt = (draft: Draft, work: PaperWork, cell: number, letter: string): Observation | undefined => {
  const [part, test] = work.lines[cell];
  const seen = draft.parts[part]?.tests[test]?.seen;
  return seen && Object.hasOwn(seen, letter) ? seen[letter] : undefined;
};

export function recordOf(draft: Draft, work: PaperWork): RecordOf {
  const record: TableRecord = {};
  let unknown = false;
  work.table.cells.forEach((cell, index) => {
    for (const letter of cell.samples) {
      const seen = seenAt(draft, work, index, letter);
      if (seen === undefined) continue;
      const reading = readingOf(cell, seen, work.seen[letter]?.[cell.id]);
      if (reading === undefined) unknown = true;
      else record[letter] = { ...record[letter], [cell.id]: reading };
    }
  });
  return { record, unknown };
}

function readingOf(cell: TableCell, seen: Observation, told?: { of: string; reading: number }): number | undefined {
  const text = JSON.stringify(seen);
  const own = cell.readings.findIndex((one) => JSON.stringify(one) === text);
  if (own >= 0) return own;
  return told?.of === text ? told.reading : undefined;
}

/** The draft with an observation written down, or crossed out. */
export function withSeen(
  draft: Draft,
  work: PaperWork,
  cell: string,
  letter: string,
  seen: Observation | undefined,
): Draft {
  const [part, test] = work.lines[work.table.cells.findIndex(({ id }) => id === cell)];
  return {
    ...draft,
    parts: draft.parts.map((one, p) =>
      p !== part
        ? one
        : {
            ...one,
            tests: one.tests.map((each, t) => {
              if (t !== test) return each;
              const { [letter]: _, ...others } = each.seen;
              return { ...each, seen: seen === undefined ? others : { ...others, [letter]: seen } };
            }),
          },
    ),
  };
}
