/** What a class counts by groups is told by what it is, not by how English calls it. */
import { expect, test } from "vitest";
import { createSolver } from "../../../src/engine/equilibrium/solve.ts";
import { prepareClass } from "../../../src/engine/planning/class/prepare-class.ts";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { CHOICE, planned, tableOf } from "../../engine/planning/small-procedure.ts";

test("waste bottles, droppers and goggles are no things of a group", () => {
  const steps = [{ take: "1 cm3" }, { add: "Pb(NO3)2(aq)", drops: 5 }];
  const procedure = planned([{ label: "a", title: "only part", tests: [{ steps }] }], { letters: ["P"] });
  for (const sample of procedure.samples) sample.salt = "NaCl";
  const plan = planBench(procedure, tableOf(procedure), CHOICE);
  const size = { groups: 4, sparePercent: 0 };
  const counted = prepareClass(procedure, plan, size, createSolver()).counted.map(({ what }) => what);
  const apart = plan.extras.filter(({ countedApart }) => countedApart).map(({ what }) => what);
  expect(apart).toEqual(["Schutzbrille", "saubere Pipette", "Abfallflasche für Blei"]);
  for (const what of apart) expect(counted).not.toContain(what);
  expect(counted.length).toBeGreaterThan(3);
});
