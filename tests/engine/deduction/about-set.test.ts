/** What is said of one set of unknowns: the order in which its samples settle, and the test that would settle an open one. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { aboutSet } from "../../../src/engine/deduction/about-set.ts";
import { recordOf } from "../../../src/engine/deduction/separations.ts";
import { allowed, choose, saltsLeft } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";
import { saltNamed, whitePrecipitates } from "./white-precipitates.ts";

/** A table in which only some tests are done, and the others could be. */
function withTests(table: PredictionTable, kept: string[]): PredictionTable {
  return { ...table, cells: table.cells.map((cell) => (kept.includes(cell.id) ? cell : { ...cell, samples: [] })) };
}

/** Rounds by the meaning of the words: the record of a sample, the answers settled before, and every assignment the paper allows. */
function rounds(table: PredictionTable, answer: number[], record: TableRecord): string[][] {
  const found: string[][] = [];
  for (;;) {
    const settled = found.flat();
    const next = table.samples.flatMap(({ label }, s) => {
      if (settled.includes(label)) return [];
      const left = allowed(table, { [label]: record[label] }).filter((way) =>
        way.every((salt, t) => salt === answer[t] || !settled.includes(table.samples[t].label)),
      );
      return left.every((way) => way[s] === answer[s]) ? [label] : [];
    });
    if (next.length === 0) return found;
    found.push(next);
  }
}

test("the order in which samples settle, against writing down every assignment", () => {
  const seen = { later: 0, together: 0 };
  fc.assert(
    fc.property(tableWithRecord, fc.nat(5), ({ table }, pick) => {
      const ways = allowed(table, {});
      if (ways.length === 0) return;
      const answer = ways[pick % ways.length];
      const record = recordOf(table, answer);
      const { order, open, certificate } = aboutSet(table, answer, []);
      const decided = allowed(table, record).length === 1;
      expect(order !== undefined).toBe(decided);
      expect(open === undefined).toBe(decided);
      expect(certificate.proof !== undefined).toBe(decided);
      if (open) {
        const left = Object.entries(saltsLeft(table, record)).map(([label, salts], s): [string, number[]] => [
          label,
          salts.filter((salt) => salt !== answer[s]),
        ]);
        expect(open.alsoFits).toEqual(Object.fromEntries(left.filter(([, salts]) => salts.length > 0)));
      }
      if (!order) return;
      expect(order.rounds).toEqual(rounds(table, answer, record));
      expect(order.together).toEqual(
        table.samples.map(({ label }) => label).filter((label) => !order.rounds.flat().includes(label)),
      );
      if (order.rounds.length > 1) seen.later++;
      if (order.together.length > 0) seen.together++;
    }),
    { seed: 909, numRuns: 2000 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(5);
});

test("the tests that settle an open set, against doing each of them", () => {
  const seen = { ownOnOne: 0, ownTogether: 0, onOne: 0, together: 0, two: 0, none: 0 };
  fc.assert(
    fc.property(tableWithRecord, fc.nat(5), ({ table: whole }, pick) => {
      const table = withTests(whole, ["a"]);
      const further = whole.cells.slice(1).map(({ id }, index) => ({
        name: id,
        cells: [index + 1],
        ...(index === 1 && { own: true as const }),
      }));
      const ways = allowed(table, {});
      if (ways.length === 0) return;
      const answer = ways[pick % ways.length];
      const { open } = aboutSet(table, answer, further);
      if (!open) return;
      const record = recordOf(table, answer);
      const everything = table.cells.map((cell) => ({ ...cell, samples: table.samples.map(({ label }) => label) }));
      const all = recordOf({ ...table, cells: everything }, answer);
      const labels = table.samples.map(({ label }) => label);
      /** Letters of samples for which some of these tests give an observation. */
      const shown = (cells: string[], some = labels) =>
        some.filter((label) => cells.some((cell) => all[label][cell] !== undefined));
      const decides = (cells: string[], some = labels) => {
        const more = Object.fromEntries(
          labels.map((label) => [
            label,
            Object.fromEntries(
              Object.entries(all[label]).filter(
                ([cell]) => record[label][cell] !== undefined || (some.includes(label) && cells.includes(cell)),
              ),
            ),
          ]),
        );
        return shown(cells, some).length > 0 && allowed({ ...table, cells: everything }, more).length === 1;
      };
      const names = further.map(({ name }) => name);
      const isOwn = ({ tests: [index] }: { tests: number[] }) => further[index].own === true;
      const onOne = names.flatMap((name, index) => {
        const some = labels.filter((label) => decides([name], [label]));
        return some.length > 0 ? [{ tests: [index], onOneOf: some, together: [] }] : [];
      });
      const together = names.flatMap((name, index) =>
        decides([name]) && shown([name]).length > 1 ? [{ tests: [index], onOneOf: [], together: shown([name]) }] : [],
      );
      const two = choose([...names.keys()], 2).flatMap((pair) => {
        const cells = pair.map((index) => names[index]);
        const useful = cells.every((cell) => shown([cell]).length > 0);
        return useful && decides(cells) ? [{ tests: pair, onOneOf: [], together: shown(cells) }] : [];
      });
      const isNew = (way: { tests: number[] }) => !isOwn(way);
      const inTurn = {
        ownOnOne: onOne.filter(isOwn),
        ownTogether: together.filter(isOwn),
        onOne: onOne.filter(isNew),
        together: together.filter(isNew),
        // Of pairs the first is enough to know.
        two: two.slice(0, 1),
      };
      const [kind, expected] = Object.entries(inTurn).find(([, ways]) => ways.length > 0) ?? ["none", []];
      expect(open.settledBy).toEqual(expected);
      seen[kind as keyof typeof seen]++;
    }),
    { seed: 910, numRuns: 3000 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(5);
});

describe("white precipitates with alkali (boards' tables, see white-precipitates.ts)", () => {
  test("what aluminium nitrate may be taken for after both alkalis, and what settles it", () => {
    // Q001 to Q004 and Q036 to Q039 say the same of aluminium and lead; Q196 and Q200 do not.
    const table = withTests(whitePrecipitates(["P"]), ["a(i)", "a(ii)", "b(i)", "b(ii)", "c", "d"]);
    const iodide = { name: "potassium iodide", cells: [6] };
    const { open } = aboutSet(table, [saltNamed("Al^3+", "NO3-")], [iodide]);
    expect(open).toEqual({
      alsoFits: { P: [saltNamed("Pb^2+", "NO3-")] },
      settledBy: [{ tests: [0], onOneOf: ["P"], together: [] }],
    });
  });

  test("an anion tested on one sample only is known of the other once the first is", () => {
    // Silver nitrate on P alone, and no barium test on either: of Q only "the same anion as P" tells the chloride (Q084).
    const whole = whitePrecipitates(["P", "Q"], { share: [{ samples: ["P", "Q"], ion: "anion" }] });
    const table = {
      ...whole,
      cells: whole.cells.map((cell) => (cell.id === "c" || cell.id === "d" ? { ...cell, samples: ["P"] } : cell)),
    };
    const { order } = aboutSet(table, [saltNamed("Zn^2+", "Cl-"), saltNamed("Mg^2+", "Cl-")], []);
    expect(order).toEqual({ rounds: [["P"], ["Q"]], together: [] });
  });
});
