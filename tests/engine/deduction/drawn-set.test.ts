/** Drawing by a number: behaviour from the specification. */
import { expect, test } from "vitest";
import { drawnSet, GREATEST_SEED, isSeed } from "../../../src/engine/deduction/drawn-set.ts";

const sets = Array.from({ length: 240 }, (_, index) => index);

test("the same number draws the same set", () => {
  for (const seed of [1, 2, 1234, GREATEST_SEED]) expect(drawnSet(sets, seed)).toBe(drawnSet([...sets], seed));
});

test("neighbouring numbers draw sets that have nothing to do with each other", () => {
  const steps = Array.from({ length: 2000 }, (_, n) => Math.abs(drawnSet(sets, n + 1) - drawnSet(sets, n + 2)));
  // The mean distance of two even draws from so many is a third of their number.
  const mean = steps.reduce((sum, step) => sum + step, 0) / steps.length;
  expect(mean).toBeGreaterThan(240 * 0.3);
  expect(mean).toBeLessThan(240 * 0.37);
});

test("every set is drawn, none much more often than another", () => {
  const counts = new Map<number, number>();
  const draws = 9000;
  for (let seed = 1000; seed < 1000 + draws; seed++) {
    const set = drawnSet(sets, seed);
    counts.set(set, (counts.get(set) ?? 0) + 1);
  }
  expect(counts.size).toBe(sets.length);
  // Chi-square with 239 degrees of freedom: above 315 once in a thousand fair draws (tables: mean 239, standard deviation 21.9).
  const expected = draws / sets.length;
  const chi2 = [...counts.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  expect(chi2).toBeLessThan(315);
});

test.each([0, -1, 1.5, Number.NaN, GREATEST_SEED + 1, Number.POSITIVE_INFINITY])("%s is no number of a set", (seed) => {
  expect(isSeed(seed)).toBe(false);
  expect(() => drawnSet(sets, seed)).toThrow(/seed: found .* expected a whole number/);
});

test("nothing is drawn from nothing", () => {
  expect(() => drawnSet([], 1)).toThrow(/found none/);
});
