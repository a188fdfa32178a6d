/** The standard test that settles what a paper leaves open, predicted by the engine and held against what the trade says of these ions. */
import { describe, expect, test } from "vitest";
import { furtherPredictions } from "../../../src/engine/deduction/further-predictions.ts";
import { furtherTests } from "../../../src/engine/deduction/further-tests.ts";
import { createPredictor, createSolver, phrase, tabulate } from "../../../src/engine/index.ts";
import { procedure, statement } from "../../../src/engine/practical.ts";

const predictor = createPredictor(createSolver());
const take = { take: "1 cm3" };
const part = (label: string, ...tests: object[][]) => ({
  label,
  title: "A test",
  tests: tests.map((steps) => ({ steps })),
});
const ALKALIS = [
  part("a", [take, { add: "NaOH(aq)", drops: 5 }], [{ add: "NaOH(aq)", until: "in excess" }]),
  part("b", [take, { add: "NH3(aq)", drops: 5 }], [{ add: "NH3(aq)", until: "in excess" }]),
];

/** What further tests would tell of one sample that may hold these salts. */
function further(
  paper: { cations: string[]; anions: string[] },
  parts: object[],
  left: string[],
  given: "solid" | "solution" = "solution",
) {
  const strength = given === "solution" && { concentration: { molPerDm3: 0.1 } };
  const samples = [{ label: "P", given, ...strength, salt: left[0] }];
  const practical = { samples, paper: statement.parse(paper), parts: procedure.parse(parts) };
  const { table } = tabulate(practical, predictor, phrase);
  const found = furtherPredictions(practical, table, predictor);
  if (!found) return undefined;
  const indices = left.map((formula) => table.salts.findIndex((salt) => salt.formula === formula));
  const [{ remaining }] = furtherTests(found.table, [indices]);
  const shows = remaining.test?.outcomes.map(({ reading, salts }) => [
    salts.map((salt) => table.salts[salt].formula).join(),
    found.table.cells.find(({ id }) => id === remaining.test?.cell)?.readings[reading],
  ]);
  const all = found.table.cells.map(({ id }) => id.replace(/\(.*/, ""));
  return { id: remaining.test?.cell, shows: Object.fromEntries(shows ?? []), all };
}

const plain = (colour: string) => ({ precipitate: { colour, amount: "plain" } });

describe("what the two alkalis leave open", () => {
  test("aluminium or lead: a precipitate of lead with sulfate or iodide, none of aluminium", () => {
    const found = further({ cations: ["Al^3+", "Pb^2+", "Zn^2+"], anions: ["NO3-"] }, ALKALIS, [
      "Al(NO3)3",
      "Pb(NO3)2",
    ]);
    // White lead(II) sulfate: Vogel, from memory. Yellow lead(II) iodide: tests/reference/qualitative-tables.json, Q196.
    expect(found?.id).toBe("sulfuric-acid");
    expect(found?.shows).toMatchObject({ "Al(NO3)3": { none: true }, "Pb(NO3)2": plain("white") });
    expect(found?.all).toContain("iodide");
    // The harmless ones do: no chromate(VI) is needed.
    expect(found?.all).not.toContain("chromate");
  });

  test("sodium or potassium: the flame alone, yellow or lilac", () => {
    const found = further({ cations: ["Na+", "K+"], anions: ["NO3-"] }, ALKALIS, ["NaNO3", "KNO3"]);
    // Pearson Edexcel International GCSE Chemistry (4CH1) specification, flame tests.
    expect(found?.id).toBe("flame");
    expect(found?.shows).toMatchObject({ NaNO3: { flame: "yellow" }, KNO3: { flame: "lilac" } });
  });
});

test("calcium or barium where only ammonia was tried: the flame, for with sodium hydroxide both may cloud", () => {
  const found = further({ cations: ["Ca^2+", "Ba^2+"], anions: ["Cl-"] }, ALKALIS.slice(1), ["CaCl2", "BaCl2"]);
  // tests/reference/qualitative-tables.json: Q135 and Q136; a faint white of barium with sodium hydroxide as well.
  expect(found?.id).toBe("flame");
  const colour = (word: string) => expect.stringMatching(word);
  expect(found?.shows).toMatchObject({ CaCl2: { flame: colour("red") }, BaCl2: { flame: colour("green") } });
});

test("magnesium or zinc carbonate, a solid: dissolved in acid, then alkali in excess", () => {
  const paper = { cations: ["Mg^2+", "Zn^2+"], anions: ["CO3^2-"] };
  const acid = [part("a", [{ take: "0.2 g" }, { add: "HCl(aq)", volume: "3 cm3" }, { testGas: "limewater" }])];
  const found = further(paper, acid, ["MgCO3", "ZnCO3"], "solid");
  // Zinc hydroxide dissolves in excess of sodium hydroxide, magnesium hydroxide does not: Q041 and Q045 of the same file.
  expect(found?.id).toBe("acid-then-alkali, solid(iii)");
  expect(found?.shows.MgCO3).toEqual(plain("white"));
  expect(found?.shows.ZnCO3).toMatchObject({ fate: expect.stringMatching(/dissolves$/) });
});

describe("an anion not tested for", () => {
  test("chloride or nitrate: white with silver nitrate, or nothing", () => {
    const found = further({ cations: ["NH4+"], anions: ["Cl-", "NO3-"] }, ALKALIS, ["NH4Cl", "NH4NO3"]);
    // tests/reference/qualitative-tables.json, Q084.
    expect(found?.id).toBe("halide(i)");
    expect(found?.shows).toMatchObject({ NH4Cl: plain("white"), NH4NO3: { none: true } });
  });

  test("chloride or bromide where white and cream count as one: ammonia after silver nitrate, or chlorine water", () => {
    const found = further({ cations: ["Na+"], anions: ["Cl-", "Br-"] }, ALKALIS, ["NaCl", "NaBr"]);
    // Silver chloride dissolves in ammonia (Q084); bromide turns chlorine water orange: common practice, no source.
    expect(["halide(i)", "halide(ii)", "chlorine-water"]).toContain(found?.id);
    expect(Object.keys(found?.shows ?? {}).sort()).toEqual(["NaBr", "NaCl"]);
  });
});

test("sodium, potassium or lead: no flame while it may be lead", () => {
  const barium = [part("a", [take, { add: "Ba(NO3)2(aq)", volume: "1 cm3" }])];
  const paper = { cations: ["Na+", "K+", "Pb^2+"], anions: ["NO3-"] };
  const found = further(paper, barium, ["NaNO3", "KNO3", "Pb(NO3)2"]);
  // Lead has no place in a flame: src/engine/constants/not-given-out.ts. Lead is found in a tube first, of white lead(II) sulfate,
  // chloride or hydroxide (Vogel, from memory).
  expect(found?.all).toContain("flame");
  expect(found?.id).toBeDefined();
  expect(found?.id).not.toBe("flame");
  expect(further(paper, barium, ["NaNO3", "KNO3"])?.id).toBe("flame");
});

test("where the paper's tests tell all salts apart, nothing is predicted", () => {
  expect(further({ cations: ["Cu^2+", "Na+"], anions: ["NO3-"] }, ALKALIS, ["Cu(NO3)2"])).toBeUndefined();
});
