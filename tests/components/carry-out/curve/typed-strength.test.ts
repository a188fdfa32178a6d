/** Strengths as readers type them. */
import { expect, test } from "vitest";
import { readStrength, stopsApart } from "../../../../src/components/carry-out/curve/typed-strength.ts";

const range = { from: 0.02, to: 0.5 };

test.each([
  ["0.1", 0.1],
  [" .25 ", 0.25],
  ["0.1 mol/dm3", 0.1],
  ["0.1 mol dm-3", 0.1],
  ["100 mmol/dm3", 0.1],
  ["0.02", 0.02],
  ["0.5", 0.5],
])("%j is read", (text, molPerDm3) => expect(readStrength(text, range)).toBeCloseTo(molPerDm3 as number, 12));

test.each([
  ["", "found nothing, expected a strength of 0.02 to 0.5 mol/dm3"],
  ["strong", 'found "strong", expected a strength of 0.02 to 0.5 mol/dm3, such as "0.5 mol/dm3"'],
  ["0,1", 'found "0,1", expected a strength of 0.02 to 0.5 mol/dm3, such as "0.5 mol/dm3"'],
  ["1 cm3", 'found "1 cm3", expected a strength of 0.02 to 0.5 mol/dm3, such as "0.5 mol/dm3"'],
  ["0", 'found "0", expected a strength of 0.02 to 0.5 mol/dm3, such as "0.5 mol/dm3"'],
  ["-0.1", 'found "-0.1", expected a strength of 0.02 to 0.5 mol/dm3, such as "0.5 mol/dm3"'],
  ["1.2.3", 'found "1.2.3", expected a strength of 0.02 to 0.5 mol/dm3, such as "0.5 mol/dm3"'],
  ["0.01", "found 0.01 mol/dm3, expected 0.02 to 0.5 mol/dm3"],
  ["600 mmol/dm3", "found 0.6 mol/dm3, expected 0.02 to 0.5 mol/dm3"],
])("%j is refused in words", (text, fault) => expect(readStrength(text, range)).toEqual({ fault }));

// Ranges of constants/reagents.ts and of samples.
test.each([
  [0.02, 0.5],
  [0.4, 2],
  [0.02, 0.1],
  [0.05, 0.2],
  [0.5, 1],
])("a slider from %d to %d has twenty to fifty round stops", (from, to) => {
  const apart = stopsApart({ from, to });
  expect((to - from) / apart).toBeGreaterThanOrEqual(20 - 1e-9);
  expect((to - from) / apart).toBeLessThanOrEqual(50 + 1e-9);
  expect(String(apart)).toMatch(/^0\.0*[125]$/);
});
