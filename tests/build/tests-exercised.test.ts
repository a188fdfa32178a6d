/** The map of which tests a practical exercises knows every page of a test, and reads the steps as a person would. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { TEST_PAGES, testsExercised } from "../../src/build/tests-exercised.ts";
import { step } from "../../src/engine/practical/step.ts";
import { ROOT } from "./broken.ts";

test("every page of a test can be exercised, and nothing else", () => {
  const pages = readdirSync(join(ROOT, "src", "content", "ion-tests")).map((name) => name.replace(/\.mdx$/, ""));
  expect([...TEST_PAGES].sort()).toEqual(pages.sort());
});

const practical = (...tests: Record<string, unknown>[][]) => ({
  parts: tests.map((steps, n) => ({
    label: "abc"[n],
    title: "part",
    tests: [{ steps: steps.map((one) => step.parse(one)) }],
  })),
});
const take = { take: "1 cm3" };

test.each([
  ["alkali in the cold", [take, { add: "NaOH(aq)", drops: 5 }], ["sodium-hydroxide"]],
  [
    "alkali warmed, with litmus",
    [take, { add: "NaOH(aq)", volume: "1 cm3" }, { warm: true }, { testGas: "damp red litmus" }],
    ["ammonium", "gases"],
  ],
  [
    "ammonia after silver is part of the silver test",
    [take, { add: "AgNO3(aq)", drops: 5 }, { add: "NH3(aq)", until: "in excess" }],
    ["silver-nitrate"],
  ],
  [
    "acid with limewater",
    [take, { add: "HCl(aq)", volume: "1 cm3" }, { testGas: "limewater" }],
    ["acid", "limewater", "gases"],
  ],
  [
    "a powder",
    [{ take: "0.1 g" }, { add: "HNO3(aq)", volume: "2 cm3" }, { add: "NaOH(aq)", until: "in excess" }],
    ["sodium-hydroxide", "powders"],
  ],
  ["a flame", [{ flame: true }], ["flame"]],
])("%s", (_, steps, expected) => {
  expect(testsExercised(practical(steps))).toEqual(expected);
});
