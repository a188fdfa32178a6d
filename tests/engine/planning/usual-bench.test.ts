import { expect, test } from "vitest";
import { planUsualBench } from "../../../src/engine/planning/usual-bench.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

const tubes = (water: string) => {
  const practical = planned([
    { label: "a", title: "Cold", tests: [{ steps: [{ take: "1 cm3" }, { add: "H2O(l)", volume: water }] }] },
  ]);
  const { tubes, warnings } = planUsualBench(practical, tableOf(practical), CHOICE);
  return { size: tubes[0].size.id, warnings: warnings.length };
};

/** Brim volumes of tests/reference/tube-depths.json, rounded there to 1 cm3: 19 for the common tube, 23 and 31 for the next two. */
test.each([
  ["8 cm3", "test-tube-125x16", 0],
  ["10 cm3", "test-tube-150x16", 0],
  ["13 cm3", "test-tube-150x18", 0],
  ["20 cm3", "test-tube-125x16", 1],
])("1 cm3 of the sample and %s of water are half of a %s at most, or there is a warning", (water, size, warnings) => {
  expect(tubes(water)).toEqual({ size, warnings });
});
