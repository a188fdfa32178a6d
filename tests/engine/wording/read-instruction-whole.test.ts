/** Nothing of an instruction is lost or turned round, whatever the text: what is not read is asked. Invented sentences. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { step } from "../../../src/engine/practical.ts";
import { LONGEST_INSTRUCTION, readInstruction } from "../../../src/engine/wording/read-instruction.ts";
import { NAOH, questionsOf, stepsOf, testsOf } from "./instruction-read.ts";

describe("no reagent of the text is lost", () => {
  const NAMED = [
    ["NaOH(aq)", "aqueous sodium hydroxide"],
    ["HCl(aq)", "dilute hydrochloric acid"],
    ["AgNO3(aq)", "aqueous silver nitrate"],
    ["KI(aq)", "aqueous potassium iodide"],
    ["Al(s)", "aluminium foil"],
  ] as const;
  const CLAUSES = [
    "Add 1 cm3 of X.",
    "Add X to 1 cm3 of solution B until in excess.",
    "Warm with X.",
    "Warm 2 cm3 of solution B with X.",
    "Boil with X.",
    "Boil the X.",
    "Heat solid B with X.",
    "Shake solid C with X.",
    "Mix X with 1 cm3 of solution B.",
    "Treat solid C with X.",
    "Acidify with X.",
    "Add 1 cm3 of X and 2 cm3 of ethanol.",
  ];
  test.each(CLAUSES)("%s", (clause) => {
    for (const [id, name] of NAMED) {
      const text = clause.replace("X", name);
      const isAdded = stepsOf(text)
        .flat()
        .some(({ add }) => add === id);
      expect(isAdded || questionsOf(text).some((question) => question.includes(name)), text).toBe(true);
    }
  });
});

/** Pieces of papers, to be put together at random. */
const PIECES = [
  "add",
  "aqueous ammonia",
  "1 cm3 of",
  "a few drops of",
  "solution K",
  ", then",
  "in excess",
  ".",
  "\n",
  "(b)",
  "(ii)",
  "test any gas with",
  "damp",
  "litmus",
  "and",
  "warm",
  "until",
  "to",
  "the filtrate",
  "filter",
  "0.5",
  "NaOH(aq)",
  "²⁺",
  "((((",
  "a a a a",
  "spatula",
  "excess",
  "-",
  "slowly",
];

describe("any text", () => {
  test("is read without an error, and in bounded size", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 400 }),
          fc.array(fc.constantFrom(...PIECES), { maxLength: 60 }).map((pieces) => pieces.join(" ")),
        ),
        (text) => {
          const { parts } = readInstruction(text);
          expect(parts.length).toBeLessThanOrEqual(26);
          for (const one of parts.flatMap(({ tests }) => tests)) {
            const asked = one.stretches.some(({ questions }) => questions.length > 0);
            // What is not asked about must be whole: the schema that reads an author's steps takes it.
            if (!asked) for (const each of one.steps) expect(step.safeParse(each).success || isOpen(each)).toBe(true);
          }
        },
      ),
      { seed: 6, numRuns: 600 },
    );
  });

  test.each([
    ["the same letter", "a".repeat(100_000)],
    ["the same word", "add ".repeat(30_000)],
    ["amounts", "1 to ".repeat(20_000)],
    ["spaces", `add${" ".repeat(100_000)}x`],
    ["brackets", "(".repeat(100_000)],
    ["verbs with commas", ", and then gently add".repeat(5000)],
    ["line ends", "\n".repeat(100_000)],
  ])("of %s in a great number does not hold it up", (_, text) => {
    const { parts, faults } = readInstruction(text);
    expect(parts.length).toBeLessThanOrEqual(26);
    if (text.length > LONGEST_INSTRUCTION) expect(faults[0]).toContain("only the first");
  });
});

/** An entry left open for the reader; its question stands at the stretch it came from, which may be told on the line before. */
const isOpen = (written: Readonly<Record<string, unknown>>): boolean =>
  Object.values(written).includes("") || ("add" in written && Object.keys(written).length === 1);

describe("nothing is dropped or turned round", () => {
  test.each<[string, string[], object[], RegExp[]]>([
    [
      "Put 0.2 g of solid P in a tube and heat it strongly, testing the gas with a glowing splint.",
      ["P"],
      [{ take: "0.2 g" }, { heat: "strongly" }, { testGas: "glowing splint" }],
      [],
    ],
    [
      "Heat solid P strongly using a glowing splint to test the gas.",
      ["P"],
      [{ take: "0.3 g" }, { heat: "strongly" }, { testGas: "glowing splint" }],
      [],
    ],
    ["Warm, testing any gas with damp red litmus paper.", [], [{ warm: true }, { testGas: "damp red litmus" }], []],
    ["Test the gas using a glowing splint.", [], [{ testGas: "glowing splint" }], []],
    [
      "Warm gently with a glowing splint at the mouth.",
      [],
      [{ warm: true }, { testGas: "" }],
      [/^With what is the gas tested/],
    ],
    [
      "Add 1 cm3 of P to 2 cm3 of dilute nitric acid.",
      ["P"],
      [{ take: "1 cm3" }, { add: "HNO3(aq)", volume: "2 cm3" }],
      [],
    ],
    [
      "Place 1 cm3 of P into 2 cm3 of dilute nitric acid.",
      ["P"],
      [{ take: "1 cm3" }, { add: "HNO3(aq)", volume: "2 cm3" }],
      [],
    ],
    ["Heat P strongly.", ["P"], [{ take: "0.3 g" }, { heat: "strongly" }], []],
    ["Heat P.", ["P"], [{ take: "1 cm3" }, { warm: true }], [/^What is heated here/]],
    ["Mix equal volumes of P and Q.", [], [], [/^P and Q are mixed with one another/]],
    ["Bubble chlorine gas through Q.", ["Q"], [{ take: "1 cm3" }, { add: "" }], [/^A gas is led into the sample/]],
    ["Add 1 cm3 of NaOH without heating.", [], [NAOH({ volume: "1 cm3" })], []],
    ["Without heating, add 1 cm3 of NaOH.", [], [NAOH({ volume: "1 cm3" })], []],
    ["Each contains one cation and one anion.", [], [], []],
    ["The solution is warmed.", [], [], [/^Not understood/]],
  ])("%s", (sentence, samples, steps, questions) => {
    expect(stepsOf(sentence).flat()).toEqual(steps);
    expect(readInstruction(sentence).parts.flatMap((part) => part.samples)).toEqual(samples);
    const asked = questionsOf(sentence);
    expect(asked).toHaveLength(questions.length);
    for (const [index, question] of questions.entries()) expect(asked[index]).toMatch(question);
  });

  test("a statement is passed over with a word", () => {
    const [only] = testsOf("Each contains one cation and one anion.");
    expect(only.stretches[0].assumed).toEqual(["this is a statement: enter it with the samples"]);
  });
});
