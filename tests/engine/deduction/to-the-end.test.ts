/** Rounds of tests, followed along every path, against writing down every assignment at its end. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { nextTests } from "../../../src/engine/deduction/next-test.ts";
import { type Round, toTheEnd } from "../../../src/engine/deduction/to-the-end.ts";
import { allowed } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";
import { recordOf, whitePrecipitates } from "./white-precipitates.ts";

const LIMIT = 400;

/** The records at the ends of all paths, with the number of tests done since. */
function ends(record: TableRecord, { test, after }: Round, done = 0): { record: TableRecord; done: number }[] {
  if (!test) return [{ record, done }];
  return test.outcomes.flatMap(({ reading }, o) =>
    ends({ ...record, [test.sample]: { ...record[test.sample], [test.cell]: reading } }, after[o], done + 1),
  );
}

const follow = (table: PredictionTable, record: TableRecord) =>
  toTheEnd(table, record, allowed(table, record).length, LIMIT);

test("each path ends where one assignment is left or where no test tells more, and the longest is the number said", () => {
  const seen = { settles: 0, open: 0, twoRounds: 0 };
  fc.assert(
    fc.property(tableWithRecord, ({ table, record: full }) => {
      const record: TableRecord = { ...full, P: {} };
      if (allowed(table, record).length === 0) return;
      const round = follow(table, record);
      if (!round) return;
      const paths = ends(record, round);
      const left = paths.map((path) => allowed(table, path.record).length);
      expect(round.most).toBe(Math.max(...paths.map(({ done }) => done)));
      expect(round.settles).toBe(left.every((ways) => ways === 1));
      paths.forEach((path, p) => {
        if (left[p] !== 1) expect(nextTests(table, path.record)).toEqual([]);
      });
      seen[round.settles ? "settles" : "open"]++;
      if (round.most > 1) seen.twoRounds++;
    }),
    { numRuns: 1000, seed: 515 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(30);
});

test("white precipitates (boards' tables): aluminium, lead and zinc are told apart in rounds", () => {
  const table = whitePrecipitates(["P"]);
  const record = recordOf({ P: { "a(i)": "white", "a(ii)": "dissolves" } });
  const round = follow(table, record);
  expect(round?.test).toBeDefined();
  expect(round?.most).toBeGreaterThan(1);
});

test("gives up above the limit", () => {
  const table = whitePrecipitates(["P"]);
  expect(toTheEnd(table, {}, allowed(table, {}).length, 1)).toBeUndefined();
});
