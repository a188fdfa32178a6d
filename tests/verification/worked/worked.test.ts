/** That the worked examples are held against the engine at all, and that a wrong figure would be noticed. */
import { expect, test } from "vitest";
import { compareWorkedEquilibria } from "./equilibria.ts";
import { given, isAnswer, type WorkedExample, workedExample, workedExamples } from "./example.ts";
import { rowOf, textbookBench, where } from "./mixture.ts";
import { compareWorkedPreparation } from "./preparation.ts";
import { compareWorkedShipped } from "./shipped.ts";

const leftOut = ({ left }: { left: Record<string, number> }) => Object.values(left).reduce((sum, n) => sum + n, 0);

test("every example is compared or left out once", () => {
  expect(workedExamples).toHaveLength(85);
  const [equilibria, shipped, preparation] = [
    compareWorkedEquilibria(),
    compareWorkedShipped(),
    compareWorkedPreparation(),
  ];
  expect(equilibria.compared + leftOut(equilibria)).toBe(56);
  expect(shipped.compared + leftOut(shipped)).toBe(56);
  expect(preparation.compared + leftOut(preparation)).toBe(29);
});

test.each(workedExamples)(
  "the tolerance of $id lets its own answer pass, and neither none nor a hundred times it",
  (example) => {
    expect(isAnswer(example, example.answer)).toBe(true);
    expect(isAnswer(example, 0)).toBe(false);
    expect(isAnswer(example, example.answer * 100)).toBe(false);
  },
);

// The arithmetic is that of the words: 3 % of 200 is 6; an order of magnitude is a factor of 10 to either side.
test.each([
  ["relative 3 %", 205.9, 206.1],
  ["absolute 0.2", 200.19, 200.21],
  ["exact", 200, 200.001],
  ["factor 3", 599, 601],
  ["order of magnitude", 21, 19],
  ["order of magnitude; must be > 1", 21, 0.9],
])("%s of 200", (tolerance, within, beyond) => {
  const example = { ...workedExample("W23"), answer: 200, tolerance };
  expect(isAnswer(example, within)).toBe(true);
  expect(isAnswer(example, beyond)).toBe(false);
});

test("below 1 must be below 1", () => {
  expect(isAnswer(workedExample("W21"), 0.99)).toBe(true);
  expect(isAnswer(workedExample("W21"), 1.01)).toBe(false);
});

test("what cannot be read is named", () => {
  const odd: WorkedExample = { ...workedExample("W01"), tolerance: "nearly" };
  expect(() => isAnswer(odd, 1)).toThrow('W01: the tolerance "nearly" cannot be read');
  expect(() => given("W01", "Kb")).toThrow('W01 prints no figure "Kb", only Ksp');
  expect(() => workedExample("W99")).toThrow("W99 is no worked example");
  expect(() => textbookBench({}).mix({ of: [[1000, {}]], over: "AgCl(s)" })).toThrow("AgCl(s) is no solid of these");
  expect(() => rowOf("NaCl(s)")).toThrow("NaCl(s) is in no row of the constants");
});

test("a figure that is never reached is refused", () => {
  const alkali = (mol: number) => textbookBench({}).mix({ of: [[1000, { "Na+": mol, "OH-": mol }]] });
  expect(() => where(alkali, ({ pH }) => pH, 5, [0.01, 1])).toThrow("does not pass 5 between 0.01 and 1");
});
