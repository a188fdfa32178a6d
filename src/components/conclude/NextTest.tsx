import type { ComponentChildren } from "preact";
import { list } from "#words/language.ts";
import * as say from "#words/next-test.ts";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { nextTests } from "../../engine/deduction/next-test.ts";
import { type Round, toTheEnd } from "../../engine/deduction/to-the-end.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { Words } from "../Words.tsx";
import { askFirst, meaning, warnUnsafe, wordSight } from "./further-words.ts";

interface Props {
  table: PredictionTable;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  record: TableRecord;
  /** Ways to give every sample a salt that are left now. */
  ways: number;
  /** What stands there when no test of the paper would tell more. */
  beyond?: ComponentChildren;
}

/** Tests named besides the best. */
const OTHERS = 3;

/** Records looked at to follow the tests left to the end; with more of them still open a reader wants the next test, not all. */
const FOLLOWED = 60;

/** The test not done yet that settles most whatever it shows, safe ones first, with what each sight would mean and what to do after it. */
export function NextTest({ table, tests, record, ways, beyond }: Props) {
  if (ways < 2) return null;
  const next = unlessTooMuch(() => nextTests(table, record));
  if (!next) return <p class="soft">{say.TOO_OPEN}</p>;
  const [best, ...others] = next;
  if (!best) {
    return (
      <>
        <p>
          <b>{say.NONE_LEFT}</b> {say.NONE_LEFT_ABOUT}
        </p>
        {beyond}
      </>
    );
  }
  const c = table.cells.findIndex(({ id }) => id === best.cell);
  const round = toTheEnd(table, record, ways, FOLLOWED);
  const nextBest = others.slice(0, OTHERS).map((one) => say.other(one.cell, one.sample) + askFirst(one));
  return (
    <>
      <p>
        <b>{say.next(best.cell, best.sample)}</b>, <Words of={tests[c]} />. {say.leaves(ways, best.worst)}
        {round && ` ${inTheEnd(round)}`}
      </p>
      {best.unsafeOn && (
        <p class="caution">
          <Words of={warnUnsafe(table, best)} />
        </p>
      )}
      <ul>
        {[...best.outcomes, ...best.atBorder].map((outcome, o) => (
          <li key={outcome.reading}>
            <Words
              of={`${wordSight(table.cells[c], outcome, best)}: ${meaning(table, best.sample, outcome.salts)}${onward(round?.after[o])}`}
            />
          </li>
        ))}
      </ul>
      {nextBest.length > 0 && (
        <p class="small soft">
          {say.NEXT_BEST} {list(nextBest)}.
        </p>
      )}
    </>
  );
}

/** "; then c for L" */
function onward(round: Round | undefined): string {
  if (!round) return "";
  if (round.test) return say.THEN.test(round.test.cell, round.test.sample) + askFirst(round.test);
  return round.settles ? say.THEN.settled : say.THEN.noMore;
}

/** What doing all rounds comes to. */
const inTheEnd = ({ most, settles }: Round): string => (settles ? say.settlesAll(most) : say.IN_THE_END_OPEN);
