import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { limewaterTubes } from "../../../src/engine/planning/limewater-tubes.ts";
import { orderOfWork } from "../../../src/engine/planning/order-of-work/order-of-work.ts";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { rackRows } from "../../../src/engine/planning/rack-places.ts";
import { glassOf } from "../../../src/engine/planning/tube-choice.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

const acid = { add: "HCl(aq)", volume: "2 cm3" };
const take = { take: "1 cm3" };
const practical = planned([
  {
    label: "a",
    title: "Acid, gas drawn off, then led through",
    tests: [{ steps: [take, acid, { testGas: "limewater" }] }, { steps: [acid, { leadThrough: "limewater" }] }],
  },
  { label: "b", title: "Acid", samples: ["P"], tests: [{ steps: [take, acid, { leadThrough: "limewater" }] }] },
]);

const { tubes } = JSON.parse(readFileSync(join(import.meta.dirname, "../../reference/tube-depths.json"), "utf8")) as {
  tubes: { id: string; depthMm: Record<string, number> }[];
};

test("each sample and step has a tube of its own, with a label, a size and a mark", () => {
  const found = limewaterTubes(practical.parts, practical.samples, glassOf(CHOICE).testTube);
  expect(found.map(({ label }) => label)).toEqual([
    "P a(i) limewater",
    "Q a(i) limewater",
    "P a(ii) limewater",
    "Q a(ii) limewater",
    "P b limewater",
  ]);
  const depths = tubes.find(({ id }) => id === CHOICE.testTube)?.depthMm;
  // Drawn off with a dropper: not more than 1 cm3 in the second tube (RSC); for a delivery tube 2, to dip into (common practice, no source).
  expect(found.map(({ marks }) => marks[0].cm3)).toEqual([1, 1, 2, 2, 2]);
  for (const { size, marks } of found) {
    expect(size.id).toBe(CHOICE.testTube);
    expect(marks).toHaveLength(1);
    // The reference gives tenths of a millimetre.
    expect(Math.abs(marks[0].depthMm - (depths?.[marks[0].cm3] ?? Number.NaN))).toBeLessThanOrEqual(0.05 + 1e-9);
  }
});

test("they stand in a row of their own, in the order in which they are needed", () => {
  const plan = planBench(practical, tableOf(practical), CHOICE);
  const order = orderOfWork(practical, { people: 1, burners: 1, partsInOrder: true });
  const rows = rackRows([...plan.tubes, ...plan.limewater], order);
  expect(rows.map(({ kind }) => kind)).toEqual(["test-tubes", "limewater tubes"]);
  expect(rows[1].places.flat().at(-1)).toBe("P b limewater");
  // A tube that receives a gas is no tube of the tests: none is counted twice.
  expect(plan.tubes.some(({ label }) => label.includes("limewater"))).toBe(false);
});
