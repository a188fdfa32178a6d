/** What follows from a record: worked out at build for the walkthrough's own, and again in the browser for a reader's. */
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { ConclusionPanel } from "./ConclusionPanel.tsx";
import type { FurtherSource } from "./FurtherTests.tsx";
import { findingOf, type Recorded, TOO_MUCH } from "./finding.ts";

export { changeInWords } from "./change-in-words.ts";
export { answerMarks } from "./marks.ts";

export interface Concluded extends Recorded, FurtherSource {
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  /** The walkthrough's record, where a reader has changed it and not begun one of their own. */
  given?: TableRecord;
}

const isEmpty = (record: TableRecord) => Object.values(record).every((row) => Object.keys(row).length === 0);

export function Conclusion(of: Concluded) {
  const finding = findingOf(of);
  if (!finding)
    return (
      <p class="caution">
        <b>{TOO_MUCH}</b> All that you entered is kept.
      </p>
    );
  return (
    <>
      {isEmpty(of.record) && (
        <p>
          <b>Nothing is recorded yet.</b> This is what the paper alone leaves open. Enter what you saw, and every ion
          that does not fit is struck out.
        </p>
      )}
      <ConclusionPanel {...of} {...finding} />
    </>
  );
}
