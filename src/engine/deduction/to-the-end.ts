/** Where the tests left lead when they are done one after the other, always the best next one, whatever each shows. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { type NextTest, nextTests } from "./next-test.ts";
import { aPagesWork, unlessTooMuch } from "./work.ts";

/** One round, and what follows each thing it may show. */
export interface Round {
  /** Absent when one assignment is left, or when no test left would tell more. */
  test?: NextTest;
  /** after[i]: what follows outcome i of the test, those at the border after the plain ones. */
  after: Round[];
  /** Tests it takes from here at most. */
  most: number;
  /** One assignment is left at the end, whatever the tests show, at the border too; it then does not depend on their order. */
  settles: boolean;
}

/**
 * @param assignments left by the record, more than none
 * @param limit records looked at before it gives up: the rounds of a record that leaves much open grow without end
 * @returns undefined above that limit, and where it would take too much work
 */
export function toTheEnd(
  table: PredictionTable,
  record: TableRecord,
  assignments: number,
  limit: number,
): Round | undefined {
  let looked = 0;
  const work = aPagesWork();
  const from = (record: TableRecord, assignments: number): Round | undefined => {
    if (assignments === 1) return { after: [], most: 0, settles: true };
    if (++looked > limit) return undefined;
    const [test] = nextTests(table, record, work);
    if (!test) return { after: [], most: 0, settles: false };
    const after: Round[] = [];
    for (const { reading, assignments } of [...test.outcomes, ...test.atBorder]) {
      const shown = { ...record, [test.sample]: { ...record[test.sample], [test.cell]: reading } };
      const round = from(shown, assignments);
      if (!round) return undefined;
      after.push(round);
    }
    const most = 1 + Math.max(...after.map((round) => round.most));
    return { test, after, most, settles: after.every(({ settles }) => settles) };
  };
  return unlessTooMuch(() => from(record, assignments));
}
