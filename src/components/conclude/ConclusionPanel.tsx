import type { ComponentChildren } from "preact";
import * as say from "#words/conclude.ts";
import { AND_ALSO } from "#words/paper-says.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Agreement } from "../../engine/deduction/conclusion.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { Words } from "../Words.tsx";
import { AfterPaint } from "./AfterPaint.tsx";
import type { Finding, Recorded } from "./finding.ts";
import { InSight } from "./InSight.tsx";
import { Matrix } from "./Matrix.tsx";
import { NextTest } from "./NextTest.tsx";
import { Repeats } from "./Repeats.tsx";
import { Standings } from "./Standings.tsx";

export interface Concluded extends Recorded {
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  /** What the reader's changes come to, where there is a record they are held against. */
  changed?: ComponentChildren;
  /** What stands under the next test when no test of the paper would tell more. `left[s]`: salts that sample s may still hold. */
  beyond?: (left: number[][]) => ComponentChildren;
}

const isEmpty = (record: TableRecord) => Object.values(record).every((row) => Object.keys(row).length === 0);

/** From so many ways on, their number tells a reader nothing. */
const MANY_WAYS = 100;

/** What the paper's own statements struck out, each said once; the engine joins those that act together with ", and ". */
function statements(conclusion: Agreement): string[] {
  const said = conclusion.samples.flatMap((sample) =>
    sample.ions.flatMap((ion) =>
      ion.reasons.flatMap((reason) => (reason.by === "paper" ? reason.statement.split(AND_ALSO) : [])),
    ),
  );
  return [...new Set(said)];
}

function PaperAdds({ conclusion }: { conclusion: Agreement }) {
  const paper = unlessTooMuch(() => statements(conclusion)) ?? [];
  if (paper.length === 0) return null;
  return (
    <p class="small">
      <b>{say.PAPER_ADDS}</b> <Words of={paper.join("; ")} />.
    </p>
  );
}

/** What follows from the record: the verdict, what to repeat, and the evidence for each sample. */
export function ConclusionPanel({
  table,
  tests,
  names,
  record,
  changed,
  beyond,
  conclusion,
  candidates,
  headlines,
}: Concluded & Finding) {
  const ways = conclusion.assignments;
  return (
    <>
      {isEmpty(record) && (
        <p>
          <b>{say.NOTHING_YET}</b> {say.NOTHING_YET_ABOUT}
        </p>
      )}
      <ul class="verdict">
        {headlines.map((headline, index) => (
          <li key={conclusion.samples[index].sample}>
            <Words of={headline} />
          </li>
        ))}
      </ul>
      {ways === 0 && <AfterPaint on={record} of={() => <Repeats table={table} record={record} />} />}
      {changed && <AfterPaint on={record} of={() => changed} />}
      <AfterPaint on={record} of={() => <PaperAdds conclusion={conclusion} />} />
      {ways < MANY_WAYS && <p class="small soft">{say.ways(ways)}</p>}
      <AfterPaint
        on={record}
        of={() => (
          <NextTest
            table={table}
            tests={tests}
            record={record}
            ways={ways}
            beyond={beyond?.(conclusion.samples.map(({ salts }) => salts))}
          />
        )}
      />
      <InSight class="side" on={conclusion} of={() => <Standings conclusion={conclusion} names={names} />} />
      <p class="small">
        <span class="tick" /> {say.LEGEND.fits} <span class="cross" /> {say.LEGEND.clashes} <span class="none" />{" "}
        {say.LEGEND.nothing}
        {table.sets.some(({ atBorder }) => atBorder.length > 0) && (
          <>
            {" "}
            <span class="just" /> {say.LEGEND.border}
          </>
        )}
      </p>
      {conclusion.samples.map((of, s) => (
        <InSight
          key={of.sample}
          class="evidence"
          on={conclusion}
          of={() => <Matrix table={table} names={names} record={record} of={of} candidates={candidates[s]} />}
        />
      ))}
    </>
  );
}
