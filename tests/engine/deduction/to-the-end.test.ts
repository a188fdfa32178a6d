/** Rounds of tests, followed along every path, against writing down every assignment at its end. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { nextTests } from "../../../src/engine/deduction/next-test.ts";
import { type Round, toTheEnd } from "../../../src/engine/deduction/to-the-end.ts";
import { allowed } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";
import { readingOf, recordOf, saltNamed, whitePrecipitates } from "./white-precipitates.ts";

const LIMIT = 400;

/** The records at the ends of all paths, with the number of tests done since. */
function ends(record: TableRecord, { test, after }: Round, done = 0): { record: TableRecord; done: number }[] {
  if (!test) return [{ record, done }];
  return [...test.outcomes, ...test.atBorder].flatMap(({ reading }, o) =>
    ends({ ...record, [test.sample]: { ...record[test.sample], [test.cell]: reading } }, after[o], done + 1),
  );
}

const follow = (table: PredictionTable, record: TableRecord) =>
  toTheEnd(table, record, allowed(table, record).length, LIMIT);

/** Every record that the assignments left may give when all is done that is not done yet, each cell showing anything it may. */
function filled(table: PredictionTable, record: TableRecord): TableRecord[] {
  return allowed(table, record).flatMap((way) =>
    table.samples.reduce<TableRecord[]>(
      (records, { label, set: at }, s) => {
        const { salts, accepts } = table.sets[at];
        return table.cells.reduce((some, { id, samples, agrees }, c) => {
          const own = accepts[salts.indexOf(way[s])][c];
          if (!samples.includes(label) || record[label]?.[id] !== undefined || own === 0) return some;
          const shown = [...agrees.keys()].filter((reading) => own & (1 << reading));
          return some.flatMap((one) => shown.map((reading) => ({ ...one, [label]: { ...one[label], [id]: reading } })));
        }, records);
      },
      [record],
    ),
  );
}

test("where it settles everything, every record that may be seen, at the border too, leaves one assignment", () => {
  const seen = { settles: 0, border: 0 };
  fc.assert(
    fc.property(tableWithRecord, ({ table, record: full }) => {
      const record: TableRecord = { ...full, P: {} };
      const ways = allowed(table, record).length;
      if (ways < 2 || !follow(table, record)?.settles) return;
      const records = filled(table, record);
      if (records.length > 200) return;
      for (const one of records) expect(allowed(table, one)).toHaveLength(1);
      seen.settles++;
      if (records.length > ways) seen.border++;
    }),
    { numRuns: 1000, seed: 516 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(10);
});

test("two salts that may both show a third sight are not settled by it", () => {
  const table = whitePrecipitates(["P"]);
  const [zinc, lead] = [saltNamed("Zn^2+", "NO3-"), saltNamed("Pb^2+", "NO3-")];
  const faint = 1 << readingOf("slight");
  const two: PredictionTable = {
    ...table,
    cells: table.cells.filter(({ id }) => id === "e"),
    sets: [
      {
        ...table.sets[0],
        salts: [zinc, lead],
        accepts: [[(1 << readingOf("none")) | faint], [(1 << readingOf("yellow")) | faint]],
        main: [[readingOf("none")], [readingOf("yellow")]],
        atBorder: [
          [0, 0, faint],
          [1, 0, faint],
        ],
      },
    ],
  };
  const round = follow(two, {});
  expect(round?.test?.outcomes.map(({ assignments }) => assignments)).toEqual([1, 1]);
  expect(round?.test?.atBorder).toEqual([{ reading: readingOf("slight"), assignments: 2, salts: [zinc, lead] }]);
  expect(round?.test?.worst).toBe(2);
  expect(round?.settles).toBe(false);
});

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
