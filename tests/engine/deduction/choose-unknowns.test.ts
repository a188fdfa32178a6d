/** Sets of unknowns to give out, against writing down every set and every assignment. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";
import { certificate } from "../../../src/engine/deduction/certificate.ts";
import { BOUNDS, chooseUnknowns, judge } from "../../../src/engine/deduction/choose-unknowns.ts";
import type { Place } from "../../../src/engine/deduction/conclusion.ts";
import { STANDINGS } from "../../../src/engine/deduction/hardness.ts";
import { forSamples } from "../../../src/engine/deduction/other-samples.ts";
import { recordOf } from "../../../src/engine/deduction/separations.ts";
import { allowed } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";
import { readingOf, saltNamed, whitePrecipitates } from "./white-precipitates.ts";

const ALL = { ...BOUNDS, listed: Number.POSITIVE_INFINITY };

/** What the paper says of samples that are one salt allows that salt to be given out twice. */
const noneTwice = (table: PredictionTable, way: number[]): boolean =>
  way.every((salt, s) =>
    way.every(
      (other, t) =>
        s === t ||
        salt !== other ||
        table.paper.same.some((group) => [s, t].every((at) => group.includes(table.samples[at].label))),
    ),
  );

const every = ({ salts }: PredictionTable): number[] => [...salts.keys()];

const permuted = (a: number[], b: number[]): boolean => a.toSorted().join() === b.toSorted().join();

/** Places of the record that a set gives at which some other sight its salt may show leaves more than one assignment. */
function openAt(table: PredictionTable, set: number[]): Place[] {
  const record = recordOf(table, set);
  return table.samples.flatMap(({ label, set: at }, s) =>
    table.cells.flatMap(({ id, agrees }, c) => {
      const { salts, accepts } = table.sets[at];
      if (record[label][id] === undefined) return [];
      const may = [...agrees.keys()].filter((reading) => accepts[salts.indexOf(set[s])][c] & (1 << reading));
      const leaves = may.map((reading) => allowed(table, { ...record, [label]: { ...record[label], [id]: reading } }));
      return leaves.some(({ length }) => length > 1) ? [{ sample: label, cell: id }] : [];
    }),
  );
}

describe("agrees with writing down every set", () => {
  test("which sets there are, which of them are decided, and their figures", () => {
    const seen = { decided: 0, undecided: 0, leaning: 0, exchanged: 0, partOfStore: 0, borders: 0 };
    fc.assert(
      fc.property(tableWithRecord, fc.nat(3), ({ table }, without) => {
        const store = every(table).filter((salt) => without === 0 || salt % 4 !== without);
        const choice = chooseUnknowns(table, store, ALL);
        const ways = allowed(table, {}).filter(
          (way) => way.every((salt) => store.includes(salt)) && noneTwice(table, way),
        );
        const chosen = STANDINGS.flatMap((standing) => choice.sets[standing].map((one) => ({ ...one, standing })));
        expect(choice.looked).toBe(chosen.length);
        expect(choice.inAll).toEqual({ sets: chosen.length, decided: chosen.length - choice.sets.undecided.length });
        expect(choice.bordering).toBe(chosen.filter(({ borders }) => borders.length > 0).length);
        // No set twice, none that the paper or the store forbids, none left out but for samples that change places.
        const written = chosen.map(({ salts }) => salts.join());
        expect(new Set(written).size).toBe(chosen.length);
        for (const set of written) expect(ways.map((way) => way.join())).toContain(set);
        for (const way of ways) expect(chosen.some(({ salts }) => permuted(salts, way))).toBe(true);
        if (ways.length > chosen.length) seen.exchanged++;
        if (store.length < table.salts.length && chosen.length > 0) seen.partOfStore++;
        for (const { salts, standing, nearest, leaning, borders } of chosen) {
          const left = allowed(table, recordOf(table, salts));
          expect(left.map((way) => way.join())).toContain(salts.join());
          expect(standing === "undecided").toBe(left.length > 1);
          expect(nearest.observations === 0).toBe(left.length > 1);
          if (nearest.observations === 0) expect(nearest.assignments).toBe(left.length - 1);
          const silent = {
            ...table,
            paper: { ...table.paper, inAll: {}, share: [], differ: [], same: [], contains: [] },
          };
          const alone = allowed(silent, recordOf(table, salts));
          expect(leaning).toBe(table.samples.filter((_, s) => new Set(alone.map((way) => way[s])).size > 1).length);
          expect(judge(table, salts)).toEqual({ standing, nearest, leaning, borders });
          expect(borders).toEqual(left.length === 1 ? openAt(table, salts) : []);
          if (borders.length > 0) {
            expect(standing).not.toBe("easy");
            seen.borders++;
          }
          // One computation serves the walkthrough's certificate and the teacher's list.
          if (left.length === 1) expect(certificate(table, recordOf(table, salts))).toMatchObject({ nearest, borders });
          seen[left.length > 1 ? "undecided" : "decided"]++;
          if (left.length === 1 && leaning > 0) seen.leaning++;
        }
      }),
      { seed: 77, numRuns: 400 },
    );
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(15);
  });

  test("samples that change places make no new set, and only they", () => {
    // Two samples alike, each with every test: an unordered pair of the twelve salts of the example each.
    const two = chooseUnknowns(whitePrecipitates(["P", "Q"]), every(whitePrecipitates(["P", "Q"])), ALL);
    expect(two.inAll?.sets).toBe((12 * 11) / 2);
    // A test less on Q, or a statement about one of them, and each order is a set of its own.
    const table = whitePrecipitates(["P", "Q"]);
    const less = { ...table, cells: table.cells.map((cell) => (cell.id === "e" ? { ...cell, samples: ["P"] } : cell)) };
    expect(chooseUnknowns(less, every(less), ALL).inAll?.sets).toBe(12 * 11);
    const said = whitePrecipitates(["P", "Q"], { contains: [{ ion: "Zn^2+", samples: ["P"] }] });
    expect(chooseUnknowns(said, every(said), ALL).inAll?.sets).toBe(3 * 11);
  });

  test("too many to look at: still counted exactly where nothing ties samples together, and those named are true", () => {
    let more = 0;
    fc.assert(
      fc.property(tableWithRecord, ({ table: tied }) => {
        const table = { ...tied, paper: { ...tied.paper, inAll: {}, share: [], differ: [], same: [], contains: [] } };
        const whole = chooseUnknowns(table, every(table), ALL);
        const part = chooseUnknowns(table, every(table), { ...ALL, looked: 5 });
        expect(part.inAll).toEqual(whole.inAll);
        expect(part.looked).toBeLessThanOrEqual(Math.max(5, 2 * Math.ceil(5 / 2)));
        for (const standing of STANDINGS)
          for (const one of part.sets[standing]) expect(whole.sets[standing]).toContainEqual(one);
        if (whole.looked > part.looked) more++;
      }),
      { seed: 78, numRuns: 300 },
    );
    expect(more).toBeGreaterThan(60);
  });

  test("little work allowed ends soon and says that not all was looked at", () => {
    const table = whitePrecipitates(["P", "Q", "R"], { inAll: { cations: 3 } });
    const choice = chooseUnknowns(table, every(table), { ...ALL, steps: 500 });
    expect(choice.inAll).toBeUndefined();
    expect(choice.looked).toBeLessThan(50);
    expect(chooseUnknowns(table, every(table), ALL).inAll?.sets).toBeGreaterThan(50);
  });
});

/** The example without some of its tests. */
function withTests(letters: string[], kept: string[]): PredictionTable {
  const table = whitePrecipitates(letters);
  return { ...table, cells: table.cells.map((cell) => (kept.includes(cell.id) ? cell : { ...cell, samples: [] })) };
}

describe("white precipitates with alkali (boards' tables, see white-precipitates.ts)", () => {
  const alkalis = ["a(i)", "a(ii)", "b(i)", "b(ii)"];
  const aluminium = saltNamed("Al^3+", "NO3-");
  const lead = saltNamed("Pb^2+", "NO3-");
  const zinc = saltNamed("Zn^2+", "NO3-");

  test("sodium hydroxide and ammonia do not tell aluminium from lead; potassium iodide does", () => {
    // Q001 to Q004 and Q036 to Q039: the same sights; Q196 and Q200: yellow, and nothing.
    const without = withTests(["P"], [...alkalis, "c", "d"]);
    expect(judge(without, [aluminium])).toEqual({
      standing: "undecided",
      nearest: { observations: 0, assignments: 1 },
      leaning: 1,
      borders: [],
    });
    const whole = whitePrecipitates(["P"]);
    expect(judge(whole, [aluminium])?.standing).not.toBe("undecided");
    expect(judge(whole, [lead])?.standing).not.toBe("undecided");
  });

  test("of sodium hydroxide and ammonia, only ammonia in excess tells zinc from aluminium", () => {
    // Q040 to Q043 and Q001 to Q004 differ in Q043 and Q004 alone.
    const table = withTests(["P"], [...alkalis, "c", "d", "e"]);
    const record = recordOf(table, [zinc]);
    expect(record.P["b(ii)"]).toBe(readingOf("dissolves"));
    const { needed } = certificate(table, record);
    const cations = (salts: number[] = []) => new Set(salts.flatMap((salt) => table.salts[salt].cations));
    const open = needed.flatMap(({ cell, left }) => (cations(left.P).has("Al^3+") ? [cell] : []));
    expect(open).toEqual(["b(ii)"]);
    expect(judge(withTests(["P"], ["a(i)", "a(ii)", "b(i)", "c", "d", "e"]), [zinc])?.standing).toBe("undecided");
  });
});

test("another number of samples: every test on each of them, and none of the paper's statements", () => {
  const table = whitePrecipitates(["P", "Q"], { inAll: { cations: 1 } });
  const only = {
    ...table,
    cells: table.cells.map((cell) => ({ ...cell, samples: cell.id === "d" ? ["Q"] : cell.samples })),
  };
  expect(forSamples(only, 2)).toBe(only);
  const three = forSamples(only, 3);
  expect(three.samples.map(({ label }) => label)).toEqual(["P", "Q", "A"]);
  expect(three.cells.every(({ samples }) => samples.length === 3)).toBe(true);
  expect(chooseUnknowns(three, every(three), ALL).inAll?.sets).toBe((12 * 11 * 10) / 6);
});
