/** Every row of the standard list must be a part the language knows, of reagents the store has. */
import { describe, expect, test } from "vitest";
import { reagents } from "../../../src/engine/constants/reagents.ts";
import { STANDARD_TESTS } from "../../../src/engine/constants/standard-tests.ts";
import { standardPart, standardParts } from "../../../src/engine/practical/standard-parts.ts";
import { procedure } from "../../../src/engine/practical.ts";

describe("the standard tests", () => {
  test.each(STANDARD_TESTS.map((one) => [one.id, one] as const))("%s is a part, with a source", (_, one) => {
    const written = { label: "a", title: one.title, tests: one.tests.map((steps) => ({ steps })) };
    const [{ tests }] = procedure.parse([written]);
    expect(standardPart(one, "a", "solution").tests.map(({ steps }) => steps)).toEqual(tests.map(({ steps }) => steps));
    expect(one.source).not.toBe("");
    for (const { steps } of tests) {
      for (const step of steps) if (step.do === "add") expect(reagents.map(({ id }) => id)).toContain(step.reagent);
    }
  });

  test("each has a name of its own", () => {
    expect(new Set(STANDARD_TESTS.map(({ id }) => id)).size).toBe(STANDARD_TESTS.length);
  });

  test("a solid is stirred into water first, and solids and solutions each have their tube", () => {
    const parts = standardParts([
      { label: "G", given: "solid" },
      { label: "H", given: "both" },
    ]);
    const alkali = parts.filter(({ title }) => title === "Sodium hydroxide");
    expect(alkali.map(({ samples, from }) => [samples, from])).toEqual([
      [["H"], "solution"],
      [["G"], "solid"],
    ]);
    expect(alkali[1].tests[0].steps).toEqual([
      { do: "take", mass: { g: 0.05 } },
      { do: "add", reagent: "H2O(l)", amount: { volume: { cm3: 1 } } },
    ]);
    expect(alkali[1].tests.slice(1).map(({ steps }) => steps)).toEqual(
      alkali[0].tests.map(({ steps }) => steps.filter((step) => step.do !== "take")),
    );
    // A flame needs no water.
    expect(parts.filter(({ title }) => title === "Flame test").map(({ tests }) => tests.length)).toEqual([1, 1]);
  });
});
