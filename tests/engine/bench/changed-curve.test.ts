/** Another salt or strength: the curve follows the amounts, and what cannot be is refused in words. */
import { describe, expect, test } from "vitest";
import { type CurveChange, type CurveSource, changedCurve } from "../../../src/engine/bench/changed-curve.ts";
import { type NamedCurve, namedCurve } from "../../../src/engine/bench/named-curve.ts";
import { createSolver } from "../../../src/engine/equilibrium/solve.ts";
import { procedure } from "../../../src/engine/practical.ts";

const solve = createSolver();
const partOf = (...tests: unknown[][]) =>
  procedure.parse([{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }])[0];

const take = { take: "1 cm3" };
const alkali: CurveSource = {
  sample: "S",
  given: "solution",
  part: partOf([take, { add: "NaOH(aq)", drops: 5 }], [{ add: "NaOH(aq)", until: "in excess" }]),
  test: 1,
};

function drawn(change: CurveChange, source = alkali): NamedCurve {
  const found = changedCurve(source, change, solve);
  if ("refused" in found) throw new Error(found.refused);
  return found.curve;
}
const refusal = (change: CurveChange, source = alkali): string | undefined => {
  const found = changedCurve(source, change, solve);
  return "refused" in found ? found.refused : undefined;
};

/** Volume at which the first solid is at its most, and that at which less than a hundredth of the ion is left in it, cm3. */
function turningPoints({ x, series, total }: NamedCurve): { most: number; gone: number } {
  const [solid] = series;
  expect(solid.kind).toBe("solid");
  const peak = solid.mol.indexOf(Math.max(...solid.mol));
  const gone = solid.mol.findIndex((mol, n) => n > peak && mol < total[n] / 100);
  return { most: x[peak], gone: x[gone] };
}

/** Half a drop between two points, and one more because the last traces follow the equilibrium, not the count; rounding on top. */
const TWO_POINTS = 0.05 + 1e-9;

// Al3+ + 3 OH- -> Al(OH)3 and Al(OH)3 + OH- -> [Al(OH)4]-: any textbook. One cm3 of the sample is taken.
describe("aluminium hydroxide comes and goes where three and four hydroxide ions to one aluminium ion are in", () => {
  test.each([
    [0.1, 1],
    [0.2, 1],
    [0.1, 0.5],
    [0.3, 2],
  ])("%d mol/dm3 sample, %d mol/dm3 sodium hydroxide", (molPerDm3, reagentMolPerDm3) => {
    const curve = drawn({ salt: "AlCl3", molPerDm3, reagentMolPerDm3 });
    const { most, gone } = turningPoints(curve);
    expect(Math.abs(most - (3 * molPerDm3) / reagentMolPerDm3)).toBeLessThanOrEqual(TWO_POINTS);
    expect(Math.abs(gone - (4 * molPerDm3) / reagentMolPerDm3)).toBeLessThanOrEqual(TWO_POINTS);
    expect(curve.total[0]).toBeCloseTo(molPerDm3 / 1000, 9);
    expect(curve.ionName).toBe("aluminium");
  });
});

test("the whole bottle changes strength: drops and excess stay one curve", () => {
  expect(drawn({ salt: "AlCl3", molPerDm3: 0.1, reagentMolPerDm3: 0.5 }).cells).toEqual(["a(i)", "a(ii)"]);
});

test("the paper's own choice gives the paper's own curve", () => {
  const own = namedCurve(
    { sample: "S", salt: { ions: { "Zn^2+": 1, "SO4^2-": 1 }, molPerDm3: 0.1 } },
    alkali.part,
    1,
    solve,
  );
  // 1 mol/dm3: the usual strength in constants/reagents.ts.
  expect(drawn({ salt: "ZnSO4", molPerDm3: 0.1, reagentMolPerDm3: 1 })).toEqual(own);
});

// 1 cm3 of 0.1 mol/dm3 chloride meets 1 cm3 of silver nitrate, one to one (any textbook).
test("as much silver as chloride takes all the chloride", () => {
  const silver: CurveSource = { ...alkali, part: partOf([take, { add: "AgNO3(aq)", volume: "1 cm3" }]), test: 0 };
  const held = (reagentMolPerDm3: number) => {
    const { series, total } = drawn({ salt: "NaCl", molPerDm3: 0.1, reagentMolPerDm3 }, silver);
    expect(series[0].id).toMatch(/^AgCl\(s/);
    return (series[0].mol.at(-1) ?? 0) / (total.at(-1) ?? 1);
  };
  expect(held(0.05)).toBeCloseTo(0.5, 2);
  expect(held(0.1)).toBeCloseTo(1, 2);
});

test("no ion that the reagent brings in another form is followed: ammonium, while ammonia goes in", () => {
  const ammonia: CurveSource = { ...alkali, part: partOf([take, { add: "NH3(aq)", drops: 5 }]), test: 0 };
  expect(drawn({ salt: "NH4Cl", molPerDm3: 0.1, reagentMolPerDm3: 1 }, ammonia).ion).toBe("Cl-");
  expect(drawn({ salt: "NH4Cl", molPerDm3: 0.1, reagentMolPerDm3: 1 }).ion).toBe("NH4+");
});

// Barium sulfate is the precipitate the test asks for (any textbook).
describe("a test that asks for an anion keeps to it", () => {
  const barium: CurveSource = {
    ...alkali,
    part: partOf([take, { add: "HNO3(aq)", volume: "1 cm3" }], [{ add: "Ba(NO3)2(aq)", volume: "1 cm3" }]),
    ion: "SO4^2-",
  };

  test("a salt that has it is followed", () => {
    expect(drawn({ salt: "MgSO4", molPerDm3: 0.1 }, barium).ion).toBe("SO4^2-");
  });

  test("of one that has not it is said, and no other ion takes its place", () => {
    expect(refusal({ salt: "NH4Cl", molPerDm3: 0.1 }, barium)).toBe(
      "ammonium chloride holds no sulfate, so nothing precipitates here",
    );
  });

  test("another cation is the other salt's own", () => {
    expect(drawn({ salt: "MgCl2", molPerDm3: 0.1 }, { ...alkali, ion: "Al^3+" }).ion).toBe("Mg^2+");
    expect(drawn({ salt: "NH4Cl", molPerDm3: 0.1 }, { ...alkali, ion: "Al^3+" }).ion).toBe("NH4+");
  });

  test("what stood in the tube before is followed whatever the salt: silver, when ammonia goes in", () => {
    const silver: CurveSource = {
      ...alkali,
      part: partOf([take, { add: "AgNO3(aq)", volume: "1 cm3" }], [{ add: "NH3(aq)", until: "in excess" }]),
      ion: "Ag+",
    };
    expect(drawn({ salt: "NaNO3", molPerDm3: 0.1 }, silver).ion).toBe("Ag+");
  });
});

describe("what cannot be drawn is refused in words", () => {
  // Lead(II) chloride dissolves to about 10 g/dm3 at 20 C, 0.036 mol/dm3: from memory.
  test("a salt that does not dissolve to the strength", () => {
    expect(refusal({ salt: "PbCl2", molPerDm3: 0.5, reagentMolPerDm3: 1 })).toMatch(
      /^lead\(II\) chloride does not dissolve to 0\.5 mol\/dm3: \d+ g\/dm3 stays solid$/,
    );
    expect(refusal({ salt: "PbCl2", molPerDm3: 0.02, reagentMolPerDm3: 1 })).toBeUndefined();
  });

  test("a liquid that meets a dry solid", () => {
    const solid: CurveSource = {
      sample: "J",
      given: "solid",
      part: partOf([{ take: "0.1 g" }, { add: "HCl(aq)", volume: "3 cm3" }]),
      test: 0,
    };
    expect(refusal({ salt: "CaCO3", reagentMolPerDm3: 1 }, solid)).toBe(
      "the engine cannot follow calcium carbonate through this test",
    );
  });

  test("a mixture the solver gives up on", () => {
    const givesUp = () => ({ converged: false, reason: "none found" }) as const;
    expect(changedCurve(alkali, { salt: "ZnSO4", molPerDm3: 0.1, reagentMolPerDm3: 1 }, givesUp)).toEqual({
      refused: "the engine finds no equilibrium for zinc sulfate in this mixture",
    });
  });

  test("something that is no salt is a mistake of the caller", () => {
    expect(() => changedCurve(alkali, { salt: "H2O", molPerDm3: 0.1 }, solve)).toThrow(/found the salt "H2O"/);
  });
});
