import { expect, test } from "vitest";
import { atomicWeights } from "../../../src/engine/constants/atomic-weights.ts";
import { elementSymbols } from "../../../src/engine/formula/element-symbols.ts";

test("every row is an element", () => {
  expect(Object.keys(atomicWeights).filter((symbol) => !elementSymbols.has(symbol))).toEqual([]);
  expect(elementSymbols.size).toBe(118);
});

// CIAAW 2021: intervals of the elements whose weight varies in nature; Prohaska et al., Pure Appl. Chem. 94 (2022) 573.
// From memory of the table, except lead, which was read. The abridged weight is rounded to 0.001 (0.01 or 0.1 for some), so it
// may stand outside its interval by half of that; none here needs more than 0.0005.
const ROUNDING = 0.0005;

test.each([
  ["H", 1.00784, 1.00811],
  ["Li", 6.938, 6.997],
  ["C", 12.0096, 12.0116],
  ["N", 14.00643, 14.00728],
  ["O", 15.99903, 15.99977],
  ["S", 32.059, 32.076],
  ["Cl", 35.446, 35.457],
  ["Br", 79.901, 79.907],
  ["Pb", 206.14, 207.94],
])("the weight of %s lies in its published interval", (symbol, low, high) => {
  expect(atomicWeights[symbol].weight).toBeGreaterThanOrEqual(low - ROUNDING);
  expect(atomicWeights[symbol].weight).toBeLessThanOrEqual(high + ROUNDING);
});
