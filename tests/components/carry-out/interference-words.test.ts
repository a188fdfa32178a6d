/** Warnings beside a step read as sentences, with their figures and what to do. */
import { expect, test } from "vitest";
import { wordSource } from "../../../src/components/carry-out/event-words.ts";
import { wordBorderline, wordInterference } from "../../../src/components/carry-out/interference-words.ts";

const haze = (salt: string, gramsPerDm3: number) => ({ salt, how: "perhaps", phase: "AgCl(s)", gramsPerDm3 }) as const;
const tapWater = (...salts: string[]) =>
  wordInterference({
    cell: "d",
    kind: "tap water",
    salts: salts.map((salt, n) => haze(salt, 0.04 - 0.01 * n)),
    concluded: "a halide",
    remedy: "Use deionised water.",
  });

test("a false result: its cause, for which salts, what is seen, what to do", () => {
  expect(tapWater("KNO3")).toBe(
    "Tap water holds chloride: with KNO3, 0.04 g/dm3 of AgCl may be taken for a halide. Use deionised water.",
  );
  expect(tapWater("KNO3", "NaNO3")).toContain("with KNO3 or NaNO3, up to 0.04 g/dm3 of AgCl");
  expect(tapWater("KNO3", "NaNO3", "Na2SO4", "K2SO4")).toContain("with any of 4 salts of the list, up to");
});

test("a reading near a limit: with what it would be another", () => {
  const remains = { fate: "partly dissolves" } as const;
  const weak = { variation: { of: "reagent", id: "NH3(aq)", molPerDm3: 0.4 }, reading: remains } as const;
  expect(wordBorderline("R", { flips: [weak], readings: [] })).toBe(
    "R is near a limit here: with NH3 at 0.4 mol/dm3 you would see: some of the precipitate dissolves. Check the strength on the bottle.",
  );
  const faint = { precipitate: { colour: "white", amount: "slight" } } as const;
  expect(wordBorderline("X", { flips: [{ variation: { of: "carbonate" }, reading: faint }], readings: [] })).toBe(
    "X is near a limit here: with the little carbonate that most alkali holds you would see: faint white precipitate.",
  );
});

test("a source is a sentence, and so is the want of one", () => {
  expect(wordSource("Vogel, from memory")).toBe("Source: Vogel, from memory.");
  expect(wordSource("common practice, no source")).toBe("This is common practice; no source was at hand.");
});
