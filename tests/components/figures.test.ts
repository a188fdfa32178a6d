/** Figures in English: as the engine writes them. */
import { expect, test } from "vitest";
import { figures, withFigures } from "../../src/components/figures.ts";

test.each([
  [0.1, "0.1"],
  [12, "12"],
  [1200.5, "1200.5"],
  [0.0025, "0.0025"],
])("%s is written %s", (number, written) => {
  expect(figures(number)).toBe(written);
});

test("a sentence stays as it is", () => {
  expect(withFigures("0.1 mol/dm3 in 2.5 cm3")).toBe("0.1 mol/dm3 in 2.5 cm3");
});
