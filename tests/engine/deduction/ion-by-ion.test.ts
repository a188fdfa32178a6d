/** Counting ion by ion, against writing down every assignment, and against the trellis where there are too many to write down. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";
import { countIonByIon } from "../../../src/engine/deduction/ion-by-ion.ts";
import { rulesOf } from "../../../src/engine/deduction/rules.ts";
import { atStart, fold, trellisOf } from "../../../src/engine/deduction/trellis.ts";
import { aPagesWork } from "../../../src/engine/deduction/work.ts";
import { allowed } from "./brute-force.ts";
import { freeTable } from "./free-table.ts";
import { tablesWithRecord } from "./random-table.ts";

const optionsOf = (table: PredictionTable) => table.samples.map(({ set }) => table.sets[set].salts);

function byTrellis(table: PredictionTable): number {
  const options = optionsOf(table).map((list) => list.map((salt) => ({ salt, mark: 0, cost: 0 })));
  return atStart(
    fold(trellisOf(table, options, rulesOf(table), aPagesWork()), 0, 0, 1, (value, next, ways) => value + ways * next),
  );
}

test("every salt of every sample, against writing down all assignments of up to five samples", () => {
  const seen = { counted: 0, bothInAll: 0, groups: 0, contains: 0, alike: 0, none: 0, severalIons: 0, groupsOfBoth: 0 };
  fc.assert(
    fc.property(tablesWithRecord(5), ({ table: all }) => {
      // Five samples of eight salts would be too many to write down in every run.
      const table = { ...all, sets: all.sets.map((set) => ({ ...set, salts: set.salts.slice(0, 5) })) };
      const options = optionsOf(table);
      const counted = countIonByIon(table, options, rulesOf(table), aPagesWork());
      const { paper } = table;
      const bound = (ion: string) =>
        [...paper.share, ...paper.differ].some((group) => group.ion === ion) ||
        paper.same.length > 0 ||
        paper.contains.some((one) => one.ion.endsWith("+") === (ion === "cation"));
      const several = options.some((list) => list.some((salt) => table.salts[salt].formula.split(" ").length > 2));
      if (several) seen.severalIons++;
      if (bound("cation") && bound("anion")) seen.groupsOfBoth++;
      if (!counted) {
        // Only what it says it cannot do is left to others.
        expect(several || (bound("cation") && bound("anion"))).toBe(true);
        return;
      }
      const ways = allowed(table, {});
      expect(counted.assignments).toBe(ways.length);
      expect(counted.ways).toEqual(
        options.map((list, s) => list.map((salt) => ways.filter((way) => way[s] === salt).length)),
      );
      seen.counted++;
      if (ways.length === 0) seen.none++;
      if (ways.length > 0 && paper.inAll?.cations && paper.inAll.anions) seen.bothInAll++;
      if (ways.length > 0 && paper.share.length + paper.differ.length > 0) seen.groups++;
      if (ways.length > 0 && paper.contains.length > 0) seen.contains++;
      if (ways.length > 0 && new Set(options.map(String)).size < options.length) seen.alike++;
    }),
    { numRuns: 2500, seed: 4711 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(30);
});

describe("too many to write down", () => {
  const ions = {
    cations: ["NH4+", "Na+", "K+", "Mg^2+", "Ca^2+", "Zn^2+", "Al^3+"],
    anions: ["Cl-", "Br-", "I-", "NO3-", "SO4^2-", "CO3^2-"],
  };
  const share = [{ samples: ["A", "C"], ion: "cation" }];
  const differ = [{ samples: ["B", "C", "D"], ion: "cation" }];
  const contains = [{ ion: "Zn^2+", samples: ["A", "B", "E"], count: 2 }];
  const papers: [string, object][] = [
    ["nothing", {}],
    ["both in all", { inAll: { cations: 4, anions: 3 } }],
    ["groups that share and differ", { share, differ, inAll: { anions: 3 } }],
    ["an ion that so many hold, and both in all", { contains, inAll: { cations: 3, anions: 2 } }],
    ["a group of anions", { differ: [{ samples: ["A", "B"], ion: "anion" }], inAll: { cations: 4, anions: 4 } }],
  ];
  const choices: [string, (s: number, salt: number) => boolean][] = [
    ["samples alike", () => true],
    ["samples of two kinds", (s, salt) => (salt * 5 + (s % 2) * 3) % 7 > 1],
    ["every sample by itself", (s, salt) => (salt * 5 + s * 3) % 7 > 2],
  ];
  test.each(papers.flatMap(([says, said]) => choices.map(([which, may]) => [says, which, said, may] as const)))(
    "%s, %s: as the trellis counts",
    (_says, _which, said, may) => {
      const table = freeTable(ions, "ABCDE", said, may);
      const counted = countIonByIon(table, optionsOf(table), rulesOf(table), aPagesWork());
      expect(counted?.assignments).toBe(byTrellis(table));
      expect(counted?.assignments).toBeGreaterThan(0);
      for (const own of counted?.ways ?? []) expect(own.reduce((a, b) => a + b, 0)).toBe(counted?.assignments);
    },
  );

  test("every assignment of n samples to exactly k of m ions, by the formula of the surjections", () => {
    // Stirling numbers of the second kind S(6, k) from a textbook table, from memory: 31 for k = 2, 90 for k = 3.
    // Six samples on exactly 2 of 7 cations and exactly 3 of 6 anions: 7!/5! S(6, 2) times 6!/3! S(6, 3).
    const table = freeTable(ions, "ABCDEF", { inAll: { cations: 2, anions: 3 } }, () => true);
    expect(countIonByIon(table, optionsOf(table), rulesOf(table), aPagesWork())?.assignments).toBe(
      42 * 31 * (120 * 90),
    );
  });

  test("gives up where it could not be exact", () => {
    const table = freeTable(ions, "ABCDEFGHIJKL", { inAll: { cations: 4, anions: 4 } }, () => true);
    expect(countIonByIon(table, optionsOf(table), rulesOf(table), aPagesWork())).toBeUndefined();
  });
});
