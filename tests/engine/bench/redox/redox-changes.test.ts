import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { halfEquations } from "../../../../src/engine/bench/redox/half-equation.ts";
import { pairEquation } from "../../../../src/engine/bench/redox/pair-equation.ts";
import { redoxChanges } from "../../../../src/engine/bench/redox/redox-changes.ts";
import { imbalance, parseEquation } from "../../../../src/engine/formula/equation.ts";
import { parseFormula } from "../../../../src/engine/formula/parse.ts";
import { atRest, firstChanges, mixed, reactionsOf } from "./mixture.ts";

const pairs = halfEquations.flatMap((oxidant) =>
  halfEquations.filter((reductant) => reductant !== oxidant).map((reductant) => ({ oxidant, reductant })),
);

/** Atoms and charge of a count of components. */
function bookkeeping(count: Readonly<Record<string, number>>): Record<string, number> {
  const books: Record<string, number> = { charge: 0 };
  for (const [id, moles] of Object.entries(count)) {
    const { elements, charge } = parseFormula(id);
    books.charge += charge * moles;
    for (const [symbol, n] of Object.entries(elements)) books[symbol] = (books[symbol] ?? 0) + n * moles;
  }
  return books;
}

test.each([0, 5, 8, 13])("any two couples of the table balance at pH %d, without electrons, in whole numbers", (pH) => {
  for (const { oxidant, reductant } of pairs) {
    const { text, change, electrons } = pairEquation(oxidant, reductant, pH);
    if (/^ ->|-> $/.test(text)) continue; // a couple against a variant of itself
    const equation = parseEquation(text);
    expect(imbalance(equation), text).toEqual({ elements: {}, charge: 0 });
    expect(text).not.toContain("e-");
    expect(electrons).toBeGreaterThan(0);
    for (const { coefficient } of [...equation.left, ...equation.right]) expect(coefficient % 1, text).toBe(0);
    for (const [what, left] of Object.entries(bookkeeping(change)))
      expect(Math.abs(left), `${text}: ${what}`).toBeLessThan(1e-9);
  }
});

/** What the fast-check mixtures are made of: salts as their ions would do, since charge need not balance for the books to. */
const salts: Record<string, number>[] = [
  { "H+": 2, "SO4^2-": 1 },
  { "H+": 1, "Cl-": 1 },
  { "Na+": 1, "OH-": 1 },
  { "K+": 1, "MnO4-": 1 },
  { "K+": 2, "Cr2O7^2-": 1 },
  { "K+": 1, "I-": 1 },
  { "K+": 1, "Br-": 1 },
  { H2O2: 1 },
  { Cl2: 1 },
  { "Na+": 2, "SO3^2-": 1 },
  { "Na+": 2, "S2O3^2-": 1 },
  { "Na+": 1, "NO2-": 1 },
  { "Na+": 1, "NO3-": 1 },
  { "Fe^2+": 1, "SO4^2-": 1 },
  { "Fe^3+": 1, "NO3-": 3 },
  { "Cu^2+": 1, "SO4^2-": 1 },
  { "Mn^2+": 1, "SO4^2-": 1 },
  { "Cr^3+": 1, "NO3-": 3 },
  { "Ag+": 1, "NO3-": 1 },
  { "K+": 4, "[Fe(CN)6]^4-": 1 },
  { "K+": 3, "[Fe(CN)6]^3-": 1 },
  { "Al(s)": 1 },
];

const mixtures = fc
  .uniqueArray(fc.tuple(fc.nat(salts.length - 1), fc.double({ min: -3, max: -0.5, noNaN: true })), {
    minLength: 2,
    maxLength: 4,
    selector: ([index]) => index,
  })
  .map((portions) => {
    const mol: Record<string, number> = {};
    for (const [index, log] of portions) {
      for (const [id, n] of Object.entries(salts[index])) mol[id] = (mol[id] ?? 0) + n * 10 ** log;
    }
    return mol;
  });

test("keeps mass and charge, takes nothing that is not there, and names balanced equations", () => {
  fc.assert(
    fc.property(mixtures, fc.constantFrom(25, 60, 100), fc.boolean(), (mol, celsius, air) => {
      const state = atRest(mixed(mol), { celsius, air });
      const left = { ...state.contents };
      for (const { equation, change, turns, emf, halfway } of redoxChanges(state)) {
        expect(imbalance(parseEquation(equation)), equation).toEqual({ elements: {}, charge: 0 });
        for (const off of Object.values(bookkeeping(change))) expect(Math.abs(off)).toBeLessThan(1e-9);
        expect(turns).toBeGreaterThan(0);
        expect(emf).toBeGreaterThan(0);
        expect(halfway).toBeGreaterThan(0);
        for (const [id, moles] of Object.entries(change)) left[id] = (left[id] ?? 0) + moles * turns;
      }
      // Water, protons and the oxygen of the air are not limited by what was weighed in.
      for (const [id, moles] of Object.entries(left)) {
        if (!["H2O", "H+", "O2(g)"].includes(id)) expect(moles, id).toBeGreaterThan(-1e-12);
      }
    }),
    { numRuns: 400, seed: 20261125, endOnFailure: true },
  );
});

test("reactions come to an end", () => {
  fc.assert(
    fc.property(mixtures, fc.constantFrom(25, 60), fc.boolean(), (mol, celsius, air) => {
      expect(reactionsOf(mol, { celsius, air }).all.length).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 200, seed: 20261125, endOnFailure: true },
  );
});

/** Thiosulfate frees the iodide of copper(I) iodide again, chloride the thiosulfate of its complex: neither must turn round and round. */
test.each([0, 1e-4, 0.002, 0.05])("copper(II) and thiosulfate come to an end with %f mol of iodide", (iodide) => {
  for (const thiosulfate of [0.005, 0.05, 0.1]) {
    const mol = { "Cu^2+": 0.05, "Na+": 2 * thiosulfate, "S2O3^2-": thiosulfate };
    for (const anions of [{ "SO4^2-": 0.05 }, { "Cl-": 0.1 }] as Record<string, number>[]) {
      const { all } = reactionsOf({ ...mol, ...anions, ...(iodide > 0 && { "K+": iodide, "I-": iodide }) });
      expect(all.map(({ pair }) => pair)).toContain("Cu^2+/[Cu(S2O3)2]^3- with S4O6^2-/S2O3^2-");
    }
  }
});

/** Equations and their component balance written from textbooks (Vogel; school texts), from memory. */
describe("iodide with metals, aluminium with nitrate", () => {
  const withoutMetal = (change: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(change).filter(([id]) => id !== "Al(s)"));

  test("iodide with copper(II): an equation that shows the copper(I) iodide", () => {
    const [one] = firstChanges({ "Cu^2+": 0.05, "SO4^2-": 0.05, "K+": 0.2, "I-": 0.2 });
    expect(one).toMatchObject({
      equation: "2 Cu^2+(aq) + 4 I-(aq) -> 2 CuI(s) + I2(aq)",
      // CuI(s) is Cu+ and I-: of the four iodides two stay iodide.
      change: { "Cu^2+": -2, "I-": -2, "Cu+": 2, I2: 1 },
      turns: 0.025,
      borderline: false,
    });
  });

  test("iodide with copper(II), iodide short: half of it ends in the copper(I) iodide", () => {
    const [one] = firstChanges({ "Cu^2+": 0.1, "SO4^2-": 0.1, "K+": 0.1, "I-": 0.1 });
    expect(one.turns).toBeCloseTo(0.025, 9);
  });

  test("iodide with iron(III)", () => {
    const [one] = firstChanges({ "Fe^3+": 0.05, "NO3-": 0.15, "K+": 0.1, "I-": 0.1 });
    expect(one).toMatchObject({
      equation: "2 Fe^3+(aq) + 2 I-(aq) -> 2 Fe^2+(aq) + I2(aq)",
      change: { "Fe^3+": -2, "I-": -2, "Fe^2+": 2, I2: 1 },
      turns: 0.025,
    });
  });

  test("thiosulfate with copper(II): to the colourless copper(I) complex and tetrathionate", () => {
    const { all, end } = reactionsOf({ "Cu^2+": 0.05, "SO4^2-": 0.05, "Na+": 0.4, "S2O3^2-": 0.2 });
    expect(all.map(({ equation }) => equation)).toEqual([
      "2 Cu^2+(aq) + 6 S2O3^2-(aq) -> 2 [Cu(S2O3)2]^3-(aq) + S4O6^2-(aq)",
    ]);
    expect(end.molality.get("Cu^2+") ?? 0).toBeLessThan(5e-5);
  });

  test("aluminium with nitrate, once, to three tenths, in warm alkali", () => {
    const mol = { "Na+": 1.06, "OH-": 1, "NO3-": 0.06, "Al(s)": 1 };
    const one = firstChanges(mol, { celsius: 60 }).find(({ change }) => change["NO3-"]);
    expect(withoutMetal(one?.change ?? {})).toEqual({ "NO3-": -3, NH3: 3, "Al^3+": 8, "H+": -27, H2O: 9 });
    expect(one?.change["Al(s)"]).toBe(-8);
    expect(one?.turns).toBeCloseTo((0.3 * 0.06) / 3, 9);
    expect(firstChanges(mol).filter(({ change }) => change["NO3-"])).toEqual([]);
    const again = redoxChanges({ ...atRest(mixed(mol), { celsius: 60 }), acted: new Set([one?.pair ?? ""]) });
    expect(again.filter(({ change }) => change["NO3-"])).toEqual([]);
  });
});

/** Vogel, from memory: in acid hexacyanidoferrate(II) is oxidised by peroxide, in alkali hexacyanidoferrate(III) is reduced by it. */
describe("hydrogen peroxide with the hexacyanidoferrates", () => {
  const peroxide = { H2O2: 0.1 };
  test.each([
    ["acid", "[Fe(CN)6]^4-", 4, { "H+": 1, "SO4^2-": 0.5 }, "[Fe(CN)6]^3-"],
    ["alkali", "[Fe(CN)6]^3-", 3, { "Na+": 1, "OH-": 1 }, "[Fe(CN)6]^4-"],
  ])("in %s", (_, ion, charge, around, made) => {
    const { end } = reactionsOf({ ...around, "K+": 0.02 * charge, [ion]: 0.02, ...peroxide });
    expect(end.contents[made]).toBeCloseTo(0.02, 6);
  });
});

describe("how it is decided", () => {
  test("what iodine has oxidised over two pairs does not make iodine again", () => {
    const mol = { "Fe^2+": 0.05, "K+": 0.3, "[Fe(CN)6]^3-": 0.05, I2: 0.05, "I-": 0.15, "SO4^2-": 0.05 };
    const pairs = reactionsOf(mol).all.map(({ pair }) => pair);
    expect(pairs).toContain("[Fe(CN)6]^3-/[Fe(CN)6]^4- with Fe4[Fe(CN)6]3/Fe^2+");
    expect(pairs).not.toContain("Fe^3+/Fe^2+ with I2/I-");
  });

  test("without acid manganate(VII) stops at the brown oxide", () => {
    const { all, end } = reactionsOf({ "K+": 0.002, "MnO4-": 0.002, "Na+": 0.1, "SO3^2-": 0.05 });
    expect(all[0].equation).toBe("2 MnO4-(aq) + 3 SO3^2-(aq) + H2O(l) -> 2 MnO2(s) + 3 SO4^2-(aq) + 2 OH-(aq)");
    expect(end.phases.get("MnO2(s)")).toBeCloseTo(0.002, 6);
  });

  test("air browns the hydroxides of iron(II) and manganese(II), and only air", () => {
    for (const [metal, brown] of [
      ["Fe^2+", "Fe(OH)3(s, amorphous)"],
      ["Mn^2+", "MnO2(s)"],
    ]) {
      const mol = { [metal]: 0.05, "SO4^2-": 0.05, "Na+": 1, "OH-": 1 };
      expect(firstChanges(mol)).toEqual([]);
      expect(reactionsOf(mol, { air: true }).end.phases.get(brown)).toBeGreaterThan(0.0495);
    }
  });

  test("iron(II) in acid is not browned by air within minutes", () => {
    expect(firstChanges({ "H+": 1, "SO4^2-": 0.55, "Fe^2+": 0.05 }, { air: true })).toEqual([]);
  });

  test("of two reductants the one with the stronger drive is oxidised first", () => {
    const mol = {
      "H+": 1,
      "SO4^2-": 0.5,
      "K+": 0.002,
      "MnO4-": 0.002,
      "Fe^2+": 0.05,
      "Cl-": 0.1,
      "Na+": 0.1,
      "SO3^2-": 0.05,
    };
    const changes = firstChanges(mol);
    expect(changes.map(({ pair }) => pair)).toEqual(["MnO4-/Mn^2+ with SO4^2-/H2SO3"]);
  });

  test("what is left over goes to the next reductant", () => {
    const mol = {
      "H+": 2,
      "SO4^2-": 1,
      "K+": 0.02,
      "MnO4-": 0.02,
      "Fe^2+": 0.05,
      "Cl-": 0.1,
      "Na+": 0.02,
      "SO3^2-": 0.01,
    };
    expect(firstChanges(mol).map(({ turns }) => turns)).toEqual([expect.closeTo(0.002, 9), expect.closeTo(0.01, 9)]);
  });

  test("acid that runs out stops the reaction", () => {
    const [one] = firstChanges({
      "H+": 0.01,
      "Cl-": 0.01,
      "K+": 0.02,
      "MnO4-": 0.02,
      "Na+": 0.2,
      "I-": 0.2,
    });
    expect(one.equation).toContain("16 H+(aq)");
    expect(one.turns).toBeCloseTo(0.01 / 16, 9);
  });

  test("silver ions and iron(II) only come to an equilibrium, short of half-way at bench strength", () => {
    // E of the pair is 0.7996 - 0.771 V (CRC): K of about 3.
    expect(firstChanges({ "Ag+": 0.025, "NO3-": 0.025, "Fe^2+": 0.1, "SO4^2-": 0.1 })).toEqual([]);
  });

  test("acid on thiosulfate is called borderline: it runs only because the gas escapes", () => {
    const [one] = firstChanges({ "Na+": 0.1, "S2O3^2-": 0.05, "H+": 0.5, "Cl-": 0.5 });
    expect(one).toMatchObject({ equation: "S2O3^2-(aq) + 2 H+(aq) -> S(s) + SO2(g) + H2O(l)", borderline: true });
  });
});
