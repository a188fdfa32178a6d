import { expect, test } from "vitest";
import { amount } from "../../../src/components/class/amounts.ts";

// A school balance shows 0.01 g, a measuring cylinder a tenth below 20 cm3: common practice, no source.
test.each([
  [8.4937, "g", "8.49 g"],
  [28.7541, "g", "28.75 g"],
  [0.158032, "g", "0.16 g"],
  [0.0123, "g", "0.012 g"],
  [25.2, "cm3", "25 cm³"],
  [5.12, "cm3", "5.1 cm³"],
  [6, "cm3", "6 cm³"],
  [225, "cm3", "225 cm³"],
] as const)("%s %s is printed as %s", (value, unit, printed) => {
  expect(amount(value, unit)).toBe(printed.replace(" ", "\u00a0"));
});
