import { expect, test } from "vitest";
import { nearest, wordsKnown } from "../../../src/components/search/nearest.ts";

const KNOWN = wordsKnown([
  "Silver nitrate",
  "Sodium hydroxide",
  "sulfate",
  "Barium salts",
  "Limewater",
  "Lead nitrate",
]);

test.each([
  ["silver nitrat", "silver nitrate"],
  ["slver nitrate", "silver nitrate"],
  ["sulphtae", "sulfate"],
  ["sodim hydroxyde", "sodium hydroxide"],
  ["Limewatre", "limewater"],
])("%s is read as %s", (typed, meant) => {
  expect(nearest(typed, KNOWN)).toBe(meant);
});

test.each(["silver nitrate", "sulphate", "SO4^2-", "xyzzy", "led", ""])("%s is left as it is", (typed) => {
  expect(nearest(typed, KNOWN)).toBeUndefined();
});
