/** Where an ion is as a reagent is added: nothing is lost on the way, precipitates come and go, and the end is the bench's own. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { amountsOf } from "../../../src/engine/bench/amounts.ts";
import { carryOutTest } from "../../../src/engine/bench/carry-out-test.ts";
import { type Curve, curve } from "../../../src/engine/bench/curve.ts";
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { nothingTaken } from "../../../src/engine/bench/sample.ts";
import { emptyTube } from "../../../src/engine/bench/tube.ts";
import { type Part, procedure } from "../../../src/engine/practical.ts";
import { cm3, drops, excess, saltWith, solve, take, warm } from "./show.ts";

const partOf = (...tests: unknown[][]): Part =>
  procedure.parse([{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }])[0];

function drawn(ions: Record<string, number>, part: Part, index: number, ion?: string): Curve {
  const found = curve({ ions, molPerDm3: 0.1 }, part, index, solve, ion);
  if (!found) throw new Error("the test has no curve");
  return found;
}

const solids = ({ series }: Curve) => series.filter(({ kind }) => kind === "solid");
/** Part of the ion in one species along the curve. */
const shares = (of: Curve, id: RegExp): number[] => {
  const found = of.series.filter((one) => id.test(one.id));
  expect(found).toHaveLength(1);
  return found[0].mol.map((held, n) => held / of.total[n]);
};
const last = (values: readonly number[]): number => values[values.length - 1];

/** Largest part of the ion that the species together do not account for. */
const lost = ({ series, others, total }: Curve): number =>
  Math.max(
    ...total.map((all, n) => Math.abs(all - others[n] - series.reduce((sum, { mol }) => sum + mol[n], 0)) / all),
  );

/** Our choice: far below what school glassware measures (1e-2), far above rounding. */
const BALANCE = 1e-9;

const silver = partOf([take, cm3("HNO3(aq)"), cm3("AgNO3(aq)")], [excess("NH3(aq)")]);
const alkali = partOf([take, drops("NaOH(aq)")], [excess("NaOH(aq)")]);

describe("nothing of the ion is lost", () => {
  test("whatever salt, reagent and strength", () => {
    const cation = fc.constantFrom("Zn^2+", "Al^3+", "Pb^2+", "Cu^2+", "Mg^2+", "Fe^3+", "Ag+", "Ca^2+");
    const reagent = fc.constantFrom("NaOH(aq)", "NH3(aq)", "HCl(aq)", "H2SO4(aq)");
    const strength = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(cation, reagent, strength, (ion, what, molPerDm3) => {
        const found = curve({ ions: saltWith(ion), molPerDm3 }, partOf([take, excess(what)]), 0, solve);
        if (!found) return false;
        const begun = molPerDm3 / 1000;
        return lost(found) < BALANCE && found.total.every((all) => Math.abs(all / begun - 1) < BALANCE);
      }),
      { numRuns: 40, seed: 9 },
    );
  });

  test("silver oxide holds two silver ions", () => {
    const found = drawn(saltWith("Ag+"), partOf([take, excess("NaOH(aq)")]), 0);
    expect(Math.max(...shares(found, /^Ag2O\(s/))).toBeGreaterThan(0.9);
    expect(lost(found)).toBeLessThan(BALANCE);
  });
});

// What forms and what dissolves: rows Q040, Q041, Q044, Q045, Q084, Q085, Q088 and Q089 of tests/reference/qualitative-tables.json, with their sources
// there. The complexes it dissolves into: from memory.
describe("a precipitate that comes and goes", () => {
  test("zinc hydroxide with sodium hydroxide, drops and excess as one curve", () => {
    const found = drawn(saltWith("Zn^2+"), alkali, 1);
    expect(found.ion).toBe("Zn^2+");
    expect(found.ends).toEqual([
      { test: 0, x: expect.closeTo(0.25, 9) },
      { test: 1, x: expect.closeTo(4.25, 9) },
    ]);
    const hydroxide = shares(found, /^Zn\(OH\)2\(s/);
    expect(hydroxide[0]).toBe(0);
    expect(Math.max(...hydroxide)).toBeGreaterThan(0.95);
    expect(last(hydroxide)).toBe(0);
    expect(last(shares(found, /^\[Zn\(OH\)4\]\^2-$/))).toBeGreaterThan(0.9);
  });

  test("0.1 mmol of zinc takes 0.2 mmol of hydroxide, 0.2 cm3 of 1 mol/dm3: the precipitate is then at its most", () => {
    const found = drawn(saltWith("Zn^2+"), alkali, 1);
    const hydroxide = shares(found, /^Zn\(OH\)2\(s/);
    expect(found.x[hydroxide.indexOf(Math.max(...hydroxide))]).toBeCloseTo(0.2, 1);
  });

  test("magnesium hydroxide comes and stays", () => {
    const hydroxide = shares(drawn(saltWith("Mg^2+"), alkali, 1), /^Mg\(OH\)2\(s/);
    expect(hydroxide[0]).toBe(0);
    expect(last(hydroxide)).toBeGreaterThan(0.95);
  });

  test("silver chloride forms with silver nitrate: the chloride is followed, what is added is not", () => {
    const found = drawn(saltWith("Cl-"), silver, 0);
    expect(found.ion).toBe("Cl-");
    expect(shares(found, /^AgCl\(s/)[0]).toBe(0);
    // 1 cm3 of 0.05 mol/dm3 silver nitrate takes half of 0.1 mmol of chloride: 1 to 1.
    expect(last(shares(found, /^AgCl\(s/))).toBeCloseTo(0.5, 2);
  });

  test("and goes with ammonia, into diamminesilver(I)", () => {
    const found = drawn(saltWith("Cl-"), silver, 1);
    expect(found.ion).toBe("Ag+");
    const chloride = shares(found, /^AgCl\(s/);
    expect(chloride[0]).toBeGreaterThan(0.99);
    expect(last(chloride)).toBe(0);
    expect(last(shares(found, /^\[Ag\(NH3\)2\]\+$/))).toBeGreaterThan(0.95);
    expect(last(shares(drawn(saltWith("Cl-"), silver, 1, "Cl-"), /^Cl-$/))).toBeGreaterThan(0.95);
  });

  test("silver iodide does not go with ammonia", () => {
    expect(last(shares(drawn(saltWith("I-"), silver, 1), /^AgI\(s/))).toBeGreaterThan(0.95);
  });
});

describe("the end of a curve is what the bench predicts", () => {
  const cases: [string, Record<string, number>, Part, number][] = [
    ["zinc sulfate and sodium hydroxide, drops", saltOf("Zn^2+", "SO4^2-").ions, alkali, 0],
    ["zinc sulfate and sodium hydroxide, excess", saltOf("Zn^2+", "SO4^2-").ions, alkali, 1],
    ["copper(II) and ammonia", saltWith("Cu^2+"), partOf([take, drops("NH3(aq)")], [excess("NH3(aq)")]), 1],
    ["chloride and silver nitrate", saltWith("Cl-"), silver, 0],
    ["silver chloride and ammonia", saltWith("Cl-"), silver, 1],
    ["sulfate and barium nitrate", saltWith("SO4^2-"), partOf([take, cm3("HNO3(aq)")], [cm3("Ba(NO3)2(aq)")]), 1],
  ];

  test.each(cases)("%s", (_, ions, part, index) => {
    const found = drawn(ions, part, index);
    const tube = emptyTube();
    const portion = nothingTaken({ ions, molPerDm3: 0.1 });
    for (const one of part.tests.slice(0, index + 1)) {
      carryOutTest(one, tube, portion, new Map(), solve, { warm: 60, air: true });
    }
    if (!tube.result) throw new Error("the tube has not come to rest");
    const end = amountsOf(tube.result);
    const total = last(found.total);
    expect(found.series.length).toBeGreaterThan(0);
    for (const { id, mol } of found.series) {
      // None of the species of these cases holds two of the ion followed.
      expect(Math.abs(last(mol) - (end.get(id) ?? 0)) / total, id).toBeLessThan(1e-6);
    }
  });

  test("and a fate told in the prediction is the one drawn", () => {
    const ions = saltOf("Zn^2+", "SO4^2-").ions;
    const told = predictSalt({ ions, molPerDm3: 0.1 }, [alkali], solve).get("a(ii)");
    expect(told?.readings[0]).toEqual({ fate: "dissolves", solution: "colourless" });
    expect(last(solids(drawn(ions, alkali, 1))[0].mol)).toBe(0);
  });
});

test("only a solid with a twentieth of the ion somewhere, or a dissolved species with a tenth, has a line", () => {
  const found = drawn(saltOf("Zn^2+", "SO4^2-").ions, alkali, 1);
  for (const { kind, mol } of found.series) {
    expect(Math.max(...mol.map((held, n) => held / found.total[n]))).toBeGreaterThanOrEqual(
      kind === "solid" ? 0.05 : 0.1,
    );
  }
});

const solid = { take: "0.1 g" };

test.each([
  ["adds no liquid", partOf([take, drops("NaOH(aq)")], [warm]), 1],
  ["adds to a dry solid", partOf([solid, cm3("HCl(aq)")]), 0],
  ["comes after a solid was heated", partOf([solid, { heat: "strongly" }], [cm3("H2O(l)")], [excess("HCl(aq)")]), 2],
])("no curve for a test that %s", (_, part, index) => {
  const salt = { ions: saltOf("Ca^2+", "CO3^2-").ions, molPerDm3: 0.1, solid: "CaCO3" };
  expect(curve(salt, part, index, solve)).toBeUndefined();
});
