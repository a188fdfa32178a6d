/** Pasted sentences become parts of a draft: behaviour from the specification. */
import { expect, test } from "vitest";
import type { Draft } from "../../../src/components/paper/draft.ts";
import { partsFrom } from "../../../src/components/paper/parts-from.ts";
import { readInstruction } from "../../../src/engine/wording/read-instruction.ts";

const draft = { parts: [{ label: "a" }], samples: [{ label: "K" }, { label: "L" }] } as Draft;

test.each([
  ["To 1 cm3 of solution K add 2 drops of NaOH.", ["K"]],
  ["To 1 cm3 of solution Q add 2 drops of NaOH.", ["Q"]],
  ["To 1 cm3 of each of solutions K and Q add 2 drops of NaOH.", ["K", "Q"]],
  ["To 1 cm3 of each of solutions K and L add 2 drops of NaOH.", []],
  ["To 1 cm3 of each solution add 2 drops of NaOH.", []],
])("%s is for %j", (sentence, samples) => {
  const [part] = partsFrom(readInstruction(sentence), draft, { strengths: {} });
  expect(part.label).toBe("b");
  expect(part.samples).toEqual(samples);
});

test("a bottle of the department's own strength is written into the step, unless the sentence names a strength", () => {
  const house = { strengths: { "NaOH(aq)": "0.5 mol/dm3" } };
  const [part] = partsFrom(
    readInstruction(
      "To 1 cm3 of solution K add 2 drops of NaOH. Add 2 mol/dm3 NaOH until in excess. Add 2 drops of HCl.",
    ),
    draft,
    house,
  );
  const added = part.tests.flatMap(({ steps }) => steps).filter((step) => "add" in step);
  expect(added.map(({ add, at }) => [add, at])).toEqual([
    ["NaOH(aq)", "0.5 mol/dm3"],
    ["NaOH(aq)", "2 mol/dm3"],
    ["HCl(aq)", undefined],
  ]);
});
