/** Figures in German: a decimal comma (DIN 1333), no groups in short numbers. */
import { expect, test } from "vitest";
import { figures, withFigures } from "../../../src/components/figures.ts";

test.each([
  [0.1, "0,1"],
  [12, "12"],
  [1200.5, "1200,5"],
  [0.0025, "0,0025"],
])("%s is written %s", (number, written) => {
  expect(figures(number)).toBe(written);
});

test.each([
  ["0.1 mol/dm3 in 2.5 cm3", "0,1 mol/dm3 in 2,5 cm3"],
  ["pH 9.1.", "pH 9,1."],
  ["Teil 2. 5 Tropfen", "Teil 2. 5 Tropfen"],
  ["Version 1.2.3", "Version 1.2.3"],
])("%s is printed %s", (text, printed) => {
  expect(withFigures(text)).toBe(printed);
});
