/** Which bottle, which tube and which part of it an instruction means: read rightly, or asked. Invented sentences. */
import { describe, expect, test } from "vitest";
import { readInstruction } from "../../../src/engine/wording/read-instruction.ts";
import { NAOH, questionsOf, stepsOf, testsOf } from "./instruction-read.ts";

const assumedOf = (text: string) =>
  testsOf(text).flatMap(({ stretches }) => stretches.flatMap(({ assumed }) => assumed));

describe("an oxidation number names the bottle", () => {
  test.each([
    ["potassium hexacyanoferrate(II)", "K4[Fe(CN)6](aq)"],
    ["potassium hexacyanoferrate(III)", "K3[Fe(CN)6](aq)"],
    ["lead(II) nitrate", "Pb(NO3)2(aq)"],
    ["iron(II) sulfate", "FeSO4(aq)"],
    ["potassium manganate(VII)", "KMnO4(aq)"],
    ["potassium manganate", "KMnO4(aq)"],
  ])("%s", (name, id) => {
    const text = `To 1 cm3 of solution K add 3 drops of ${name}.`;
    expect(stepsOf(text)[0][1]).toEqual({ add: id, drops: 3 });
    expect(questionsOf(text)).toEqual([]);
  });

  test.each(["potassium hexacyanoferrate", "iron(II) chloride", "potassium manganate(VI)"])("%s is asked", (name) => {
    const text = `To 1 cm3 of solution K add 3 drops of ${name}.`;
    expect(stepsOf(text)[0][1].add).toBe("");
    expect(questionsOf(text).join(" ")).toMatch(/^Which /);
  });
});

describe("what a filtration keeps", () => {
  const MADE = "To 2 cm3 of solution P, add 2 cm3 of dilute sulfuric acid.";
  const H2SO4 = [{ take: "2 cm3" }, { add: "H2SO4(aq)", volume: "2 cm3" }];
  test.each<[string, object[]]>([
    [
      "Filter the mixture and wash the residue with water. To the filtrate add 1 cm3 of NaOH.",
      [{ filter: "filtrate" }, NAOH({ volume: "1 cm3" })],
    ],
    [
      "Filter the mixture and wash the residue with water. To the residue add 1 cm3 of NaOH.",
      [{ filter: "residue" }, { wash: true }, NAOH({ volume: "1 cm3" })],
    ],
    ["Filter and discard the residue. Add 1 cm3 of NaOH.", [{ filter: "filtrate" }, NAOH({ volume: "1 cm3" })]],
    ["Filter. Add 1 cm3 of NaOH to the residue.", [{ filter: "residue" }, NAOH({ volume: "1 cm3" })]],
  ])("%s", (text, steps) => {
    expect(stepsOf(`${MADE} ${text}`).flat()).toEqual([...H2SO4, ...steps]);
    expect(questionsOf(`${MADE} ${text}`)).toEqual([]);
  });

  test.each([
    "Filter, keeping the residue. To the filtrate add 1 cm3 of NaOH.",
    "Filter. To the filtrate add 1 cm3 of NaOH. To the residue add 1 cm3 of HCl.",
  ])("asks: %s", (text) =>
    expect(questionsOf(`${MADE} ${text}`).join(" ")).toMatch(/enter the steps for it in a part/),
  );
});

test.each<[string, object[][]]>([
  ["then a further 3 cm3", [[{ take: "1 cm3" }, NAOH({ volume: "2 cm3" })], [NAOH({ volume: "3 cm3" })]]],
  [
    "then another 2 cm3, then in excess",
    [[{ take: "1 cm3" }, NAOH({ volume: "2 cm3" })], [NAOH({ volume: "2 cm3" })], [NAOH({ until: "in excess" })]],
  ],
])("more of a reagent is a line of its own: %s", (more, steps) => {
  const text = `To 1 cm3 of solution P add 2 cm3 of aqueous sodium hydroxide and ${more}.`;
  expect(stepsOf(text)).toEqual(steps);
  expect(questionsOf(text)).toEqual([]);
});

describe("what was made before", () => {
  const PAPER =
    "(b) Dissolve solid P in 5 cm3 of water. (c) To a 1 cm depth of the solution from (b) add 5 drops of NaOH.";
  test("goes on in its tube", () => {
    expect(stepsOf(PAPER).flat()).toEqual([{ take: "0.3 g" }, { add: "H2O(l)", volume: "5 cm3" }, NAOH({ drops: 5 })]);
    expect(questionsOf(PAPER)).toEqual([]);
    expect(assumedOf(PAPER)).toContain("all that is in the tube is used");
  });
  test("is asked for where something has been added to it since", () =>
    expect(questionsOf(`${PAPER} (d) To a 1 cm depth of the solution from (b) add 5 drops of HCl.`).join(" ")).toMatch(
      /This takes what \(b\) left/,
    ));
  test("is asked for where the tube is another one", () =>
    expect(
      questionsOf(`(a) To 1 cm3 of P add 2 drops of HCl. ${PAPER.replace("from (b)", "from (a)")}`).join(" "),
    ).toMatch(/the tube of \(a\)/));
  test("in portions: the first goes on, the second is asked for", () => {
    const text =
      "Dissolve solid P in 5 cm3 of water. Divide the solution into two portions. To the first portion add 5 drops of NaOH.";
    expect(stepsOf(text).flat()).toHaveLength(3);
    expect(questionsOf(text)).toEqual([]);
    expect(questionsOf(`${text} To the second portion add 5 drops of HCl.`).join(" ")).toMatch(/another portion/);
  });
});

test.each(["To 1 cm3 of P and 1 cm3 of Q in a tube, mix.", "To 1 cm3 of P add 2 cm3 of NaOH and 2 cm3 of Q."])(
  "two samples in one tube are asked about: %s",
  (text) => expect(questionsOf(text).join(" ")).toMatch(/begins with one sample/),
);

describe("a liquid that waits for its sample", () => {
  test.each([
    "To 2 cm3 of dilute nitric acid in a test-tube add a spatula measure of P.",
    "Put 2 cm3 of dilute nitric acid into a test-tube. Add a spatula measure of solid P.",
  ])("%s", (text) => {
    expect(stepsOf(text)).toEqual([[{ take: "0.3 g" }, { add: "HNO3(aq)", volume: "2 cm3" }]]);
    expect(readInstruction(text).parts[0].samples).toEqual(["P"]);
    expect(questionsOf(text)).toEqual([]);
  });
  test("and gets none is asked about, and not lost", () => {
    const text = "To 2 cm3 of dilute nitric acid add 2 cm3 of aqueous silver nitrate.";
    expect(stepsOf(text)[0].map(({ add }) => add)).toEqual(["HNO3(aq)", "AgNO3(aq)"]);
    expect(questionsOf(text).join(" ")).toMatch(/Which sample/);
  });
});

test.each(["P and Q share the same anion.", "P and Q have the same cation.", "No two of them hold the same anion."])(
  "a statement: %s",
  (text) => {
    expect(questionsOf(text)).toEqual([]);
    expect(assumedOf(text)).toEqual(["this is a statement: enter it with the samples"]);
  },
);

test("a sentence that makes several tests is the words of none of them", () => {
  const text = "To 1 cm3 of P add NaOH drop by drop, then in excess. Warm gently.";
  expect(testsOf(text).map(({ says }) => says)).toEqual(["", "", "Warm gently."]);
});

test("parts keep the letters of the paper", () => {
  const { parts } = readInstruction("(f) To 1 cm3 of P add 2 drops of NaOH.\n(g) To 1 cm3 of P add 2 drops of HCl.");
  expect(parts.map(({ mark }) => mark)).toEqual(["f", "g"]);
});
