/** What a test would leave, against writing down every assignment for every thing it may show. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { predictor } from "../../../src/build/predictor.ts";
import type { TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { tabulate } from "../../../src/engine/bench/tabulate.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { waysOf } from "../../../src/engine/deduction/joint.ts";
import { nextTests } from "../../../src/engine/deduction/next-test.ts";
import { rulesOf } from "../../../src/engine/deduction/rules.ts";
import { toTheEnd } from "../../../src/engine/deduction/to-the-end.ts";
import { aPagesWork } from "../../../src/engine/deduction/work.ts";
import { procedure, statement } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { allowed } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";
import { recordOf, whitePrecipitates } from "./white-precipitates.ts";

const RUNS = { numRuns: 1000, seed: 909 };

test("in how many assignments a sample holds a salt", () => {
  fc.assert(
    fc.property(tableWithRecord, ({ table }) => {
      const salts = table.samples.map(({ set }) => table.sets[set].salts);
      const ways = allowed(table, {});
      expect(waysOf(table, salts, rulesOf(table), aPagesWork())).toEqual(
        salts.map((list, s) => list.map((salt) => ways.filter((way) => way[s] === salt).length)),
      );
    }),
    RUNS,
  );
});

test("every outcome leaves what is said, the order is by the worst case, and only tests that can tell something are listed", () => {
  let listed = 0;
  let worstAtBorder = 0;
  fc.assert(
    fc.property(tableWithRecord, ({ table, record: full }) => {
      const record: TableRecord = { ...full, P: {} };
      const tests = nextTests(table, record);
      const now = allowed(table, record);
      const left = (sample: string, cell: string, reading: number) =>
        allowed(table, { ...record, [sample]: { ...record[sample], [cell]: reading } });
      for (const { sample, cell, outcomes, atBorder, worst, mean } of tests) {
        expect(record[sample]?.[cell]).toBeUndefined();
        const s = table.samples.findIndex(({ label }) => label === sample);
        const c = table.cells.findIndex(({ id }) => id === cell);
        const set = table.sets[table.samples[s].set];
        const leaves = outcomes.map(({ reading }) => left(sample, cell, reading));
        expect(outcomes.map(({ assignments }) => assignments)).toEqual(leaves.map(({ length }) => length));
        outcomes.forEach(({ salts }, o) => {
          expect([...salts].sort()).toEqual([...new Set(leaves[o].map((way) => way[s]))].sort());
        });
        const row = (way: number[]) => set.salts.indexOf(way[s]);
        const may = table.cells[c].agrees.flatMap((_, reading) =>
          now.some((way) => set.accepts[row(way)][c] & (1 << reading)) ? [left(sample, cell, reading)] : [],
        );
        expect(worst).toBe(Math.max(...may.map(({ length }) => length)));
        for (const { reading, assignments } of atBorder) {
          expect(assignments).toBe(left(sample, cell, reading).length);
          if (assignments === worst && leaves.every(({ length }) => length < worst)) worstAtBorder++;
        }
        // The mean over the assignments themselves, each showing its likeliest reading.
        const shows = now.flatMap((way) => {
          const reading = set.main[set.salts.indexOf(way[s])][c];
          return reading < 0 ? [] : [leaves[outcomes.findIndex((one) => one.reading === reading)].length];
        });
        expect(mean).toBeCloseTo(shows.reduce((a, b) => a + b, 0) / shows.length, 9);
        listed++;
      }
      // All that can tell something are there: each that any likeliest sight would leave fewer after.
      const useful = table.samples.flatMap(({ label, set: at }, s) =>
        table.cells.flatMap(({ id, samples, agrees }, c) => {
          if (!samples.includes(label) || record[label]?.[id] !== undefined) return [];
          const set = table.sets[at];
          const row = (way: number[]) => set.salts.indexOf(way[s]);
          const agree = (way: number[], reading: number) => {
            const own = set.accepts[row(way)][c];
            return own === 0 || (own & agrees[reading]) !== 0;
          };
          const tells = now.some((way) => {
            const reading = set.main[row(way)][c];
            return reading >= 0 && now.some((other) => !agree(other, reading));
          });
          return tells ? [`${label} ${id}`] : [];
        }),
      );
      expect(tests.map(({ sample, cell }) => `${sample} ${cell}`).sort()).toEqual(useful.sort());
      const order = tests.map(({ worst, mean }) => [worst, mean]);
      expect(order).toEqual(order.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]));
      if (deduce(table, record).assignments <= 1) expect(tests).toEqual([]);
    }),
    RUNS,
  );
  expect(listed).toBeGreaterThan(300);
  expect(worstAtBorder).toBeGreaterThan(0);
});

describe("white precipitates with alkali (boards' tables)", () => {
  test("potassium iodide tells aluminium from lead, and then nothing is left to do", () => {
    const table = whitePrecipitates(["P"]);
    // White in a few drops of sodium hydroxide, soluble in excess; white and insoluble in ammonia: aluminium or lead.
    const record = recordOf({ P: { "a(i)": "white", "a(ii)": "dissolves", "b(i)": "white", "b(ii)": "remains" } });
    const cations = (of: typeof record) => [
      ...new Set(deduce(table, of).samples[0].salts.flatMap((salt) => table.salts[salt].cations)),
    ];
    expect(cations(record)).toEqual(["Al^3+", "Pb^2+"]);
    const iodide = nextTests(table, record).find(({ cell }) => cell === "e");
    expect(
      iodide?.outcomes.map(({ salts }) => [...new Set(salts.flatMap((salt) => table.salts[salt].cations))]),
    ).toEqual(expect.arrayContaining([["Al^3+"], ["Pb^2+"]]));
  });
});

/** Lead in a flame, ammonium nitrate and lead(II) nitrate heated dry: sources on the rows of `NOT_GIVEN_OUT`. */
test("a test that is unsafe on a salt still possible comes after every safe one, and says on which", () => {
  const parts = procedure.parse(
    [
      [{ flame: true }],
      [{ take: "0.3 g" }, { heat: "strongly" }],
      [{ take: "0.2 g" }, { add: "H2O(l)", volume: "2 cm3" }],
    ].map((steps, index) => ({ label: "abc"[index], title: "one", tests: [{ steps }] })),
  );
  const paper = statement.parse({ cations: ["NH4+", "Na+", "Pb^2+"], anions: ["NO3-", "Cl-"] });
  const { table } = tabulate({ samples: [{ label: "P", given: "solid" }], parts, paper }, predictor, phrase);
  const named = (salts: readonly number[] = []) => salts.map((salt) => table.salts[salt].formula).sort();
  const tests = nextTests(table, {});
  expect(tests.map(({ cell, unsafeOn }) => [cell, named(unsafeOn)])).toEqual([
    ["c", []],
    ["a", ["Pb(NO3)2", "PbCl2"]],
    ["b", ["NH4NO3", "Pb(NO3)2"]],
  ]);
  // Which of them alone would be best: the flame, whatever it shows.
  expect(tests[1].worst).toBeLessThan(tests[0].worst);
  const first = toTheEnd(table, {}, 6, 400);
  expect(first?.test?.cell).toBe("c");
});
