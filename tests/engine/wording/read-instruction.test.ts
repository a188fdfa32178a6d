/** Invented sentences in the style of practical papers. What each should be read as is what it says: from the sentence, not from the reader. */
import { describe, expect, test } from "vitest";
import { usableReagents } from "../../../src/engine/bench/operations.ts";
import { readInstruction } from "../../../src/engine/wording/read-instruction.ts";
import { NAOH, questionsOf, stepsOf, testsOf } from "./instruction-read.ts";

describe("a sentence becomes steps", () => {
  test.each([
    [
      "To 1 cm3 of solution K add 5 drops of aqueous sodium hydroxide.",
      [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }],
    ],
    [
      "Add 2 cm³ of dilute hydrochloric acid to 1 cm³ of solution M.",
      [{ take: "1 cm3" }, { add: "HCl(aq)", volume: "2 cm3" }],
    ],
    ["Add 3 ml of dil. H2SO4.", [{ add: "H2SO4(aq)", volume: "3 cm3" }]],
    ["Add 1-2 drops of acidified potassium permanganate.", [{ add: "acidified KMnO4(aq)", drops: 2 }]],
    ["Add 4 drops of potassium manganate(VII).", [{ add: "KMnO4(aq)", drops: 4 }]],
    ["Add two drops of starch solution.", [{ add: "starch solution", drops: 2 }]],
    ["Add excess aqueous ammonia.", [{ add: "NH3(aq)", until: "in excess" }]],
    ["Add aqueous ammonia until no further change is seen.", [{ add: "NH3(aq)", until: "in excess" }]],
    ["Add 1 cm3 of 2.0 mol/dm3 sodium hydroxide.", [{ add: "NaOH(aq)", volume: "1 cm3", at: "2.0 mol/dm3" }]],
    ["Add 1 cm3 of 0.5 mol dm⁻³ ammonia.", [{ add: "NH3(aq)", volume: "1 cm3", at: "0.5 mol/dm3" }]],
    [
      "Add 1 cm3 of dilute nitric acid followed by 1 cm3 of aqueous silver nitrate.",
      [
        { add: "HNO3(aq)", volume: "1 cm3" },
        { add: "AgNO3(aq)", volume: "1 cm3" },
      ],
    ],
    [
      "Add 3 cm3 of aqueous sodium hydroxide, then a piece of aluminium foil and warm carefully.",
      [{ add: "NaOH(aq)", volume: "3 cm3" }, { add: "Al(s)", pieces: 1 }, { warm: true }],
    ],
    ["Test any gas given off with damp red litmus paper.", [{ testGas: "damp red litmus" }]],
    ["Hold a piece of damp blue litmus paper at the mouth of the test-tube.", [{ testGas: "damp blue litmus" }]],
    ["Insert a glowing splint into the mouth of the tube.", [{ testGas: "glowing splint" }]],
    ["Test the gas with a lighted splint.", [{ testGas: "lighted splint" }]],
    ["Test the gas with limewater.", [{ testGas: "limewater" }]],
    ["Bubble the gas through limewater.", [{ leadThrough: "limewater" }]],
    ["Pass the gas through limewater until in excess.", [{ leadThrough: "limewater", until: "in excess" }]],
    ["Boil the mixture for 2 minutes.", [{ boil: "2 min" }]],
    ["Boil gently for 30 seconds and allow to cool.", [{ boil: "30 s" }, { cool: true }]],
    ["Leave the mixture to stand for five minutes.", [{ stand: "5 min" }]],
    ["Filter the mixture, keeping the residue.", [{ filter: "residue" }]],
    ["Filter the mixture and keep the filtrate.", [{ filter: "filtrate" }]],
    ["Filter and wash the residue with distilled water.", [{ filter: "residue" }, { wash: true }]],
    ["Carry out a flame test on solid P.", [{ flame: true }]],
    ["Test the solution with universal indicator paper.", [{ indicator: "universal indicator" }]],
    ["Test the mixture with litmus paper.", [{ indicator: "litmus" }]],
    ["Place 0.2 g of solid T in a hard-glass tube and heat it gently.", [{ take: "0.2 g" }, { heat: "gently" }]],
    ["Dissolve 0.1 g of solid S in 5 cm3 of distilled water.", [{ take: "0.1 g" }, { add: "H2O(l)", volume: "5 cm3" }]],
    ["Add 5 drops of sodium sulphite and shake the tube.", [{ add: "Na2SO3(aq)", drops: 5 }, { shake: true }]],
    ["Add 5 drops of K4[Fe(CN)6].", [{ add: "K4[Fe(CN)6](aq)", drops: 5 }]],
    ["Add 5 drops of BaCl2(aq).", [{ add: "BaCl2(aq)", drops: 5 }]],
    ["Add 1 cm3 of aqueous ammonium chloride.", [{ add: "NH4Cl(aq)", volume: "1 cm3" }]],
  ])("%s", (sentence, steps) => {
    expect(stepsOf(sentence)).toEqual([steps]);
    expect(questionsOf(sentence)).toEqual([]);
  });
});

describe("what is taken for granted is said", () => {
  test.each([
    ["Add a few drops of aqueous silver nitrate.", { add: "AgNO3(aq)", drops: 5 }, "a few drops: 5 are taken"],
    [
      "To a 1 cm depth of solution K add 2 drops of NaOH.",
      { take: "1 cm3" },
      "a depth of 1 cm in a test-tube is about 1 cm3",
    ],
    ["Boil the mixture.", { boil: "1 min" }, "no time is given: boiled for 1 min"],
    ["Acidify with dilute nitric acid.", { add: "HNO3(aq)", volume: "1 cm3" }, "to acidify: 1 cm3 of the acid"],
    ["Put a spatula measure of solid W into a tube.", { take: "0.3 g" }, "a spatula measure: 0.3 g"],
    ["To a portion of solution K add 2 drops of NaOH.", { take: "1 cm3" }, "no volume is given: 1 cm3 is taken"],
  ])("%s", (sentence, first, assumed) => {
    const [one] = testsOf(sentence);
    expect(one.steps[0]).toEqual(first);
    expect(one.stretches.flatMap((stretch) => stretch.assumed)).toContain(assumed);
  });

  test("an equal volume is the sample's", () => {
    const [one] = testsOf("To 2 cm3 of solution K add an equal volume of dilute sulfuric acid.");
    expect(one.steps).toEqual([{ take: "2 cm3" }, { add: "H2SO4(aq)", volume: "2 cm3" }]);
  });
});

describe("what is not understood is asked", () => {
  test.each([
    ["Add aqueous barium nitrate.", "How much aqueous barium nitrate: some drops, a volume, or in excess?"],
    ["Add an alkali.", "Which alkali?"],
    ["Add some acid.", "Which acid?"],
    ["Add copper turnings.", 'Which reagent is meant by "copper turnings"? There is none of that name on this bench.'],
    ["Add concentrated sulfuric acid.", "Only dilute acids are on this bench. Is the dilute one meant?"],
    ["Test any gas evolved.", "With what is the gas tested?"],
    ["Test the gas with damp litmus paper.", "Which litmus: red or blue?"],
    ["Filter the mixture.", "Which is kept: the filtrate or the residue?"],
    ["Allow to stand.", "How long does it stand?"],
    ["Sing to the tube.", 'Not understood: "Sing to the tube". What is done here?'],
    [
      "Repeat (a) with aqueous ammonia.",
      "A repetition is not read: enter the steps of the test it repeats, with what is changed.",
    ],
    ["Then in excess.", "In excess of what? No reagent stands before it."],
  ])("%s", (sentence, question) => {
    expect(questionsOf(sentence)).toContain(question);
  });

  test("every word of the paper comes back in some stretch", () => {
    const says = "To 1 cm3 of solution K add 5 drops of NaOH. Sing a song. Record your observations.";
    expect(testsOf(says).flatMap(({ stretches }) => stretches.map(({ words }) => words))).toEqual([
      "To 1 cm3 of solution K",
      "add 5 drops of NaOH",
      "Sing a song",
      "Record your observations",
    ]);
  });
});

describe("sentences become lines of the record", () => {
  test.each([
    "Add a few drops of aqueous sodium hydroxide to the solution. Keep adding until there is no further change.",
    "Add 5 drops of aqueous sodium hydroxide, then continue to add sodium hydroxide until it is in excess.",
    "Add 5 drops of aqueous sodium hydroxide. Carry on adding it until no more reaction is seen.",
  ])("going on is an excess of the same reagent: %s", (sentences) => {
    expect(questionsOf(sentences)).toEqual([]);
    expect(stepsOf(sentences).flat()).toEqual([
      { add: "NaOH(aq)", drops: 5 },
      { add: "NaOH(aq)", until: "in excess" },
    ]);
  });
  test("drop by drop and then in excess are two", () => {
    const says =
      "To 1 cm3 of solution K add aqueous sodium hydroxide drop by drop, then in excess. Warm gently and test any gas with damp red litmus paper.";
    expect(stepsOf(says)).toEqual([
      [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }],
      [{ add: "NaOH(aq)", until: "in excess" }],
      [{ warm: true }, { testGas: "damp red litmus" }],
    ]);
    expect(readInstruction(says).parts.map(({ samples }) => samples)).toEqual([["K"]]);
  });

  test("acid that makes ready, silver nitrate, then ammonia", () => {
    const says =
      "Put 1 cm3 of each of the solutions F, G and H into separate test-tubes. Add 5 drops of dilute nitric acid. Add 5 drops of aqueous silver nitrate. Then add aqueous ammonia slowly until in excess.";
    expect(stepsOf(says)).toEqual([
      [{ take: "1 cm3" }, { add: "HNO3(aq)", drops: 5 }, { add: "AgNO3(aq)", drops: 5 }],
      [{ add: "NH3(aq)", drops: 5 }],
      [{ add: "NH3(aq)", until: "in excess" }],
    ]);
    expect(readInstruction(says).parts[0].samples).toEqual(["F", "G", "H"]);
  });

  test("a gas tested in two ways", () => {
    expect(stepsOf("Test the gas with a glowing splint and then with damp blue litmus paper.")).toEqual([
      [{ testGas: "glowing splint" }],
      [{ testGas: "damp blue litmus" }],
    ]);
  });

  test("the paper's own marks", () => {
    const says = `(a) (i) To 1 cm3 of solution L add 5 drops of NaOH.
      (ii) Add 1 cm3 of dilute nitric acid.
      (iii) Add 1 cm3 of aqueous barium nitrate.
      (b) To 1 cm3 of solution L add 1 cm3 of aqueous potassium iodide.`;
    expect(readInstruction(says).parts.map(({ tests }) => tests.map(({ steps }) => steps.length))).toEqual([
      [2, 1, 1],
      [2],
    ]);
  });

  test.each<[string, number[][], string[]]>([
    ["(b) Warm the mixture from (a).", [[2, 1]], []],
    ["(b) Filter the mixture and keep the residue.", [[2, 1]], []],
    ["(b) To the resulting solution add 5 drops of NaOH.", [[2, 1]], []],
    ["(b) Fill the tube.", [[2], [0]], ['Not understood: "Fill the tube". What is done here?']],
    ["(b) Mix 1 cm3 of solution L with 1 cm3 of NaOH and warm the mixture.", [[2], [4]], []],
    [
      "(b) To 1 cm3 of solution L add 5 drops of KI.\n(c) Boil the mixture from part (a).",
      [[2], [2, 1]],
      ["This goes on with the tube of (a), which is not the last one: enter its steps there."],
    ],
  ])("after (a), %s", (says, steps, questions) => {
    const all = `(a) To 1 cm3 of solution L add 5 drops of NaOH.\n${says}`;
    expect(readInstruction(all).parts.map(({ tests }) => tests.map((one) => one.steps.length))).toEqual(steps);
    expect(questionsOf(all).filter((question) => !HOW_MUCH.test(question))).toEqual(questions);
  });

  test("a fresh portion begins a part", () => {
    const says = "To 1 cm3 of solution L add 5 drops of NaOH. To another 1 cm3 of solution L add 5 drops of NH3(aq).";
    expect(readInstruction(says).parts).toHaveLength(2);
  });

  test("the filtrate that is used later is the one that is kept", () => {
    const says = "Filter the mixture. To the filtrate add 1 cm3 of dilute nitric acid.";
    expect(stepsOf(says).flat()[0]).toEqual({ filter: "filtrate" });
    expect(questionsOf(says)).toEqual([]);
  });
});

describe("the reagents of the bench", () => {
  test.each(usableReagents.filter((id) => !/\(s\)|^starch|^H2O\(l\)|^acidified/.test(id)))(
    "%s by its formula",
    (id) => {
      expect(stepsOf(`Add 5 drops of ${id}.`)).toEqual([[{ add: id, drops: 5 }]]);
    },
  );
});

const HOW_MUCH = /^How much /;

describe("a clause that warms or mixes keeps its sample and its reagents", () => {
  test.each<[string, string[], object[], RegExp[]]>([
    [
      "Warm 2 cm3 of solution B with aqueous sodium hydroxide.",
      ["B"],
      [{ take: "2 cm3" }, NAOH({}), { warm: true }],
      [HOW_MUCH],
    ],
    ["Boil with aluminium foil.", [], [{ add: "Al(s)", pieces: 1 }, { boil: "1 min" }], []],
    [
      "Shake solid C with 5 cm3 of water.",
      ["C"],
      [{ take: "0.3 g" }, { add: "H2O(l)", volume: "5 cm3" }, { shake: true }],
      [],
    ],
    [
      "Heat a spatula measure of solid B with dilute hydrochloric acid.",
      ["B"],
      [{ take: "0.3 g" }, { add: "HCl(aq)" }, { warm: true }],
      [HOW_MUCH],
    ],
    ["Heat in a water bath.", [], [{ warm: true }], []],
    ["Heat in a beaker of boiling water.", [], [{ warm: true }], []],
    ["Heat solid B strongly.", ["B"], [{ take: "0.3 g" }, { heat: "strongly" }], []],
    ["Mix well.", [], [{ shake: true }], []],
    [
      "Mix 1 cm3 of solution B with 2 cm3 of aqueous sodium hydroxide.",
      ["B"],
      [{ take: "1 cm3" }, NAOH({ volume: "2 cm3" }), { shake: true }],
      [],
    ],
    ["Treat 1 cm3 of solution B with 5 drops of NaOH.", ["B"], [{ take: "1 cm3" }, NAOH({ drops: 5 })], []],
    [
      "Acidify 2 cm3 of solution B with dilute nitric acid.",
      ["B"],
      [{ take: "2 cm3" }, { add: "HNO3(aq)", volume: "1 cm3" }],
      [],
    ],
    ["Boil the aqueous ammonia.", [], [{ boil: "1 min" }], [/^Is aqueous ammonia added here/]],
    ["Warm gently without bringing it to the boil.", [], [{ warm: true }], []],
  ])("%s", (sentence, samples, steps, questions) => {
    expect(stepsOf(sentence).flat()).toEqual(steps);
    expect(readInstruction(sentence).parts.flatMap((part) => part.samples)).toEqual(samples);
    expect(questionsOf(sentence)).toEqual(questions.map((one) => expect.stringMatching(one)));
  });
});

describe("a name inside another one is not poured", () => {
  test.each([
    ["Add 1 cm3 of bromine water.", "bromine water"],
    ["Add 1 cm3 of baryta water.", "baryta water"],
    ["Add 1 cm3 of NaOH and 1 cm3 of ethanol.", "ethanol"],
    ["Add 1 cm3 of alkaline potassium manganate(VII).", "alkaline potassium manganate(vii)"],
    ["Add 5 drops of 30 % hydrogen peroxide.", "30 % hydrogen peroxide"],
    ["Add 5 drops of hydrogen peroxide (30 %).", "30 % hydrogen peroxide"],
    ["Add 1 cm3 of zinc nitrate.", "zinc nitrate"],
    ["Add ethanol and 1 cm3 of NaOH.", "ethanol"],
    ["Add zinc powder.", "zinc powder"],
    ["Add powdered zinc.", "powdered zinc"],
    ["Add aluminium turnings.", "aluminium turnings"],
    ["Add Devarda's alloy.", "Devarda's alloy"],
  ])("%s", (sentence, name) => {
    expect(questionsOf(sentence)).toEqual([
      `Which reagent is meant by "${name}"? There is none of that name on this bench.`,
    ]);
    expect(
      stepsOf(sentence)
        .flat()
        .some(({ add }) => add === ""),
    ).toBe(true);
  });

  test.each([
    ["Add 5 drops of 10 volume hydrogen peroxide.", { add: "H2O2(aq)", drops: 5 }],
    ["Add 1 cm3 of chlorine water.", { add: "Cl2(aq)", volume: "1 cm3" }],
    [
      "Carefully add about 1 cm3 of freshly prepared dilute aqueous sodium hydroxide, a little at a time.",
      NAOH({ volume: "1 cm3" }),
    ],
    ["Add, with constant stirring, 1 cm3 of NaOH and then more slowly.", NAOH({ volume: "1 cm3" })],
  ])("but words of making up and adding are no names: %s", (sentence, step) => {
    expect(stepsOf(sentence)).toEqual([[step]]);
    expect(questionsOf(sentence)).toEqual([]);
  });
});

describe("amounts, letters and what must not be done", () => {
  test.each<[string, string[], object[]]>([
    [
      "Add ammonia to 1 cm3 of solution B until in excess.",
      ["B"],
      [{ take: "1 cm3" }, { add: "NH3(aq)", until: "in excess" }],
    ],
    ["Add ammonia to 1 cm3 of solution B drop by drop.", ["B"], [{ take: "1 cm3" }, { add: "NH3(aq)", drops: 5 }]],
    ["Add 1 to 2 cm3 of NaOH to 1 cm3 of solution B.", ["B"], [{ take: "1 cm3" }, NAOH({ volume: "2 cm3" })]],
    [
      "Add 5 drops of dilute nitric acid to solid A in a boiling tube.",
      ["A"],
      [{ take: "0.3 g" }, { add: "HNO3(aq)", drops: 5 }],
    ],
    ["To 1 cm3 of the filtrate add 5 drops of NaOH.", [], [NAOH({ drops: 5 })]],
    ["Add 2 cm3 of HCl to 1 cm3 of P.", ["P"], [{ take: "1 cm3" }, { add: "HCl(aq)", volume: "2 cm3" }]],
    ["Add 5 drops of NaOH to P.", ["P"], [{ take: "1 cm3" }, NAOH({ drops: 5 })]],
    [
      "Add 5 drops of NaOH to P. Add 5 drops of KI to another 1 cm3 of P.",
      ["P", "P"],
      [{ take: "1 cm3" }, NAOH({ drops: 5 }), { take: "1 cm3" }, { add: "KI(aq)", drops: 5 }],
    ],
    ["Warm the mixture to 60 °C.", [], [{ warm: true }]],
    ["Add two zinc granules.", [], [{ add: "Zn(s)", pieces: 2 }]],
    ["Boil for half a minute.", [], [{ boil: "30 s" }]],
    ["Boil for one and a half minutes.", [], [{ boil: "90 s" }]],
    ["Do not add excess ammonia.", [], []],
    ["Never boil the mixture.", [], []],
    ["Add 5 drops of NaOH but not an excess.", [], [NAOH({ drops: 5 })]],
  ])("%s", (sentence, samples, steps) => {
    expect(stepsOf(sentence).flat()).toEqual(steps);
    expect(readInstruction(sentence).parts.flatMap((part) => part.samples)).toEqual(samples);
    expect(questionsOf(sentence)).toEqual([]);
  });
});
