import type { PredictionTable, TableCell, TableRecord } from "../../engine/bench/prediction-table.ts";
import { Words } from "../Words.tsx";
import { Cell } from "./Cell.tsx";

interface Props {
  table: PredictionTable;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  record: TableRecord;
  /** What changes are measured against. */
  before: TableRecord;
  awake: boolean;
  onChange(sample: string, cell: TableCell, reading: number | undefined): void;
}

/** Tests down, samples across, an observation to choose in each place. */
export function RecordTable({ table, tests, record, before, awake, onChange }: Props) {
  const letters = table.samples.map(({ label }) => label);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard
    <section class="scroll" aria-label="The record" tabIndex={0}>
      <table class="record">
        <thead>
          <tr>
            <th scope="col">Test</th>
            {letters.map((sample) => (
              <th scope="col" key={sample}>
                {sample}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.cells.map((cell, index) => (
            <tr key={cell.id}>
              <th scope="row">
                <b>{cell.id}</b> <Words of={tests[index]} />
              </th>
              {letters.map((sample) => (
                <td key={sample} data-head={sample}>
                  {cell.samples.includes(sample) ? (
                    <div>
                      <Cell
                        cell={cell}
                        sample={sample}
                        reading={record[sample]?.[cell.id]}
                        before={before[sample]?.[cell.id]}
                        awake={awake}
                        onChange={(reading) => onChange(sample, cell, reading)}
                      />
                    </div>
                  ) : (
                    <span class="soft">not asked</span>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
