/** The handbook figures themselves: enough salts, each a solid of the constants, each once; and what the solubility of a stranger says. */
import { expect, test } from "vitest";
import { compareSolubility, handbook, solubility, solubilityDifferences } from "./solubility.ts";

test("thirty salts and more, each once", () => {
  const salts = handbook.map(({ solid }) => solid);
  expect(new Set(salts).size).toBe(salts.length);
  expect(salts.length).toBeGreaterThanOrEqual(30);
});

test("every reason belongs to a salt that differs, and every difference has one", () => {
  const missed = compareSolubility().misses.map(({ id }) => id);
  expect(Object.keys(solubilityDifferences).sort()).toEqual(missed.sort());
});

test("a solid the constants do not hold is named", () => {
  expect(() => solubility("NaCl(s)", "NaCl", 20, 36)).toThrow("NaCl(s) is no solid of the constants");
});
