/** The record to fill in: an observation chosen from what the allowed salts would show, or typed in words. */

import { useState } from "preact/hooks";
import * as say from "#words/paper.ts";
import { NOT_DONE } from "#words/record.ts";
import type { TableCell, TableRecord } from "../../engine/bench/prediction-table.ts";
import { useLater } from "../later.ts";
import { RecordTable } from "../record/RecordTable.tsx";
import type { Draft } from "./draft.ts";
import type { Place } from "./InWords.tsx";
import type { PaperWork } from "./paper-work.types.ts";
import { withSeen } from "./record-of.ts";
import type { Editing } from "./use-draft.ts";

interface Props extends Editing {
  draft: Draft;
  work: PaperWork;
  record: TableRecord;
  /** False while the table is that of the tests as they were before. */
  fresh: boolean;
  /** Something recorded is being found its place in the table. */
  waiting: boolean;
}

const NO_RECORD: TableRecord = {};

export function RecordPanel({ draft, work, record, fresh, waiting, edit }: Props) {
  const { table, tests } = work;
  const { module: words, failed, load } = useLater(() => import("./InWords.tsx"));
  const [news, tell] = useState("");
  const places = table.samples.flatMap(({ label: sample }) =>
    table.cells.flatMap((cell, c): Place[] =>
      cell.samples.includes(sample)
        ? [{ sample, cell: cell.id, done: record[sample]?.[cell.id] !== undefined, asked: work.asked[c] }]
        : [],
    ),
  );
  const done = places.filter((place) => place.done).length;
  const change = (sample: string, cell: TableCell, reading: number | undefined) => {
    edit(withSeen(draft, work, cell.id, sample, reading === undefined ? undefined : cell.readings[reading]));
    tell(say.wroteDown(cell.id, sample, reading === undefined ? NOT_DONE : cell.words[reading]));
  };
  const empty = () =>
    edit({
      ...draft,
      parts: draft.parts.map((part) => ({ ...part, tests: part.tests.map((test) => ({ ...test, seen: {} })) })),
    });
  return (
    <>
      <div class="tools">
        <span>{say.filledIn(done, places.length)}</span>
        <button type="button" disabled={done === 0 || !fresh} onClick={empty}>
          {say.EMPTY_RECORD}
        </button>
      </div>
      {!fresh && <p class="soft">{say.TESTS_AS_NOW}</p>}
      {waiting && fresh && <p class="soft">{say.FINDING_PLACE}</p>}
      <RecordTable table={table} tests={tests} record={record} before={NO_RECORD} awake={fresh} onChange={change} />
      <p class="vh" role="status">
        {news}
      </p>
      <details class="screen" onToggle={load}>
        <summary>{say.OWN_WORDS}</summary>
        {failed && <p class="caution">{say.PART_NOT_FETCHED}</p>}
        {words && fresh && (
          <words.InWords
            places={places}
            onWrite={({ sample, cell }, seen) => edit(withSeen(draft, work, cell, sample, seen))}
          />
        )}
      </details>
    </>
  );
}
