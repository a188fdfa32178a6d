import { expect, test } from "vitest";
import {
  alkaliForAluminium,
  printedDown,
  setOutOfReagent,
  setOutOfSample,
  volumeOfDrops,
  withSpare,
} from "../../../src/engine/planning/portions.ts";
import reference from "../../reference/tube-depths.json" with { type: "json" };

const answer = (id: string) => reference.workedExamples.find((one) => one.id === id)?.answer;

test("20 drops are 1 cm3 (USP 32 <1101>: 45 to 55 mg of water a drop)", () => {
  expect(volumeOfDrops(20)).toBe(1);
  expect(volumeOfDrops(3)).toBe(0.15);
});

test("W75: alkali for an aluminium salt", () => {
  expect(alkaliForAluminium(1, 0.1, 1)).toBe(answer("W75"));
});

test("a weaker alkali takes 2.5 times as much, a stronger sample 5 times (bench notes: 0.4 mol/dm3 alkali, 0.5 mol/dm3 salt)", () => {
  expect(alkaliForAluminium(1, 0.1, 0.4)).toBe(1); // 0.4 x 2.5
  expect(alkaliForAluminium(1, 0.5, 1)).toBe(2); // 0.4 x 5
});

test("W76: silver nitrate for a class", () => {
  expect(withSpare(24 * 6 * volumeOfDrops(5), 0.3)).toBe(answer("W76"));
});

test.each([
  [0.5, 2], // 0.75, but never below 2
  [2, 3], // 2 x 1.5 = 3
  [3.5, 5.5], // 5.25 -> 5.5
  [8.5, 13], // 12.75 -> 13
])("a reagent of which %s cm3 is used: %s cm3 set out", (needed, setOut) => {
  expect(setOutOfReagent(needed)).toBe(setOut);
});

test.each([
  [3, "solution", 4.5], // two thirds of 4.5
  [1, "solution", 1.5],
  [0.6, "solid", 0.9],
  [0.3, "solid", 0.5], // 0.45 -> 0.5
] as const)("a sample of which %s is used, %s: %s set out", (needed, of, setOut) => {
  expect(setOutOfSample(needed, of)).toBe(setOut);
});

test.each([
  [5.82, "5.8"],
  [5.89, "5.8"],
  [5.8, "5.8"],
  [6, "6"],
])("a limit of %s cm3 is printed as %s: never above itself", (limit, words) => {
  expect(printedDown(limit)).toBe(words);
});
