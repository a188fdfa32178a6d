/** Counting over pairs of partitions, against writing down every assignment, and against the trellis where there are too many to write down. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";
import { countByPartition, partitionsOf } from "../../../src/engine/deduction/by-partition.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { partitionsFor } from "../../../src/engine/deduction/partitions.ts";
import { rulesOf } from "../../../src/engine/deduction/rules.ts";
import { atStart, fold, trellisOf } from "../../../src/engine/deduction/trellis.ts";
import { aPagesWork, STEPS } from "../../../src/engine/deduction/work.ts";
import { allowed } from "./brute-force.ts";
import { freeTable } from "./free-table.ts";
import { tablesWithRecord } from "./random-table.ts";

const optionsOf = (table: PredictionTable) => table.samples.map(({ set }) => table.sets[set].salts);
const counted = (table: PredictionTable) => {
  const [rules, work] = [rulesOf(table), { left: Number.POSITIVE_INFINITY }];
  return countByPartition(table, optionsOf(table), rules, partitionsOf(table.samples.length, rules, work), work);
};

test("every salt of every sample, against writing down all assignments of up to five samples", () => {
  const seen = { counted: 0, bothInAll: 0, shareOfBoth: 0, differOfBoth: 0, same: 0, contains: 0, none: 0, several: 0 };
  fc.assert(
    fc.property(tablesWithRecord(5), ({ table: all }) => {
      // Five samples of eight salts each would be too many to write down in every run.
      const table = { ...all, sets: all.sets.map((set) => ({ ...set, salts: set.salts.slice(0, 4) })) };
      const options = optionsOf(table);
      const found = counted(table);
      if (!found) {
        // Only what it says it cannot do is left to others.
        expect(options.flat().some((salt) => table.salts[salt].formula.split(" ").length > 2)).toBe(true);
        seen.several++;
        return;
      }
      const ways = allowed(table, {});
      expect(found.assignments).toBe(ways.length);
      expect(found.ways).toEqual(
        options.map((list, s) => list.map((salt) => ways.filter((way) => way[s] === salt).length)),
      );
      const { share, differ, same, contains, inAll } = table.paper;
      const ofBoth = (groups: typeof share) => new Set(groups.map(({ ion }) => ion)).size === 2;
      seen.counted++;
      if (ways.length === 0) seen.none++;
      else {
        if (inAll?.cations && inAll.anions) seen.bothInAll++;
        if (ofBoth(share)) seen.shareOfBoth++;
        if (ofBoth(differ)) seen.differOfBoth++;
        if (same.length > 0) seen.same++;
        if (contains.length > 0) seen.contains++;
      }
    }),
    { numRuns: 3000, seed: 4713 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(15);
});

const ions = {
  cations: ["NH4+", "Na+", "Mg^2+", "Zn^2+", "Al^3+", "Cu^2+"],
  anions: ["Cl-", "Br-", "NO3-", "SO4^2-", "CO3^2-"],
};
const share = [
  { samples: ["A", "B", "C"], ion: "cation" },
  { samples: ["D", "E", "F"], ion: "anion" },
];
const everyTwo = ["cation", "anion"].map((ion) => ({ samples: [..."ABCDEF"], ion }));
const choices: [string, (s: number, salt: number) => boolean][] = [
  ["samples alike", () => true],
  ["samples of two kinds", (s, salt) => (salt * 5 + (s % 2) * 3) % 7 > 1],
  ["every sample by itself", (s, salt) => (salt * 5 + s * 3) % 7 > 1],
];

describe("six samples, too many to write down", () => {
  const papers: [string, object][] = [
    ["three share a cation, three an anion, and so many in all", { share, inAll: { cations: 4, anions: 3 } }],
    ["rings of samples that share and differ", { share, differ: [{ samples: ["A", "D", "E"], ion: "cation" }] }],
    ["no two of three the same, of either kind", { differ: share }],
    ["two the same salt, and so many in all", { same: [["B", "E"]], share, inAll: { cations: 3, anions: 2 } }],
    ["so many hold an ion, some another", { share, contains: [{ ion: "NH4+", count: 2 }, { ion: "Cl-" }] }],
  ];
  test.each(papers.flatMap(([says, said]) => choices.map(([which, may]) => [says, which, said, may] as const)))(
    "%s, %s: as the trellis counts",
    (_says, _which, said, may) => {
      const table = freeTable(ions, "ABCDEF", said, may);
      const options = optionsOf(table).map((list) => list.map((salt) => ({ salt, mark: 0, cost: 0 })));
      const trellis = trellisOf(table, options, rulesOf(table), { left: Number.POSITIVE_INFINITY });
      const found = counted(table);
      expect(found?.assignments).toBe(atStart(fold(trellis, 0, 0, 1, (value, next, ways) => value + ways * next)));
      expect(found?.assignments).toBeGreaterThan(0);
      for (const own of found?.ways ?? []) expect(own.reduce((a, b) => a + b, 0)).toBe(found?.assignments);
    },
  );

  test("no two of six hold the same ion: a number of rook placements, and within a page's work", () => {
    // Every salt allowed: any six of seven cations and any six of eight anions in every order, 7!/1! times 8!/2!.
    const many = {
      cations: [...ions.cations, "K+"],
      anions: [...ions.anions, "I-", "NO2-", "SO3^2-"],
    };
    const work = aPagesWork();
    const table = freeTable(many, "ABCDEF", { differ: everyTwo }, () => true);
    expect(deduce(table, {}, work).assignments).toBe(5040 * 20160);
    expect(work.left).toBeGreaterThan(STEPS / 2);
  });
});

test("gives up where it could not be exact", () => {
  const many = { cations: [...ions.cations, "K+", "Ca^2+", "Ba^2+"], anions: [...ions.anions, "I-", "NO2-"] };
  const table = freeTable(many, "ABCDEFGHIJKL", { differ: share }, () => true);
  expect(counted(table)).toBeUndefined();
});

test("partitions of samples of which nothing is said, of which all differ, and of a number in all", () => {
  const work = aPagesWork();
  expect(partitionsFor(3, [], work)).toEqual([{ blocks: [1, 2, 4], times: 1 }]);
  // The Moebius function of the partitions of three: 1, -1 for each two that agree, 2 for all.
  const differ = partitionsFor(3, [{ ion: "cations", says: "differ", samples: [0, 1, 2] }], work);
  expect(Object.fromEntries(differ.map(({ blocks, times }) => [blocks.join(), times]))).toEqual({
    "1,2,4": 1,
    "3,4": -1,
    "5,2": -1,
    "1,6": -1,
    "7": 2,
  });
  expect(partitionsFor(3, [{ ion: "cations", says: "in all", count: 1 }], work)).toEqual([{ blocks: [7], times: 1 }]);
});
