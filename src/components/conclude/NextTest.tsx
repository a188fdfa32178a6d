import type { ComponentChildren } from "preact";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { nextTests } from "../../engine/deduction/next-test.ts";
import { type Round, toTheEnd } from "../../engine/deduction/to-the-end.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { list } from "../sentence.ts";
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
  if (!next) return <p class="soft">So much is still open that the best next test cannot be worked out here.</p>;
  const [best, ...others] = next;
  if (!best) {
    return (
      <>
        <p>
          <b>No test left here would tell more.</b> What is still open stays open on this paper.
        </p>
        {beyond}
      </>
    );
  }
  const c = table.cells.findIndex(({ id }) => id === best.cell);
  const round = toTheEnd(table, record, ways, FOLLOWED);
  const nextBest = others.slice(0, OTHERS).map((one) => `${one.cell} for ${one.sample}${askFirst(one)}`);
  return (
    <>
      <p>
        <b>
          Next: {best.cell} for {best.sample}
        </b>
        , <Words of={tests[c]} />. Of the {figure(ways)} ways still open it leaves at most {figure(best.worst)},
        whatever it shows.{round && ` ${inTheEnd(round)}`}
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
      {nextBest.length > 0 && <p class="small soft">Next best: {list(nextBest)}.</p>}
    </>
  );
}

/** "; then c for L" */
function onward(round: Round | undefined): string {
  if (!round) return "";
  if (round.test) return `; then ${round.test.cell} for ${round.test.sample}${askFirst(round.test)}`;
  return round.settles ? "; that settles everything" : "; no test left tells more";
}

/** What doing all rounds comes to. */
function inTheEnd({ most, settles }: Round): string {
  if (!settles) return "Even with every test left here something may stay open.";
  return most === 1 ? "It settles everything." : `Round by round, at most ${most} tests settle everything.`;
}

const figure = (ways: number): string => (ways < 1e6 ? String(ways) : "over a million");
