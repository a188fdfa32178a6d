/** Where no test of the paper would tell more: the standard test that would, what each sight would mean, and what to do after it. */
import * as say from "#words/further-tests.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { furtherTests, onward, type Remaining } from "../../engine/deduction/further-tests.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { Words } from "../Words.tsx";
import type { FurtherList } from "./further-list.ts";
import { wordNone, wordOutcome, wordSight } from "./further-words.ts";
import { useFurther } from "./use-further.ts";

/** The list itself, or the address from which it is fetched; neither where a paper's own tests never leave two salts together. */
export interface FurtherSource {
  further?: FurtherList;
  furtherAt?: string;
}

interface Props extends FurtherSource {
  table: PredictionTable;
  /** left[s]: salts that sample s may still hold. */
  left: number[][];
}

export function FurtherTests({ table, left, further: given, furtherAt }: Props) {
  const { further, failed } = useFurther(given, furtherAt);
  if (failed) return <p class="caution">{say.NOT_FETCHED}</p>;
  if (!further) return furtherAt ? <p class="soft">{say.LOOKING}</p> : null;
  const samples = unlessTooMuch(() => furtherTests({ ...table, cells: further.cells, sets: further.sets }, left));
  if (!samples) return <p class="soft">{say.TOO_OPEN}</p>;
  const some = samples.some(({ remaining }) => remaining.test);
  return (
    <section aria-labelledby="further">
      <h3 id="further">{some ? say.COULD_SETTLE : say.WOULD_NOT_HELP}</h3>
      {some && <p class="small">{say.ASK_FIRST}</p>}
      {samples.map(({ sample, remaining }) => (
        <FurtherTest key={sample} table={table} further={further} sample={sample} remaining={remaining} />
      ))}
    </section>
  );
}

interface One {
  table: PredictionTable;
  further: FurtherList;
  sample: string;
  remaining: Remaining;
}

function FurtherTest({ table, further, sample, remaining }: One) {
  const { test } = remaining;
  if (!test) {
    return (
      <p>
        <Words of={wordNone(table, further, sample, remaining)} />
      </p>
    );
  }
  const at = (cell: string) => further.cells.findIndex(({ id }) => id === cell);
  const c = at(test.cell);
  const { title, does } = further.tests[c];
  const cautions = [...new Set(onward(remaining).cells.flatMap((cell) => further.tests[at(cell)].cautions))];
  return (
    <>
      <p>
        <b>{say.titleFor(title, sample)}</b>. <Words of={does} />
      </p>
      {cautions.length > 0 && (
        <div class="caution">
          {cautions.map((n) => (
            <p key={n}>
              <b>{say.TAKE_CARE}</b> <Words of={further.cautions[n].says} />{" "}
              <a href={further.cautions[n].href}>{further.cautions[n].title}</a>
            </p>
          ))}
        </div>
      )}
      <ul>
        {[...test.outcomes, ...test.atBorder].map((outcome) => (
          <li key={outcome.reading}>
            <Words
              of={`${wordSight(further.cells[c], outcome, test)}: ${wordOutcome(table, further, sample, outcome)}`}
            />
          </li>
        ))}
      </ul>
    </>
  );
}
