import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { nextTests, type Outcome } from "../../engine/deduction/next-test.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";

interface Props {
  table: PredictionTable;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  record: TableRecord;
  /** Ways to give every sample a salt that are left now. */
  ways: number;
}

/** Salts named before they are only counted, and tests named besides the best. */
const NAMED = 4;
const OTHERS = 3;

/** The test not done yet that settles most whatever it shows, with what each sight would mean. */
export function NextTest({ table, tests, record, ways }: Props) {
  if (ways < 2) return null;
  const [best, ...others] = nextTests(table, record);
  if (!best) {
    return (
      <p>
        <b>No test left here would tell more.</b> What is still open stays open on this paper.
      </p>
    );
  }
  const c = table.cells.findIndex(({ id }) => id === best.cell);
  const further = others.slice(0, OTHERS).map(({ sample, cell }) => `${cell} for ${sample}`);
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
            <Words of={`${table.cells[c].words[outcome.reading]}: ${meaning(table, best.sample, outcome)}`} />
          </li>
        ))}
      </ul>
      {further.length > 0 && <p class="small soft">Next best: {list(further)}.</p>}
    </>
  );
}

const figure = (ways: number): string => (ways < 1e6 ? String(ways) : "over a million");

/** "R may be ZnSO4 or ZnCl2", "R still one of 12 salts". */
function meaning(table: PredictionTable, sample: string, { salts }: Outcome): string {
  if (salts.length > NAMED) return `${sample} is still one of ${salts.length} salts`;
  const formulas = salts.map((salt) => table.salts[salt].formula);
  return formulas.length === 1 ? `${sample} is ${formulas[0]}` : `${sample} may be ${list(formulas, "or")}`;
}
