import { useMemo, useRef } from "preact/hooks";
import { NOT_ASKED, TABLE, TEST } from "#words/record.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { Words } from "../Words.tsx";
import { Cell } from "./Cell.tsx";
import type { RecordSheet, SheetLine } from "./record-sheet.ts";

interface Props {
  table: RecordSheet;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  record: TableRecord;
  /** What changes are measured against. */
  before: TableRecord;
  awake: boolean;
  /** A record that says "something else" can be kept where this table stands. */
  takesElse?: boolean;
  onChange(sample: string, cell: SheetLine, reading: number | undefined): void;
}

/** Tests down, samples across, an observation to choose in each place. */
export function RecordTable({ table, tests, record, before, awake, takesElse, onChange }: Props) {
  const letters = useMemo(() => table.samples.map(({ label }) => label), [table]);
  // A row is left alone while nothing in it changes; what it calls must still be the newest.
  const newest = useRef(onChange);
  newest.current = onChange;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard
    <section class="scroll" aria-label={TABLE} tabIndex={0}>
      <table class="record">
        <thead>
          <tr>
            <th scope="col">{TEST}</th>
            {letters.map((sample) => (
              <th scope="col" key={sample}>
                {sample}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.cells.map((cell, index) => (
            <Row
              key={cell.id}
              cell={cell}
              test={tests[index]}
              letters={letters}
              readings={letters.map((sample) => record[sample]?.[cell.id])}
              before={letters.map((sample) => before[sample]?.[cell.id])}
              awake={awake}
              takesElse={takesElse}
              newest={newest}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface RowProps {
  cell: SheetLine;
  /** What is done, in words. */
  test: string;
  /** The samples; what was seen on each, and what was before anything was changed. */
  letters: string[];
  readings: (number | undefined)[];
  before: (number | undefined)[];
  awake: boolean;
  takesElse?: boolean;
  newest: { current: Props["onChange"] };
}

/** One line of the record. The browser redraws it only when something in it changed: the lists of all lines are long. */
function Row({ cell, test, letters, readings, before, awake, takesElse, newest }: RowProps) {
  return useMemo(
    () => (
      <tr>
        <th scope="row">
          <b>{cell.id}</b> <Words of={test} />
        </th>
        {letters.map((sample, s) => (
          <td key={sample} data-head={sample}>
            {cell.samples.includes(sample) ? (
              <div>
                <Cell
                  cell={cell}
                  sample={sample}
                  reading={readings[s]}
                  before={before[s]}
                  awake={awake}
                  takesElse={takesElse}
                  onChange={(reading) => newest.current(sample, cell, reading)}
                />
              </div>
            ) : (
              <span class="soft">{NOT_ASKED}</span>
            )}
          </td>
        ))}
      </tr>
    ),
    [cell, awake, ...readings, ...before],
  );
}
