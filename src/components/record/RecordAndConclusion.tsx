/**
 * The record and what follows from it. Built into the page with the walkthrough's own record, so that it reads without script; in the
 * browser every observation can be changed and the conclusion is worked out anew, from the table of predictions alone.
 */
import { useMemo, useState } from "preact/hooks";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { deduce } from "../../engine/deduction/deduce.ts";
import { ConclusionPanel } from "../conclude/ConclusionPanel.tsx";
import { fitsAlone } from "../conclude/evidence.ts";
import { headline } from "../conclude/headline.ts";
import { plain } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { Cell } from "./Cell.tsx";

interface Props {
  /** A PredictionTable as JSON: as one string it takes a third of the space it would as separate properties. */
  table: string;
  /** The walkthrough's record. */
  given: TableRecord;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
}

export default function RecordAndConclusion({ table: json, given, tests }: Props) {
  const table = useMemo(() => JSON.parse(json) as PredictionTable, [json]);
  const [record, keep] = useState(given);
  const [news, announce] = useState("");
  const conclusion = useMemo(() => deduce(table, record), [table, record]);
  const letters = table.samples.map((each) => each.label);
  const headlinesFor = (of: TableRecord, result = deduce(table, of)) =>
    result.samples.map((each) =>
      headline(
        table,
        result,
        each,
        letters.filter((sample) => !fitsAlone(table, of, sample)),
      ),
    );
  const changes = letters.flatMap((sample) =>
    table.cells.filter((cell) => record[sample]?.[cell.id] !== given[sample]?.[cell.id]),
  ).length;

  const take = (next: TableRecord, what: string) => {
    keep(next);
    announce(plain(`${what} ${headlinesFor(next).join(" ")}`));
  };
  const change = (sample: string, cell: PredictionTable["cells"][number], reading: number | undefined) => {
    const { [cell.id]: _, ...row } = record[sample] ?? {};
    take(
      { ...record, [sample]: reading === undefined ? row : { ...row, [cell.id]: reading } },
      `${cell.id} for ${sample}: ${reading === undefined ? "not done" : cell.words[reading]}.`,
    );
  };

  return (
    <>
      <section class="step" aria-labelledby="record">
        <h2 id="record">
          Record <small>change what was seen; the conclusion follows</small>
        </h2>
        <div class="tools">
          <button
            type="button"
            disabled={changes === 0}
            onClick={() => take(given, "Back to the walkthrough's record.")}
          >
            Reset to the walkthrough's record
          </button>
          <span>{changes === 0 ? "As recorded in the walkthrough." : `${changes} changed.`}</span>
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard */}
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
                    <td key={sample}>
                      {cell.samples.includes(sample) ? (
                        <Cell
                          cell={cell}
                          sample={sample}
                          reading={record[sample]?.[cell.id]}
                          given={given[sample]?.[cell.id]}
                          onChange={(reading) => change(sample, cell, reading)}
                        />
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
      </section>
      <section class="step" aria-labelledby="conclude">
        <h2 id="conclude">
          Conclude <small>from this record and what the paper says</small>
        </h2>
        <p class="vh" aria-live="polite">
          {news}
        </p>
        <ConclusionPanel
          table={table}
          record={record}
          conclusion={conclusion}
          headlines={headlinesFor(record, conclusion)}
        />
      </section>
    </>
  );
}
