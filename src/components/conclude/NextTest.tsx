import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { nextTests } from "../../engine/deduction/next-test.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { type FurtherSource, FurtherTests } from "./FurtherTests.tsx";
import { meaning } from "./further-words.ts";

interface Props extends FurtherSource {
  table: PredictionTable;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  record: TableRecord;
  /** Ways to give every sample a salt that are left now. */
  ways: number;
  /** left[s]: salts that sample s may still hold. */
  left: number[][];
}

/** Tests named besides the best. */
const OTHERS = 3;

/** The test not done yet that settles most whatever it shows, with what each sight would mean. */
export function NextTest({ table, tests, record, ways, left, further, furtherAt }: Props) {
  if (ways < 2) return null;
  const [best, ...others] = nextTests(table, record);
  if (!best) {
    return (
      <>
        <p>
          <b>No test left here would tell more.</b> What is still open stays open on this paper.
        </p>
        <FurtherTests table={table} left={left} further={further} furtherAt={furtherAt} />
      </>
    );
  }
  const c = table.cells.findIndex(({ id }) => id === best.cell);
  const nextBest = others.slice(0, OTHERS).map(({ sample, cell }) => `${cell} for ${sample}`);
  return (
    <>
      <p>
        <b>
          Next: {best.cell} for {best.sample}
        </b>
        , <Words of={tests[c]} />. Of the {figure(ways)} ways still open it leaves {figure(best.worst)} at most.
      </p>
      <ul>
        {best.outcomes.map((outcome) => (
          <li key={outcome.reading}>
            <Words of={`${table.cells[c].words[outcome.reading]}: ${meaning(table, best.sample, outcome.salts)}`} />
          </li>
        ))}
      </ul>
      {nextBest.length > 0 && <p class="small soft">Next best: {list(nextBest)}.</p>}
    </>
  );
}

const figure = (ways: number): string => (ways < 1e6 ? String(ways) : "over a million");
