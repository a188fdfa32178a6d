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

test.each(["", "strong", "1 cm3", "0", "-0.1", "1.2.3", "0.01", "600 mmol/dm3"])(
  "%j is refused with what to do",
  (text) =>
    expect(readStrength(text, range)).toEqual({ fault: "Give a strength from 0.02 to 0.5 mol/dm3, for example 0.5." }),
);

test.each([
  ["0,1", "0.1"],
  [" ,25", ".25"],
  ["0,1 mol/dm3", "0.1 mol/dm3"],
])("%j has a comma for a point", (text, meant) =>
  expect(readStrength(text, range)).toEqual({ fault: `Write the figure with a point, not a comma: ${meant}.` }),
);

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

test("a slider over one strength alone still has a distance a browser takes: more than none", () => {
  expect(stopsApart({ from: 0.5, to: 0.5 })).toBeGreaterThan(0);
});
