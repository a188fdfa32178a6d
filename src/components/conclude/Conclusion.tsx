/** What follows from a record: worked out at build for the walkthrough's own, and again in the browser for a reader's. */
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { deduce } from "../../engine/deduction/deduce.ts";
import type { IonNames } from "../names.ts";
import { ConclusionPanel } from "./ConclusionPanel.tsx";
import { fittingAlone } from "./evidence.ts";
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
  const alone = new Map(table.samples.map(({ label }) => [label, fittingAlone(table, record, label)]));
  const stuck = [...alone].flatMap(([sample, salts]) => (salts.length === 0 ? [sample] : []));
  return {
    conclusion,
    headlines: conclusion.samples.map((each) =>
      headline(table, names, conclusion, each, stuck, alone.get(each.sample) ?? []),
    ),
  };
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
