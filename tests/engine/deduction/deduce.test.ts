import { describe, expect, test } from "vitest";
import type { Conclusion } from "../../../src/engine/deduction/conclusion.ts";
import { deduce, undecided } from "../../../src/engine/deduction/deduce.ts";
import { readingOf, recordOf, saltNamed, whitePrecipitates } from "./white-precipitates.ts";

const BOTH_ALKALIS = { "a(i)": "white", "a(ii)": "dissolves", "b(i)": "white", "b(ii)": "remains" } as const;

const standing = ({ samples }: Conclusion, sample: string, what: string) =>
  samples
    .find((one) => one.sample === sample)
    ?.ions.filter((one) => one.standing === what)
    .map(({ ion }) => ion);

const reasons = ({ samples }: Conclusion, sample: string, ion: string) =>
  samples.find((one) => one.sample === sample)?.ions.find((one) => one.ion === ion)?.reasons;

describe("one sample", () => {
  test("aluminium and lead stay together after both alkalis (Q241)", () => {
    const conclusion = deduce(whitePrecipitates(["P"]), recordOf({ P: BOTH_ALKALIS }));
    expect(standing(conclusion, "P", "possible")).toEqual(["Al^3+", "Pb^2+", "Cl-", "SO4^2-", "NO3-"]);
    expect(standing(conclusion, "P", "certain")).toEqual([]);
  });

  test.each([
    ["yellow", "Pb^2+"],
    ["none", "Al^3+"],
  ] as const)("potassium iodide giving %s settles on %s (Q196, Q200)", (seen, ion) => {
    const conclusion = deduce(whitePrecipitates(["P"]), recordOf({ P: { ...BOTH_ALKALIS, e: seen } }));
    expect(standing(conclusion, "P", "certain")).toContain(ion);
  });

  test("lead in solution means nitrate here, for its chloride and sulfate hardly dissolve", () => {
    const conclusion = deduce(whitePrecipitates(["P"]), recordOf({ P: { ...BOTH_ALKALIS, e: "yellow" } }));
    expect(standing(conclusion, "P", "certain")).toEqual(["Pb^2+", "NO3-"]);
    expect(conclusion.assignments).toBe(1);
  });

  test("a precipitate that dissolves in excess ammonia is zinc's (Q043), and says where each other cation fell", () => {
    const table = whitePrecipitates(["P"]);
    const conclusion = deduce(table, recordOf({ P: { ...BOTH_ALKALIS, "b(ii)": "dissolves" } }));
    expect(standing(conclusion, "P", "certain")).toEqual(["Zn^2+"]);
    const remains = 5;
    expect(reasons(conclusion, "P", "Al^3+")?.[0]).toEqual({
      by: "observation",
      cell: "b(ii)",
      salt: saltNamed("Al^3+", "Cl-"),
      wouldShow: remains,
      fact: -1,
    });
    expect(reasons(conclusion, "P", "Mg^2+")?.map((one) => one.by === "observation" && one.cell)).toEqual([
      "a(ii)",
      "a(ii)",
      "a(ii)",
    ]);
    expect(reasons(conclusion, "P", "Pb^2+")?.map(({ by }) => by)).toEqual(["observation", "cannot be", "cannot be"]);
  });

  test("calcium may give a slight precipitate with ammonia or none (Q012, Q014)", () => {
    for (const seen of ["none", "slight"] as const) {
      const conclusion = deduce(whitePrecipitates(["P"]), recordOf({ P: { "a(i)": "white", "b(i)": seen } }));
      expect(standing(conclusion, "P", "certain")).toEqual(["Ca^2+"]);
    }
  });

  test("an ion without any salt that could be the sample is impossible, with a reason, before the first test", () => {
    const table = whitePrecipitates(["P"], { cations: ["Zn^2+", "Ag+"] });
    expect(reasons(deduce(table, {}), "P", "Ag+")).toEqual([
      { by: "cannot be", salt: -1, reason: "no salt of this cation is among those the paper allows" },
    ]);
  });
});

describe("several samples", () => {
  const share = [{ samples: ["P", "Q"], ion: "anion" as const }];

  test("a shared anion decides what was not tested: silver nitrate on P speaks for Q", () => {
    const table = whitePrecipitates(["P", "Q"], { share });
    const conclusion = deduce(table, recordOf({ P: { c: "white" }, Q: BOTH_ALKALIS }));
    // A chloride, and lead chloride would not be in solution: so Q is aluminium chloride.
    expect(standing(conclusion, "Q", "certain")).toEqual(["Al^3+", "Cl-"]);
    expect(reasons(conclusion, "Q", "NO3-")).toContainEqual({ by: "paper", statement: "P and Q hold the same anion" });
    expect(undecided(table, recordOf({ P: { c: "white" }, Q: BOTH_ALKALIS })).Q).toEqual([saltNamed("Al^3+", "Cl-")]);
  });

  test("two anions in all, both found, close the third sample to any other", () => {
    const table = whitePrecipitates(["P", "Q", "R"], { inAll: { anions: 2 } });
    const conclusion = deduce(table, recordOf({ P: { c: "white" }, Q: { d: "white" }, R: { c: "none" } }));
    expect(standing(conclusion, "R", "certain")).toEqual(["SO4^2-"]);
    expect(reasons(conclusion, "R", "NO3-")).toContainEqual({ by: "paper", statement: "two different anions in all" });
  });

  test("counts without a record are those worked out by hand", () => {
    // 12 salts: Zn, Al, Mg with 3 anions each, Ca with 2, Pb with 1. Same anion: 4 chlorides, 3 sulfates, 5 nitrates: 16 + 9 + 25.
    expect(deduce(whitePrecipitates(["P", "Q"]), {}).assignments).toBe(144);
    expect(deduce(whitePrecipitates(["P", "Q"], { share }), {}).assignments).toBe(50);
    // Same cation: 9 + 9 + 9 + 4 + 1 = 32 of 144.
    const differ = [{ samples: ["P", "Q"], ion: "cation" as const }];
    expect(deduce(whitePrecipitates(["P", "Q"], { differ }), {}).assignments).toBe(144 - 32);
    expect(deduce(whitePrecipitates("PQRSTUVW".split("")), {}).assignments).toBe(12 ** 8);
  });
});

describe("a record that fits nothing", () => {
  test("one wrong observation is named, with where its repeat leads", () => {
    // Soluble in excess ammonia is zinc's alone, and zinc hydroxide dissolves in excess alkali too.
    const record = recordOf({
      P: { "a(i)": "white", "a(ii)": "remains", "b(i)": "white", "b(ii)": "dissolves", c: "white" },
    });
    const conclusion = deduce(whitePrecipitates(["P"]), record);
    expect(conclusion.assignments).toBe(0);
    expect(conclusion.contradiction).toBeUndefined();
    expect(conclusion.repeats).toEqual([
      {
        places: [{ sample: "P", cell: "a(ii)", lookFor: [readingOf("dissolves")] }],
        leadsTo: { P: [saltNamed("Zn^2+", "Cl-")] },
      },
      {
        places: [{ sample: "P", cell: "b(ii)", lookFor: [readingOf("remains")] }],
        leadsTo: { P: [saltNamed("Mg^2+", "Cl-")] },
      },
    ]);
  });

  test("what is more easily misread comes first: on the border, then dissolving or not, then there or not", () => {
    // Nothing with a few drops of ammonia is calcium's, dissolving in excess zinc's.
    const record = recordOf({ P: { "b(i)": "none", "b(ii)": "dissolves" } });
    const table = whitePrecipitates(["P"]);
    const order = () => deduce(table, record).repeats.map(({ places: [{ cell }] }) => cell);
    expect(order()).toEqual(["b(ii)", "b(i)"]);
    // A zinc precipitate on the border of sight would be missed more easily still.
    const c = table.cells.findIndex(({ id }) => id === "b(i)");
    table.sets[0].salts.forEach((salt, row) => {
      if (table.salts[salt].cations[0] === "Zn^2+") table.sets[0].atBorder.push([row, c, 0]);
    });
    expect(order()).toEqual(["b(i)", "b(ii)"]);
  });

  test("the other samples say that they wait for it", () => {
    const record = recordOf({ P: { c: "white", d: "white" }, Q: { "a(ii)": "remains" } });
    const conclusion = deduce(whitePrecipitates(["P", "Q"]), record);
    expect(reasons(conclusion, "Q", "Mg^2+")).toContainEqual({ by: "another sample", sample: "P" });
    expect(conclusion.repeats.map(({ places: [{ sample, cell }] }) => [sample, cell])).toEqual([
      ["P", "c"],
      ["P", "d"],
    ]);
  });

  test("a paper that contradicts itself is told apart from a wrong record", () => {
    const paper = { inAll: { cations: 3 }, share: [{ samples: ["P", "Q"], ion: "anion" as const }] };
    const conclusion = deduce(whitePrecipitates(["P", "Q"], paper), recordOf({ P: { c: "white" } }));
    expect(conclusion.repeats).toEqual([]);
    expect(conclusion.contradiction).toBe("three different cations in all");
  });

  test("a sample that no salt can be is told apart too", () => {
    const table = whitePrecipitates(["P"]);
    table.sets[0] = { ...table.sets[0], salts: [], accepts: [], main: [], atBorder: [], facts: [] };
    const conclusion = deduce(table, recordOf({ P: { c: "white" } }));
    expect(conclusion.repeats).toEqual([]);
    expect(conclusion.contradiction).toBe("no salt the paper allows can be P");
  });

  test("at most 24 sets are listed", () => {
    const wild = { c: "white", d: "white" } as const;
    const record = recordOf(Object.fromEntries("PQRST".split("").map((label) => [label, wild])));
    // Either test of each of five samples: 32 smallest sets.
    expect(deduce(whitePrecipitates("PQRST".split("")), record).repeats).toHaveLength(24);
  });
});
