/**
 * The record and what follows from it. Built into the page with the walkthrough's own record, so that it reads without script; in the
 * browser every observation can be changed and the conclusion is worked out anew, from the table of predictions alone.
 */
import { useMemo, useState } from "preact/hooks";
import type { PredictionTable, TableCell, TableRecord } from "../../engine/bench/prediction-table.ts";
import { deduce } from "../../engine/deduction/deduce.ts";
import { useAwake } from "../awake.ts";
import { ConclusionPanel } from "../conclude/ConclusionPanel.tsx";
import { fitsAlone } from "../conclude/evidence.ts";
import { headline } from "../conclude/headline.ts";
import type { IonNames } from "../names.ts";
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
  /** Names of the ions the paper allows. */
  names: IonNames;
}

export default function RecordAndConclusion({ table: json, given, tests, names }: Props) {
  const table = useMemo(() => JSON.parse(json) as PredictionTable, [json]);
  const awake = useAwake();
  const [record, keep] = useState(given);
  /** What changes are measured against: the walkthrough's record, or nothing once the reader has begun one of their own. */
  const [before, measureFrom] = useState(given);
  const [news, announce] = useState("");
  const conclusion = useMemo(() => deduce(table, record), [table, record]);
  const letters = table.samples.map((each) => each.label);
  const headlinesFor = (of: TableRecord, result = deduce(table, of)) => {
    const stuck = letters.filter((sample) => !fitsAlone(table, of, sample));
    return result.samples.map((each) => headline(table, names, result, each, stuck));
  };
  const places = letters.flatMap((sample) =>
    table.cells.filter((cell) => cell.samples.includes(sample)).map(({ id }) => ({ sample, id })),
  );
  const at = (of: TableRecord, { sample, id }: { sample: string; id: string }) => of[sample]?.[id];
  const done = places.filter((place) => at(record, place) !== undefined).length;
  const changes = places.filter((place) => at(record, place) !== at(given, place)).length;

  const take = (next: TableRecord, what: string) => {
    keep(next);
    announce(plain(`${what} ${headlinesFor(next).join(" ")}`));
  };
  const begin = (next: TableRecord, what: string) => {
    measureFrom(next);
    take(next, what);
  };
  const change = (sample: string, cell: TableCell, reading: number | undefined) => {
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
            disabled={!awake || changes === 0}
            onClick={() => begin(given, "Back to the walkthrough's record.")}
          >
            Reset to the walkthrough's record
          </button>
          <button
            type="button"
            disabled={!awake || done === 0}
            onClick={() => begin({}, "The record is empty: no test is done.")}
          >
            Start with an empty record
          </button>
          <span>
            {changes === 0 && "As recorded in the walkthrough."}
            {changes > 0 && before === given && `${changes} changed.`}
            {changes > 0 && before !== given && `Your own record: ${done} of ${places.length} filled in.`}
          </span>
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
                    <td key={sample} data-head={sample}>
                      {cell.samples.includes(sample) ? (
                        <div>
                          <Cell
                            cell={cell}
                            sample={sample}
                            reading={record[sample]?.[cell.id]}
                            before={before[sample]?.[cell.id]}
                            awake={awake}
                            onChange={(reading) => change(sample, cell, reading)}
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
      </section>
      <section class="step" aria-labelledby="conclude">
        <h2 id="conclude">
          Conclude <small>from this record and what the paper says</small>
        </h2>
        <p class="vh" aria-live="polite">
          {news}
        </p>
        {done === 0 && (
          <p>
            <b>Nothing is recorded yet.</b> This is what the paper alone leaves open. Enter what you saw, and every ion
            that does not fit is struck out.
          </p>
        )}
        <ConclusionPanel
          table={table}
          names={names}
          record={record}
          conclusion={conclusion}
          headlines={headlinesFor(record, conclusion)}
        />
      </section>
    </>
  );
}
