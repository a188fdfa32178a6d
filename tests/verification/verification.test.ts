/** Every disagreement with an outside reference has a written reason, and no reason stands for a difference that is gone. */
import { expect, test } from "vitest";
import { compareAll } from "./all.ts";
import { reference } from "./reference.ts";

const comparisons = compareAll();

test.each(comparisons.map((one) => [one.name, one] as const))("%s", (_, { compared, agreed, misses }) => {
  expect(compared).toBeGreaterThan(0);
  expect(agreed + misses.length).toBe(compared);
  expect(misses.filter(({ reason }) => reason === undefined)).toEqual([]);
});

test("all 60 mixtures of the equilibrium reference agree", () => {
  expect(comparisons[0]).toMatchObject({ compared: 60, agreed: 60 });
});

test("known differences are differences still", () => {
  // One reason may stand for several misses of one cause.
  const missed = [...new Set(comparisons.flatMap(({ misses }) => misses.map(({ id }) => id)))];
  const explained = [
    "known-differences.json",
    "known-differences-deduction.json",
    "known-differences-heat.json",
    "known-differences-notes.json",
    "known-differences-solubility.json",
    "known-differences-wording.json",
  ].flatMap((file) => Object.keys(reference<Record<string, string>>(file)));
  expect(explained.sort()).toEqual(missed.sort());
});
