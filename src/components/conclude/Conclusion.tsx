/** What follows from a record: worked out at build for the walkthrough's own, and again in the browser for a reader's. */
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { deduce } from "../../engine/deduction/deduce.ts";
import type { IonNames } from "../names.ts";
import { ConclusionPanel } from "./ConclusionPanel.tsx";
import { fitsAlone } from "./evidence.ts";
import { headline } from "./headline.ts";

export interface Concluded {
  table: PredictionTable;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  names: IonNames;
  record: TableRecord;
}

function conclude({ table, names, record }: Omit<Concluded, "tests">) {
  const conclusion = deduce(table, record);
  const stuck = table.samples.map(({ label }) => label).filter((sample) => !fitsAlone(table, record, sample));
  return { conclusion, headlines: conclusion.samples.map((each) => headline(table, names, conclusion, each, stuck)) };
}

/** One sentence for each sample; formulas in mhchem notation. */
export const headlinesOf = (of: Omit<Concluded, "tests">): string[] => conclude(of).headlines;

const isEmpty = (record: TableRecord) => Object.values(record).every((row) => Object.keys(row).length === 0);

export function Conclusion(of: Concluded) {
  return (
    <>
      {isEmpty(of.record) && (
        <p>
          <b>Nothing is recorded yet.</b> This is what the paper alone leaves open. Enter what you saw, and every ion
          that does not fit is struck out.
        </p>
      )}
      <ConclusionPanel {...of} {...conclude(of)} />
    </>
  );
}
