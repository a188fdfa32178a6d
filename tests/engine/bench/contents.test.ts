/** What a sample of several ions may hold, and what it then shows. Expectations are textbook statements (Vogel, from memory). */
import { describe, expect, test } from "vitest";
import { cannotBe } from "../../../src/engine/bench/allowed-salts.ts";
import { contentNamed, contentOf, contentsOf } from "../../../src/engine/bench/contents.ts";
import { createPredictor } from "../../../src/engine/bench/predictor.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { tabulate } from "../../../src/engine/bench/tabulate.ts";
import { procedure, statement } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { cm3, drops, show, solve, take } from "./show.ts";

const paper = (cations: string[], anions: string[]) => statement.parse({ cations, anions });

describe("all that a paper allows", () => {
  test("one of each kind is every pair, in the paper's order", () => {
    const formulas = contentsOf(paper(["Na+", "K+"], ["Cl-", "NO3-"])).map(({ formula }) => formula);
    expect(formulas).toEqual(["NaCl", "NaNO3", "KCl", "KNO3"]);
  });
  test("two of a kind are chosen without regard to order: 3 pairs of cations, 3 of anions", () => {
    const all = contentsOf(paper(["Na+", "K+", "NH4+"], ["Cl-", "NO3-", "SO4^2-"]), { cations: 2, anions: 2 });
    expect(all).toHaveLength(9);
    expect(all[0]).toMatchObject({ formula: "NaCl + KNO3", cations: ["Na+", "K+"], anions: ["Cl-", "NO3-"] });
    expect(all[0].ions).toEqual({ "Na+": 1, "K+": 1, "Cl-": 1, "NO3-": 1 });
  });
  test("a double salt of the store is itself: alum, not two sulfates", () => {
    expect(contentOf(["Al^3+", "K+"], ["SO4^2-"])).toMatchObject({
      formula: "KAl(SO4)2",
      ions: { "K+": 1, "Al^3+": 1, "SO4^2-": 2 },
    });
    expect(contentOf(["Na+"], ["Cl-", "SO4^2-"]).ions).toEqual({ "Na+": 3, "Cl-": 1, "SO4^2-": 1 });
  });
});

describe("what an author names", () => {
  test.each([
    ["CuSO4*5H2O", ["Cu^2+"], ["SO4^2-"]],
    ["(NH4)2Fe(SO4)2*6H2O", ["NH4+", "Fe^2+"], ["SO4^2-"]],
    ["NaCl + KNO3", ["Na+", "K+"], ["Cl-", "NO3-"]],
    ["ZnSO4*7H2O + ZnCl2", ["Zn^2+"], ["SO4^2-", "Cl-"]],
  ])("%s", (words, cations, anions) => {
    expect(contentNamed(words)).toMatchObject({ cations, anions });
  });
  test.each(["NaHSO4", "NaCl + H2SO4", "CsCl"])("%s is unknown", (words) => {
    expect(contentNamed(words)).toBeUndefined();
  });
});

describe("what cannot be one solution", () => {
  const at = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;
  test("ions that precipitate one another", () => {
    expect(cannotBe(contentOf(["Ba^2+", "Na+"], ["Cl-", "SO4^2-"]), at, solve)).toMatch(
      /^barium, sodium, chloride and sulfate do not stay dissolved together at 0\.1 mol\/dm3: .* of BaSO4\(s\) comes out$/,
    );
  });
  test("ions that oxidise one another", () => {
    expect(cannotBe(contentOf(["Fe^3+", "Na+"], ["I-", "SO4^2-"]), at, solve)).toBe(
      "iron(III), sodium, iodide and sulfate oxidise one another, so there is no such solution",
    );
  });
  test("sodium chloride with potassium nitrate can", () => {
    expect(cannotBe(contentOf(["Na+", "K+"], ["Cl-", "NO3-"]), at, solve)).toBeUndefined();
  });
  // Iron alum of 0.1 mol/dm3 is a bench solution (common practice, no source); thiocyanate turns it red with no precipitate (Vogel, from memory).
  test.each([
    ["iron alum", contentOf(["NH4+", "Fe^3+"], ["SO4^2-"])],
    ["iron(III) sulfate", contentOf(["Fe^3+"], ["SO4^2-"])],
  ])("%s can, and stays clear until alkali comes", (_, { ions, ...content }) => {
    expect(cannotBe({ ...content, ions }, at, solve)).toBeUndefined();
    expect(show(ions, [take, cm3("H2O(l)")])[0].readings).toEqual([{ none: true }]);
    expect(show(ions, [take, drops("KSCN(aq)")])[0].readings).toEqual([{ solution: "blood-red" }]);
    expect(show(ions, [take, drops("NaOH(aq)")])[0].readings[0]).toMatchObject({
      precipitate: { colour: "red-brown", amount: "plain" },
    });
  });
  test("a mixture of solids is not predicted, a double salt is", () => {
    expect(cannotBe(contentOf(["Na+", "K+"], ["Cl-"]), { given: "solid" }, solve)).toContain("no mixture of solids");
    expect(cannotBe(contentOf(["K+", "Al^3+"], ["SO4^2-"]), { given: "solid" }, solve)).toBeUndefined();
  });
});

test("a mixture shows the tests of all its ions, beside a sample of one salt", () => {
  const { table } = tabulate(
    {
      samples: [
        {
          label: "V",
          given: "solution",
          concentration: { molPerDm3: 0.1 },
          holds: { cations: 1, anions: 2 },
        },
        { label: "W", given: "solution", concentration: { molPerDm3: 0.1 } },
      ],
      paper: paper(["Na+"], ["Cl-", "SO4^2-", "NO3-"]),
      parts: procedure.parse([
        { label: "a", title: "Barium", tests: [{ steps: [take, cm3("HNO3(aq)"), cm3("Ba(NO3)2(aq)")] }] },
        { label: "b", title: "Silver", tests: [{ steps: [take, cm3("HNO3(aq)"), drops("AgNO3(aq)")] }] },
      ]),
    },
    createPredictor(solve),
    phrase,
  );
  expect(table.samples).toEqual([
    { label: "V", set: 0 },
    { label: "W", set: 1 },
  ]);
  const shows = (set: number, formula: string) => {
    const row = table.sets[set].salts.findIndex((salt) => table.salts[salt].formula === formula);
    return table.cells.map(({ words }, c) => words[table.sets[set].main[row][c]]);
  };
  expect(shows(0, "NaCl + Na2SO4")).toEqual(["white precipitate", "white precipitate"]);
  expect(shows(0, "NaCl + NaNO3")).toEqual(["no visible change", "white precipitate"]);
  expect(shows(0, "Na2SO4 + NaNO3")).toEqual(["white precipitate", "no visible change"]);
  expect(shows(1, saltOf("Na+", "Cl-").formula)).toEqual(["no visible change", "white precipitate"]);
});
