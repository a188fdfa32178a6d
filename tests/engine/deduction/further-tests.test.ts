/** Chains of further tests, against writing down every assignment, and on the boards' white precipitates. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { confusable } from "../../../src/engine/deduction/confusable.ts";
import { undecided } from "../../../src/engine/deduction/deduce.ts";
import { furtherTests, onward, type Remaining } from "../../../src/engine/deduction/further-tests.ts";
import { nextTests } from "../../../src/engine/deduction/next-test.ts";
import { allowed, saltsLeft } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";
import { recordOf, saltNamed, whitePrecipitates } from "./white-precipitates.ts";

const RUNS = { numRuns: 800, seed: 77 };
const sorted = (salts: readonly number[]) => [...salts].sort((a, b) => a - b);

const isUnsafe = ({ cells }: PredictionTable, cell: string, open: readonly number[]): boolean =>
  open.some((salt) => cells.find(({ id }) => id === cell)?.unsafeOn?.includes(salt) ?? false);

test("along every branch, what is open is what writing down every assignment leaves, and every test is safe and leaves less", () => {
  const seen = { settled: 0, chains: 0, none: 0, unsafe: 0 };
  const walk = (table: PredictionTable, sample: string, record: TableRecord, { open, test }: Remaining): void => {
    expect(sorted(open)).toEqual(saltsLeft(table, record)[sample]);
    const ways = allowed(table, record).length;
    if (!test) {
      // Nothing that is not done yet would leave less whatever it shows.
      const others = nextTests(table, record).filter((one) => one.sample === sample);
      const safe = others.filter(({ cell }) => !isUnsafe(table, cell, open));
      expect(safe.filter(({ worst }) => worst < ways)).toEqual([]);
      if (safe.length < others.length) seen.unsafe++;
      seen.none++;
      return;
    }
    expect(record[sample]?.[test.cell]).toBeUndefined();
    expect(isUnsafe(table, test.cell, open)).toBe(false);
    expect(test.worst).toBeLessThan(ways);
    for (const { reading, salts, assignments, after } of [...test.outcomes, ...test.atBorder]) {
      const next = { ...record, [sample]: { ...record[sample], [test.cell]: reading } };
      expect(assignments).toBe(allowed(table, next).length);
      expect(sorted(salts)).toEqual(saltsLeft(table, next)[sample]);
      expect(after === undefined).toBe(salts.length === 1);
      if (after) walk(table, sample, next, after);
      if (after?.test) seen.chains++;
      if (!after) seen.settled++;
    }
  };
  fc.assert(
    fc.property(
      tableWithRecord,
      fc.array(fc.integer({ min: -8, max: 11 }), { minLength: 4 }),
      ({ table: safe }, unsafe) => {
        // One test in two or so is unsafe on one salt.
        const cells = safe.cells.map((cell, c) => (unsafe[c] < 0 ? cell : { ...cell, unsafeOn: [unsafe[c]] }));
        const table = { ...safe, cells };
        const left = saltsLeft(table, {});
        const lists = table.samples.map(({ set }) => table.sets[set].salts);
        const found = furtherTests(table, lists);
        const open = table.samples.filter(({ label }) => left[label].length > 1).map(({ label }) => label);
        expect(found.map(({ sample }) => sample)).toEqual(open);
        for (const { sample, remaining } of found) walk(table, sample, {}, remaining);
      },
    ),
    RUNS,
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(100);
});

test("salts still open together when nothing of the paper tells more are among the confusable pairs", () => {
  let together = 0;
  fc.assert(
    fc.property(tableWithRecord, ({ table, record }) => {
      if (nextTests(table, record).length > 0) return;
      const pairs = new Set(confusable(table).map((pair) => sorted(pair).join()));
      for (const salts of Object.values(undecided(table, record))) {
        for (const one of salts) {
          for (const other of salts.filter((salt) => salt < one)) {
            expect(pairs).toContain([other, one].join());
            together++;
          }
        }
      }
    }),
    RUNS,
  );
  expect(together).toBeGreaterThan(100);
});

describe("white precipitates with alkali (boards' tables)", () => {
  const table = whitePrecipitates(["P"]);
  const only = (...cells: string[]): PredictionTable => {
    const kept = table.cells.flatMap(({ id }, c) => (cells.includes(id) ? [c] : []));
    const [set] = table.sets;
    const pick = <T>(row: T[]) => kept.map((c) => row[c]);
    return {
      ...table,
      cells: pick(table.cells),
      sets: [{ ...set, accepts: set.accepts.map(pick), main: set.main.map(pick), facts: set.facts.map(pick) }],
    };
  };
  // White in both alkalis, soluble in excess of sodium hydroxide only, no chloride and no sulfate: Q001 to Q004, Q036 to Q039.
  const record = recordOf({
    P: { "a(i)": "white", "a(ii)": "dissolves", "b(i)": "white", "b(ii)": "remains", c: "none", d: "none" },
  });
  const left = Object.values(undecided(only("a(i)", "a(ii)", "b(i)", "b(ii)", "c", "d"), record));
  const [aluminium, lead] = [saltNamed("Al^3+", "NO3-"), saltNamed("Pb^2+", "NO3-")];

  test("leave aluminium and lead together, and potassium iodide settles it", () => {
    expect(left).toEqual([[aluminium, lead]]);
    const [{ sample, remaining }] = furtherTests(only("e"), left);
    expect(sample).toBe("P");
    expect(remaining.test?.cell).toBe("e");
    // Q196, Q200 to Q203: yellow with lead(II), nothing with aluminium.
    expect(remaining.test?.outcomes.map(({ salts, after }) => [salts, after])).toEqual([
      [[aluminium], undefined],
      [[lead], undefined],
    ]);
    expect(onward(remaining)).toEqual({ cells: ["e"], alike: [] });
  });

  test("no test for sulfate tells them apart, and that is said", () => {
    const [{ remaining }] = furtherTests(only("d"), left);
    expect(remaining).toEqual({ open: [aluminium, lead] });
    expect(onward(remaining)).toEqual({ cells: [], alike: [[aluminium, lead]] });
  });

  test("several in turn where one does not do, and nothing where all is settled", () => {
    const zinc = saltNamed("Zn^2+", "NO3-");
    const sulfate = saltNamed("Zn^2+", "SO4^2-");
    const chloride = saltNamed("Zn^2+", "Cl-");
    const [{ remaining }] = furtherTests(only("c", "d"), [[zinc, sulfate, chloride]]);
    // Q084 and Q097: silver nitrate finds the chloride, barium nitrate the sulfate; the nitrate shows nothing with either.
    expect(onward(remaining)).toEqual({ cells: ["c", "d"], alike: [] });
    expect(furtherTests(only("c", "d"), [[zinc]])).toEqual([]);
  });
});
