/** Pasted sentences become parts of a draft: behaviour from the specification. */
import { describe, expect, test } from "vitest";
import { type Draft, emptyDraft, emptySample, renamed } from "../../../src/components/paper/draft.ts";
import { partsFrom, samplesFrom } from "../../../src/components/paper/parts-from.ts";
import { readInstruction } from "../../../src/engine/wording/read-instruction.ts";

const draft = { parts: [{ label: "a" }], samples: [{ label: "K" }, { label: "L" }] } as Draft;

test.each([
  ["To 1 cm3 of solution K add 2 drops of NaOH.", ["K"]],
  ["To 1 cm3 of solution Q add 2 drops of NaOH.", ["Q"]],
  ["To 1 cm3 of each of solutions K and Q add 2 drops of NaOH.", ["K", "Q"]],
  ["To 1 cm3 of each of solutions K and L add 2 drops of NaOH.", ["K", "L"]],
  ["To 1 cm3 of each solution add 2 drops of NaOH.", []],
])("%s is for %j", (sentence, samples) => {
  const [part] = partsFrom(readInstruction(sentence), draft, { strengths: {} });
  expect(part.label).toBe("b");
  expect(part.samples).toEqual(samples);
});

test.each<[string, string[]]>([
  ["(f) To 1 cm3 of K add 2 drops of NaOH.\n(g) To 1 cm3 of K add 2 drops of HCl.", ["f", "g"]],
  ["(f) Warm 1 cm3 of K. Warm 1 cm3 of L.\n(g) Warm 1 cm3 of K.", ["f", "h", "g"]],
  ["(a) Warm 1 cm3 of K.\n(c) Warm 1 cm3 of L.", ["b", "c"]],
])("parts keep the letters of the paper where they are free: %s", (text, labels) => {
  expect(partsFrom(readInstruction(text), draft, { strengths: {} }).map(({ label }) => label)).toEqual(labels);
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

describe("the samples that sentences name", () => {
  const [P, Q] = ["P", "Q"].map(emptySample);
  const one = {
    ...emptyDraft(),
    title: "Two jars",
    parts: partsFrom(readInstruction("Warm 1 cm3 of P."), emptyDraft(), { strengths: {} }),
  };
  test.each<[string, Draft, string, [string, string][], string[]]>([
    [
      "are added",
      one,
      "To 1 cm3 of P and Q add 2 drops of NaOH.",
      [
        ["P", "solution"],
        ["Q", "solution"],
      ],
      ["Q"],
    ],
    [
      "are solids where they are weighed",
      one,
      "Put 0.3 g of solid Q in a tube.",
      [
        ["P", "solution"],
        ["Q", "solid"],
      ],
      ["Q"],
    ],
    [
      "are both where they are taken both ways",
      one,
      "(a) Put 0.3 g of solid Q in a tube. (b) To 1 cm3 of Q add 2 drops of NaOH.",
      [
        ["P", "solution"],
        ["Q", "both"],
      ],
      ["Q"],
    ],
    [
      "take the place of the one an empty form has",
      emptyDraft(),
      "Warm 1 cm3 of solution K.",
      [["K", "solution"]],
      ["K"],
    ],
    [
      "are left alone where none is named",
      one,
      "To 1 cm3 of each solution add 2 drops of NaOH.",
      [["P", "solution"]],
      [],
    ],
  ])("%s", (_, draft, sentence, given, added) => {
    const found = samplesFrom(readInstruction(sentence), draft);
    expect(found.samples.map((sample) => [sample.label, sample.given])).toEqual(given);
    expect(found.added).toEqual(added);
  });

  test("keep their parts under a new letter", () => {
    const draft = { ...one, samples: [P, Q] };
    expect(renamed(draft, 0, "X").parts.map((part) => part.samples)).toEqual([["X"]]);
    expect(renamed(draft, 1, "P").parts.map((part) => part.samples)).toEqual([["P"]]);
  });

  test("a statement alone makes no part", () => {
    expect(partsFrom(readInstruction("Each contains one cation and one anion."), one, { strengths: {} })).toEqual([]);
  });
});
