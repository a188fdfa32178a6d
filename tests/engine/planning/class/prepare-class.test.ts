/** Whole sheets of small invented practicals, each figure worked by hand beside it. */
import { describe, expect, test } from "vitest";
import type { Waste } from "../../../../src/engine/constants/reagents.ts";
import { salts as store } from "../../../../src/engine/constants/salts.ts";
import { createSolver } from "../../../../src/engine/equilibrium/solve.ts";
import { bottled, madeUp, wasteBottles } from "../../../../src/engine/planning/class/bottles.ts";
import { prepareClass } from "../../../../src/engine/planning/class/prepare-class.ts";
import { COLLECTED } from "../../../../src/engine/planning/emptied.ts";
import { planBench } from "../../../../src/engine/planning/plan-bench.ts";
import { isAnswer, workedExample } from "../../../verification/worked/example.ts";
import { CHOICE, planned, tableOf } from "../small-procedure.ts";

const solve = createSolver();

interface Paper {
  salts: Record<string, string>;
  molPerDm3?: number;
  given?: "solid" | "solution" | "both";
  steps: unknown[];
  cations?: string[];
}

/** The sheet of a one-part paper on these samples: letter to salt. */
function prepare({ salts, steps, ...how }: Paper, size: Parameters<typeof prepareClass>[2]) {
  const parts = [{ label: "a", title: "only part", tests: [{ steps }] }];
  const procedure = planned(parts, { ...how, letters: Object.keys(salts) });
  for (const sample of procedure.samples) sample.salt = salts[sample.label];
  return prepareClass(procedure, planBench(procedure, tableOf(procedure), CHOICE), size, solve);
}
const drops = (reagent: string, n: number, at?: string) => ({ add: reagent, drops: n, ...(at && { at }) });
const cm3 = (reagent: string, volume: number, at?: string) => ({
  add: reagent,
  volume: `${volume} cm3`,
  ...(at && { at }),
});
const TAKE = { take: "1 cm3" };

type Sheet = ReturnType<typeof prepare>;
const supply = (sheet: Sheet, label: string) => {
  const found = sheet.supplies.find((one) => one.label.startsWith(label));
  if (!found) throw new Error(`no ${label} among ${sheet.supplies.map((one) => one.label).join(", ")}`);
  return found;
};
/** Amount of the usual choice of each ingredient. */
const amounts = (sheet: Sheet, label: string) => supply(sheet, label).ingredients.map(([{ amount }]) => amount);

describe("worked examples through a whole sheet (tests/reference/worked-examples.json)", () => {
  test("W76: a class of 24, six silver tests of 5 drops each, 30 % spare: 24 x 6 x 0.25 x 1.3 = 46.8 cm3", () => {
    const salts = Object.fromEntries([..."PQRSTU"].map((letter) => [letter, "NaNO3"]));
    const sheet = prepare({ salts, steps: [TAKE, drops("AgNO3(aq)", 5)] }, { groups: 24, sparePercent: 30 });
    expect(isAnswer(workedExample("W76"), supply(sheet, "aqueous silver nitrate").wanted)).toBe(true);
  });

  // Each class is chosen so that just the example's volume is made up: groups x cm3 a group x (1 + spare).
  test("W57: silver nitrate for 250 cm3 of 0.050 mol/dm3", () => {
    const paper = { salts: { P: "NaNO3" }, steps: [TAKE, cm3("AgNO3(aq)", 10)] };
    const sheet = prepare(paper, { groups: 20, sparePercent: 20 }); // 20 x 10 x 1.2 = 240, bottles of 12: 240, made up to 250
    expect(supply(sheet, "aqueous silver nitrate").make).toBe(250);
    expect(isAnswer(workedExample("W57"), amounts(sheet, "aqueous silver nitrate")[0])).toBe(true);
    expect(sheet.store[0]).toMatchObject({
      what: "silver nitrate",
      unit: "g",
      scarce: expect.stringContaining("recover"),
    });
    expect(isAnswer(workedExample("W57"), sheet.store[0].amount)).toBe(true);
  });

  test("W58: copper(II) sulfate pentahydrate for 500 cm3 of 0.20 mol/dm3, as a sample", () => {
    const paper = { salts: { P: "CuSO4" }, molPerDm3: 0.2, steps: [TAKE] };
    const sheet = prepare(paper, { groups: 20, sparePercent: 25, sampleCm3: 20 }); // 20 x 20 x 1.25 = 500
    expect(supply(sheet, "P").make).toBe(500);
    expect(isAnswer(workedExample("W58"), amounts(sheet, "P")[0])).toBe(true);
  });

  test("W60, W71: lead(II) nitrate and ammonium iron(II) sulfate for 250 cm3 of 0.10 mol/dm3", () => {
    const paper = { salts: { P: "Pb(NO3)2", Q: "(NH4)2Fe(SO4)2*6H2O" }, steps: [TAKE] };
    const sheet = prepare(paper, { groups: 10, sparePercent: 25, sampleCm3: 20 }); // 10 x 20 x 1.25 = 250
    expect(isAnswer(workedExample("W60"), amounts(sheet, "P")[0])).toBe(true);
    expect(isAnswer(workedExample("W71"), amounts(sheet, "Q")[0])).toBe(true);
  });

  test("W62, W63: 880 and 25 % ammonia for 2 dm3 of 1 and 1 dm3 of 2 mol/dm3", () => {
    const of = (strength: string, volume: number) =>
      prepare(
        { salts: { P: "NaNO3" }, steps: [TAKE, cm3("NH3(aq)", volume, strength)] },
        { groups: 10, sparePercent: 0 },
      );
    const [[strong]] = supply(of("1 mol/dm3", 200), "aqueous ammonia").ingredients; // 10 x 200 = 2000
    expect(isAnswer(workedExample("W62"), strong.amount)).toBe(true);
    const [[, weaker]] = supply(of("2 mol/dm3", 100), "aqueous ammonia").ingredients; // 10 x 100 = 1000
    expect(isAnswer(workedExample("W63"), weaker.amount)).toBe(true);
  });

  test("W69: potassium manganate(VII) for 500 cm3 of 0.020 mol/dm3", () => {
    const paper = { salts: { P: "NaNO3" }, steps: [TAKE, cm3("KMnO4(aq)", 50)] };
    const sheet = prepare(paper, { groups: 10, sparePercent: 0 }); // 10 x 50 = 500
    expect(isAnswer(workedExample("W69"), amounts(sheet, "aqueous potassium manganate")[0])).toBe(true);
  });
});

describe("a class of 12 with 30 % spare, three samples", () => {
  const sheet = prepare(
    {
      salts: { P: "ZnSO4*7H2O", Q: "NaCl", R: "Ba(NO3)2" },
      steps: [TAKE, cm3("HNO3(aq)", 1), drops("AgNO3(aq)", 5)],
      cations: ["Zn^2+", "Pb^2+", "Ba^2+"],
    },
    { groups: 12, sparePercent: 30 },
  );

  test("samples: 1 cm3 used, 1.5 set out by the plan, 12 x 1.5 x 1.3 = 23.4 wanted; bottles of 2 take 24; 50 is the least made up", () => {
    expect(supply(sheet, "P")).toMatchObject({ used: 1, wanted: 23.4, make: 50 });
    expect(supply(sheet, "P").bottles).toEqual({ size: "10 cm3 dropper bottle", each: 1, count: 12, fillCm3: 2 });
    expect(amounts(sheet, "P")[0]).toBeCloseTo(1.438, 3); // 0.1 x 0.05 x 287.54
    expect(amounts(sheet, "Q")[0]).toBeCloseTo(0.292, 3); // 0.1 x 0.05 x 58.44
  });

  test("acid: 3 x 1 x 12 x 1.3 = 46.8 wanted, bottles of 4 (from 3.9) take 48, made up to 50: 50 x 64 / 1000 = 3.2 cm3", () => {
    expect(supply(sheet, "dilute nitric acid")).toMatchObject({ used: 3, wanted: 46.8, make: 50 });
    expect(supply(sheet, "dilute nitric acid").bottles?.fillCm3).toBe(4);
    expect(amounts(sheet, "dilute nitric acid")[0]).toBeCloseTo(3.2, 6);
  });

  test("labels: a sample's letter and nothing else, a reagent with its strength; the salt's name on no label", () => {
    expect(sheet.supplies.map(({ label }) => label)).toEqual([
      "P",
      "Q",
      "R",
      "dilute nitric acid, 1 mol/dm3",
      "aqueous silver nitrate, 0.05 mol/dm3",
      // For the barium that each sample may hold, in the waste bottle.
      "aqueous magnesium sulfate, 0.5 mol/dm3",
    ]);
    expect(supply(sheet, "P").content).toBe("zinc sulfate heptahydrate, 0.1 mol/dm3");
  });

  test("the store: silver first, with its grams: 0.05 x 0.05 x 169.87 = 0.425", () => {
    expect(sheet.store.map(({ what }) => what)).toEqual([
      "silver nitrate",
      "zinc sulfate heptahydrate",
      "sodium chloride",
      "barium nitrate",
      "concentrated nitric acid (70 %, 1.42 g/cm3)",
      "magnesium sulfate heptahydrate",
    ]);
    expect(sheet.store[0].amount).toBeCloseTo(0.4247, 4);
  });

  // The sulfate for 3 cm3 of 0.1 mol/dm3 barium: 0.3 mmol, half as much again, of 0.5 mol/dm3: 0.9 cm3.
  test("waste: 3 tubes of 2.25 cm3 and 0.9 cm3 of sulfate, 12 groups, rinsed once: (6.75 x 2 + 0.9) x 12 = 172.8 cm3, in one bottle of 250 filled to 187.5", () => {
    expect(sheet.waste).toHaveLength(1);
    expect(sheet.waste[0]).toMatchObject({ into: "lead waste bottle", classCm3: 172.8, sizeCm3: 250, count: 1 });
    expect(sheet.waste[0].truly).toBe(
      "In truth no lead gets there: the paper offers it, so the bottle stands there all the same. It does hold silver and barium.",
    );
  });

  test("hazards stand for every bottle, with first aid, and nothing remembered goes without a word", () => {
    expect(sheet.hazards.map(({ label }) => label)).toEqual(sheet.supplies.map(({ label }) => label));
    for (const { firstAid } of sheet.hazards) expect(firstAid).toMatch(/^(Eyes|Swallowed)/);
    for (const { dissolved, confirm } of sheet.hazards) {
      if (dissolved.some(({ hazard }) => hazard?.remembered !== false)) expect(confirm).toBe(true);
    }
    // Barium is a poison whatever the strength (SAMPLE_CAUTIONS, from memory of CLEAPSS sheet 42).
    expect(sheet.hazards.find(({ label }) => label === "R")?.firstAid).toMatch(/^Swallowed.*medical help at once/);
  });

  test("all of it can be made up", () => {
    expect(sheet.faults).toEqual([]);
    expect(sheet.warnings).toEqual([]);
  });
});

describe("other forms", () => {
  test("a solid: 0.3 g used, 0.5 set out (from 0.45), 8 groups and 50 % spare: 8 x 0.5 x 1.5 = 6 g weighed out", () => {
    const sheet = prepare(
      { salts: { P: "CaCO3" }, given: "solid", steps: [{ take: "0.3 g" }, cm3("HCl(aq)", 2)] },
      { groups: 8, sparePercent: 50 },
    );
    expect(supply(sheet, "P")).toMatchObject({ of: "solid", used: 0.3, wanted: 6, make: 6, tubesG: 0.5 });
    expect(supply(sheet, "P").bottles).toBeUndefined();
    expect(amounts(sheet, "P")).toEqual([6]);
  });

  test("iron(II) and sulfite are made the same day, iron(III) kept clear (common practice; school sheet on iron)", () => {
    const sheet = prepare(
      { salts: { P: "FeSO4", Q: "Na2SO3", R: "FeCl3" }, steps: [TAKE] },
      { groups: 1, sparePercent: 0 },
    );
    expect(supply(sheet, "P").notes[0].text).toContain("the same day in boiled and cooled water");
    expect(supply(sheet, "Q").notes[0].text).toContain("the same day");
    expect(supply(sheet, "R").notes[0].text).toContain("dilute acid with the same anion");
    for (const { notes } of sheet.supplies) for (const { source } of notes) expect(source).not.toBe("");
  });

  test("limewater: 2 cm3 for a gas led in and 1 for one drawn up are one bottle of 3, and the paper's own strength is told", () => {
    const steps = [TAKE, { leadThrough: "limewater", at: "0.01 mol/dm3" }, { testGas: "limewater" }];
    const sheet = prepare({ salts: { P: "Na2CO3" }, steps }, { groups: 3, sparePercent: 0 });
    expect(supply(sheet, "limewater")).toMatchObject({ label: "limewater", used: 3, wanted: 9 });
    expect(supply(sheet, "limewater").notes.map(({ text }) => text)).toEqual(
      expect.arrayContaining([expect.stringContaining("(0.01 mol/dm3)")]),
    );
  });

  test("limewater is emptied too: 3 cm3 in the tube and 1 cm3 beside it, 5 groups, rinsed once: 5 x 4 x 2 = 40", () => {
    const steps = [TAKE, cm3("HCl(aq)", 2), { testGas: "limewater" }];
    const sheet = prepare({ salts: { P: "Na2CO3" }, steps, cations: ["Na+"] }, { groups: 5, sparePercent: 0 });
    expect(sheet.waste).toHaveLength(1);
    expect(sheet.waste[0]).toMatchObject({ into: "waste beaker", cm3: 4, classCm3: 40, collected: false });
  });

  // 0.3 cm3 of 0.5 mol/dm3 sulfate stands ready for the barium of 1 cm3 of 0.1 mol/dm3: half as much again.
  test("the class's waste follows what the store collects of each salt: 1 cm3 a tube, 5 groups, rinsed once: 10", () => {
    const collected = store.filter(({ waste }) => COLLECTED.includes(waste as Waste));
    expect(collected.length).toBeGreaterThan(10);
    for (const { formula, cations, anions, waste } of collected) {
      const row = (salt: string) => {
        const procedure = planned([{ label: "a", title: "only part", tests: [{ steps: [TAKE] }] }], { letters: ["P"] });
        procedure.samples[0].salt = salt;
        const paper = { ...procedure.paper, cations: [...cations], anions: [...anions] };
        const plan = planBench({ ...procedure, paper }, tableOf(procedure), CHOICE);
        return prepareClass(procedure, plan, { groups: 5, sparePercent: 0 }, solve).waste;
      };
      const standing = cations.includes("Ba^2+") ? 0.3 : 0;
      const expected = {
        into: `${waste} waste bottle`,
        collected: true,
        cm3: 1 + standing,
        classCm3: 10 + 5 * standing,
      };
      expect(row(formula), formula).toMatchObject([expected]);
      expect(row(formula)[0].truly, formula).toBeUndefined();
      // What the paper offers is collected all the same, and the technician is told that it is not there.
      expect(row("NaCl"), formula).toMatchObject([{ ...expected, truly: expect.stringContaining(`no ${waste} gets`) }]);
    }
  });

  test("concentrated acid for a rod stays with the teacher, and is no bottle of the class", () => {
    const sheet = prepare(
      { salts: { P: "NH4Cl" }, steps: [TAKE, { testGas: "rod with hydrochloric acid" }] },
      { groups: 4, sparePercent: 0 },
    );
    expect(sheet.withTeacher).toEqual([expect.stringContaining("concentrated hydrochloric acid")]);
    expect(sheet.supplies).toHaveLength(1);
  });

  test("aluminium foil is counted in pieces and weighed as one: 2 x 1.5 = 3 a group, 5 groups, 0.1 g each: 1.5 g", () => {
    const sheet = prepare(
      { salts: { P: "NaNO3" }, steps: [TAKE, cm3("NaOH(aq)", 1), { add: "Al(s)", pieces: 2 }] },
      { groups: 5, sparePercent: 0 },
    );
    expect(sheet.counted.find(({ what }) => what.includes("aluminium"))).toMatchObject({
      perGroup: 3,
      count: 15,
      g: 1.5,
    });
  });

  test("goggles go by heads, droppers come with the bottles", () => {
    const sheet = prepare({ salts: { P: "NaNO3" }, steps: [TAKE] }, { groups: 5, sparePercent: 0 });
    expect(sheet.counted.map(({ what }) => what)).toEqual(expect.arrayContaining(["test-tube rack"]));
    expect(sheet.counted.filter(({ what }) => /goggles|dropper|waste bottle/.test(what))).toEqual([]);
  });
});

test("a reagent weaker than usual: the limits at its own strength, and the words said to be for the usual one (0.4 mol/dm3 is 1.6 %, W81)", () => {
  const paper = { salts: { P: "NaCl" }, steps: [TAKE, cm3("NaOH(aq)", 1, "0.4 mol/dm3")] };
  const { hazards } = prepare(paper, { groups: 1, sparePercent: 0 });
  const alkali = hazards.find(({ label }) => label === "aqueous sodium hydroxide, 0.4 mol/dm3");
  expect(alkali).toMatchObject({ wordsFor: 1, wordsAreStricter: false });
  expect(alkali?.dissolved[0].hazard?.severity).toBe("irritant");
});

test("words stricter than the limits say so: 0.05 mol/dm3 silver nitrate is 0.85 %, treated as irritating from 1 %", () => {
  const paper = { salts: { P: "NaCl" }, steps: [TAKE, cm3("AgNO3(aq)", 1), cm3("H2O(l)", 1)] };
  const { hazards } = prepare(paper, { groups: 1, sparePercent: 0 });
  expect(hazards.map(({ label }) => label)).toEqual(["P", "aqueous silver nitrate, 0.05 mol/dm3"]);
  expect(hazards[1].wordsAreStricter).toBe(true);
});

describe("what cannot be", () => {
  // Solubility of lead(II) chloride 0.036 to 0.039 mol/dm3 (CRC Handbook, from memory), of barium nitrate about 0.34 mol/dm3 (trade figure).
  test("a sample that does not dissolve to its strength is told with the engine's figure", () => {
    const { faults } = prepare({ salts: { P: "PbCl2", Q: "NaCl" }, steps: [TAKE] }, { groups: 1, sparePercent: 0 });
    expect(faults).toEqual([
      expect.stringMatching(/^Sample P: lead\(II\) chloride does not dissolve to 0.1 mol\/dm3: \d+ g\/dm3 stays solid/),
    ]);
  });

  test("so is a reagent asked for too strong", () => {
    const paper = { salts: { P: "NaCl" }, steps: [TAKE, cm3("Ba(NO3)2(aq)", 1, "0.6 mol/dm3")] };
    const { faults } = prepare(paper, { groups: 1, sparePercent: 0 });
    expect(faults).toEqual([
      expect.stringMatching(/^Reagent aqueous barium nitrate: barium nitrate does not dissolve to 0.6 mol/),
    ]);
  });

  test("too little of a sample is told", () => {
    const { warnings } = prepare(
      { salts: { P: "NaCl" }, steps: [{ take: "4 cm3" }] },
      { groups: 1, sparePercent: 0, sampleCm3: 3 },
    );
    expect(warnings).toEqual(["The tests use 4 cm3 of P, and each group gets only 3 cm3."]);
  });

  test("a class of nobody is refused", () => {
    expect(() => prepare({ salts: { P: "NaCl" }, steps: [TAKE] }, { groups: 0, sparePercent: 30 })).toThrow(RangeError);
  });
});

describe("rounding", () => {
  test.each([
    [3, 50],
    [46.8, 50],
    [50.1, 60],
    [100, 100],
    [101, 125],
    [203, 225],
    [260, 300],
    [1010, 1100],
  ])("%s cm3 wanted, %s made up", (wanted, make) => {
    expect(madeUp(wanted)).toBe(make);
  });

  test.each([
    [3.2, { size: "10 cm3 dropper bottle", each: 1, count: 6, fillCm3: 4 }],
    // Four fifths of 10, of 25 and of 250 cm3: none is brim-full (common practice, no source).
    [8, { size: "10 cm3 dropper bottle", each: 1, count: 6, fillCm3: 8 }],
    [10, { size: "25 cm3 dropper bottle", each: 1, count: 6, fillCm3: 10 }],
    [21, { size: "60 cm3 bottle with a dropper", each: 1, count: 6, fillCm3: 21 }],
    [10.5, { size: "25 cm3 dropper bottle", each: 1, count: 6, fillCm3: 11 }],
    [600, { size: "250 cm3 bottle with a dropper", each: 3, count: 18, fillCm3: 200 }],
  ])("%s cm3 for each of six groups", (given, expected) => {
    expect(bottled(given, 6)).toEqual(expected);
  });

  test.each([
    [0, 250, 1],
    [187.5, 250, 1], // three quarters of 250
    [188, 500, 1],
    [5000, 2500, 3], // 1875 in each
  ])("%s cm3 of waste", (cm3, sizeCm3, count) => {
    expect(wasteBottles(cm3)).toEqual({ sizeCm3, count });
  });
});

describe("what stands in a waste bottle before the first tube", () => {
  const paper = { salts: { P: "NaCl" }, steps: [TAKE, drops("AgNO3(aq)", 5), cm3("NH3(aq)", 2)] };
  const GROUPS = 10;
  const sheet = prepare(paper, { groups: GROUPS, sparePercent: 0 });
  const [silver] = sheet.waste.filter(({ into }) => into.startsWith("silver"));
  const acid = supply(sheet, "dilute nitric acid");

  // 2 cm3 of 2 mol/dm3 ammonia hold 4 mmol, which 4 cm3 of 1 mol/dm3 acid neutralise.
  test("acid for ammonia beside silver is told for the whole class, and is enough", () => {
    expect(silver.first.map(({ name }) => name)).toEqual(["dilute nitric acid"]);
    expect(silver.first[0].cm3).toBeGreaterThanOrEqual(4 * GROUPS);
  });
  test("it is made up, but not filled into the bottles of the groups, which use none", () => {
    expect(acid.make).toBeGreaterThanOrEqual(silver.first[0].cm3);
    expect(acid.apart).toBe(acid.used);
    expect(acid.bottles).toBeUndefined();
    expect(supply(sheet, "aqueous ammonia").bottles?.count).toBe(GROUPS);
  });
  test("a bottle that needs none has none", () => {
    const lead = prepare(
      { salts: { P: "KI" }, steps: [TAKE, drops("Pb(NO3)2(aq)", 5)] },
      { groups: 2, sparePercent: 0 },
    );
    expect(lead.waste.flatMap(({ first }) => first)).toEqual([]);
  });
});
