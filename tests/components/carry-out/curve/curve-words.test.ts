/** The sentences of curves that only a reader's choice brings up. */
import { expect, test } from "vitest";
import { madeUpOf, tellCurve } from "../../../../src/components/carry-out/curve/curve-words.ts";
import { changedCurve } from "../../../../src/engine/bench/changed-curve.ts";
import { createSolver } from "../../../../src/engine/equilibrium/solve.ts";
import { procedure } from "../../../../src/engine/practical.ts";

const solve = createSolver();

function told(salt: string, molPerDm3: number, ...steps: unknown[]) {
  const [part] = procedure.parse([{ label: "a", title: "test", tests: [{ steps: [{ take: "1 cm3" }, ...steps] }] }]);
  const found = changedCurve({ sample: "S", given: "solution", part, test: 0 }, { salt, molPerDm3 }, solve);
  if ("refused" in found) throw new Error(found.refused);
  return tellCurve(found.curve, "the reagent");
}

// In dilute acid of about 0.5 mol/dm3 most sulfate is hydrogensulfate (pK about 2, any data book); the equation is written with sulfate.
test("the sentence names what the equation beside it starts from", () => {
  const [first] = told("Na2SO4", 0.1, { add: "HNO3(aq)", volume: "1 cm3" }, { add: "Ba(NO3)2(aq)", volume: "1 cm3" });
  expect(first.equation).toBe("Ba^2+(aq) + SO4^2-(aq) -> BaSO4(s)");
  expect(first.says).toMatch(/^The reagent turns SO4\^2- into BaSO4, /);
});

// Strong iron(III) sulfate: most of the iron is with sulfate, and the engine's equation starts from another species.
test.each([0.1, 0.5])("so does that of iron(III) sulfate, %d mol/dm3", (molPerDm3) => {
  const [first] = told("Fe2(SO4)3", molPerDm3, { add: "NaOH(aq)", until: "in excess" });
  const from = /turns (\S+) into/.exec(first.says)?.[1] ?? "";
  expect(from).not.toBe("");
  expect(first.equation?.startsWith(`${from}(aq) + `)).toBe(true);
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
