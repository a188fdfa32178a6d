/** The published heating rows: nearly all agree, and every one that does not has a written reason. */
import { expect, test } from "vitest";
import { compareHeat, heatDifferences } from "../../../verification/heat.ts";

const { compared, agreed, misses, left } = compareHeat();

test("all 52 rows are read", () => {
  expect({ compared, left }).toEqual({ compared: 52, left: {} });
});

test("at least 95 % agree", () => {
  expect(agreed + misses.length).toBe(compared);
  expect(agreed / compared).toBeGreaterThanOrEqual(0.95);
});

test("every difference has its reason, and no reason stands for one that is gone", () => {
  expect(misses.map(({ id }) => id).sort()).toEqual(Object.keys(heatDifferences).sort());
});
