/** The sentences of curves that only a reader's choice brings up. */
import { expect, test } from "vitest";
import { madeUpOf, tellCurve } from "../../../../src/components/carry-out/curve/curve-words.ts";
import { drawnTo } from "../../../../src/components/carry-out/curve/plot-lines.ts";
import { changedCurve } from "../../../../src/engine/bench/changed-curve.ts";
import { BENCH_PRACTICE } from "../../../../src/engine/constants/bench-practice.ts";
import { createSolver } from "../../../../src/engine/equilibrium/solve.ts";
import { procedure } from "../../../../src/engine/practical.ts";

const solve = createSolver();

function drawn(salt: string, molPerDm3: number, ...steps: unknown[]) {
  const [part] = procedure.parse([{ label: "a", title: "test", tests: [{ steps: [{ take: "1 cm3" }, ...steps] }] }]);
  const found = changedCurve({ sample: "S", given: "solution", part, test: 0 }, { salt, molPerDm3 }, solve);
  if ("refused" in found) throw new Error(found.refused);
  return found.curve;
}
const told = (salt: string, molPerDm3: number, ...steps: unknown[]) =>
  tellCurve(drawn(salt, molPerDm3, ...steps), "the reagent", BENCH_PRACTICE.drop.value);

// In dilute acid of about 0.5 mol/dm3 most sulfate is hydrogensulfate (pK about 2, any data book); the equation is written with sulfate.
test("the sentence names what the equation beside it starts from", () => {
  const [first] = told("Na2SO4", 0.1, { add: "HNO3(aq)", volume: "1 cm3" }, { add: "Ba(NO3)2(aq)", volume: "1 cm3" });
  expect(first.equation).toBe("Ba^2+(aq) + SO4^2-(aq) -> BaSO4(s)");
  expect(first.says).toMatch(/^The reagent turns SO4\^2- into BaSO4, /);
});

// Net ionic equations of any textbook. Strong iron(III) sulfate also holds [Fe2(OH)2]^4+, lead(II) on its way [Pb4(OH)4]^4+, which no reader sees.
test.each([
  ["Fe2(SO4)3", 0.1, "NaOH(aq)", "Fe^3+", "Fe^3+(aq) + 3 OH-(aq) -> Fe(OH)3(s)"],
  ["Fe2(SO4)3", 0.5, "NaOH(aq)", "Fe^3+", "Fe^3+(aq) + 3 OH-(aq) -> Fe(OH)3(s)"],
  ["Pb(NO3)2", 0.1, "NaOH(aq)", "Pb^2+", "Pb^2+(aq) + 2 OH-(aq) -> Pb(OH)2(s)"],
  ["Pb(NO3)2", 0.1, "NH3(aq)", "Pb^2+", "Pb^2+(aq) + 2 NH3(aq) + 2 H2O(l) -> Pb(OH)2(s) + 2 NH4+(aq)"],
])(
  "%s, %d mol/dm3, and %s start from the simple ion, in words and in the equation",
  (salt, molPerDm3, add, ion, equation) => {
    for (const [first] of [
      told(salt, molPerDm3, { add, until: "in excess" }),
      told(salt, molPerDm3, { add, drops: 5 }),
    ]) {
      expect(first.says).toContain(`The reagent turns ${ion} into `);
      expect(first.equation).toBe(equation);
    }
  },
);

// Magnesium hydroxide and calcium hydroxide remain in excess alkali (any textbook). 1 cm3 of 0.1 mol/dm3 magnesium asks for 0.2 cm3 of 1 mol/dm3 alkali.
test("the volume at which a precipitate is full lies in the picture", () => {
  const excess = { add: "NaOH(aq)", until: "in excess" };
  expect(told("MgCl2", 0.1, excess)[0].says).toContain("At 0.2 cm3 it holds 99 % of the magnesium, nearly its most.");
  for (const salt of ["MgCl2", "CaCl2", "Pb(NO3)2", "Fe2(SO4)3"]) {
    const curve = drawn(salt, 0.1, excess);
    const [, cm3] = /At ([\d.]+) cm3/.exec(tellCurve(curve, "the reagent", BENCH_PRACTICE.drop.value)[0].says) ?? [];
    expect(Number(cm3)).toBeGreaterThan(0);
    expect(Number(cm3)).toBeLessThanOrEqual(drawnTo(curve));
  }
});

// Calcium ions and aqueous ammonia: no precipitate (any textbook); the ammine is weak (log K about 0, any data book).
test("a weak complex is no fate: the ion stays dissolved, and that is all", () => {
  expect(told("CaCl2", 0.1, { add: "NH3(aq)", until: "in excess" })).toEqual([
    { says: "No precipitate appears: the calcium stays dissolved." },
  ]);
});

// Ammonium chloride and sodium hydroxide: no precipitate, and ammonia (any textbook).
test("where no solid forms, what changes is told all the same", () => {
  expect(told("NH4Cl", 0.1, { add: "NaOH(aq)", until: "in excess" })).toEqual([
    { says: "No precipitate appears: the ammonium stays dissolved. The reagent turns NH4+ into NH3." },
  ]);
  expect(told("NaCl", 0.1, { add: "NaOH(aq)", until: "in excess" })[0].says).toBe(
    "No precipitate appears: the chloride stays dissolved.",
  );
});

test("the line under the title says what the curve is drawn for", () => {
  const reagent = "aqueous sodium hydroxide";
  expect(madeUpOf({ salt: "ZnSO4", molPerDm3: 0.1, reagentMolPerDm3: 1 }, reagent)).toBe(
    "0.1 mol/dm3 ZnSO4 with 1 mol/dm3 aqueous sodium hydroxide",
  );
  expect(madeUpOf({ salt: "CaCO3" }, "water")).toBe("CaCO3 with water");
});
