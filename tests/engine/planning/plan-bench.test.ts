import { describe, expect, test } from "vitest";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { GAS_EVIDENCE } from "../../../src/engine/practical.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

const THREE_PARTS = [
  {
    label: "a",
    title: "sodium hydroxide",
    tests: [
      { steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }, { shake: true }] },
      { steps: [{ add: "NaOH(aq)", until: "in excess" }, { shake: true }] },
      { steps: [{ warm: true }, { testGas: "damp red litmus" }] },
    ],
  },
  {
    label: "b",
    title: "nitric acid, then barium nitrate",
    tests: [
      { steps: [{ take: "1 cm3" }, { add: "HNO3(aq)", volume: "1 cm3" }] },
      { steps: [{ add: "Ba(NO3)2(aq)", volume: "0.5 cm3" }] },
    ],
  },
  {
    label: "c",
    title: "nitric acid, then silver nitrate",
    tests: [{ steps: [{ take: "1 cm3" }, { add: "HNO3(aq)", volume: "1 cm3" }, { add: "AgNO3(aq)", drops: 5 }] }],
  },
];

/**
 * Every figure below was worked out by hand from the procedure, from 0.05 cm3 a drop, 4 cm3 for an excess and half as much again for
 * spare. Depths start from the geometry table in tests/reference/tube-depths.json; above the hemisphere each further cm3 adds
 * 10 / (pi x 0.70^2) = 6.50 mm in a 14.0 mm bore and 10 / (pi x 1.13^2) = 2.49 mm in a 22.6 mm bore.
 */
describe("two samples, three parts", () => {
  const gas = (formula: "NH3" | "CO2") => ({ formula, evidence: GAS_EVIDENCE[formula] });
  const procedure = planned(THREE_PARTS);
  const table = tableOf(procedure, {
    "a(iii)": [gas("NH3"), ["NH4Cl", "(NH4)2SO4"]],
    "b(i)": [gas("CO2"), ["Na2CO3"]],
    c: [gas("CO2"), ["Na2CO3"]],
  });
  const plan = planBench(procedure, table, CHOICE);

  test("one tube for each part and sample, a boiling tube where it is warmed", () => {
    expect(plan.tubes.map(({ label, size }) => [label, size.id])).toEqual([
      ["P a", "boiling-tube-150x25"],
      ["Q a", "boiling-tube-150x25"],
      ["P b", "test-tube-125x16"],
      ["Q b", "test-tube-125x16"],
      ["P c", "test-tube-125x16"],
      ["Q c", "test-tube-125x16"],
    ]);
  });

  test.each([
    [
      "P a",
      [
        ["1 cm3 of P", 1, 5.8], // table
        ["5 drops of aqueous sodium hydroxide", 1.25, 6.6], // 1 + 5 x 0.05; pi x 6.61^2 x (33.9 - 6.61) / 3 = 1250 mm3
        ["aqueous sodium hydroxide in excess, at most", 5.25, 16.8], // 1.25 + 4; 16.2 for 5 cm3 + 0.25 x 2.49
      ],
    ],
    [
      "Q b",
      [
        ["1 cm3 of Q", 1, 8.8], // table
        ["1 cm3 of dilute nitric acid", 2, 15.3], // table
        ["0.5 cm3 of aqueous barium nitrate", 2.5, 18.5], // 15.3 + 0.5 x 6.50 = 18.55
      ],
    ],
    [
      "P c",
      [
        ["1 cm3 of P", 1, 8.8], // table
        ["1 cm3 of dilute nitric acid", 2, 15.3], // table
        ["5 drops of aqueous silver nitrate", 2.25, 16.9], // 15.3 + 0.25 x 6.50 = 16.92
      ],
    ],
  ] as [string, [string, number, number][]][])("fill marks of %s", (label, expected) => {
    const marks = plan.tubes.find((tube) => tube.label === label)?.marks ?? [];
    expect(marks.map(({ what, cm3 }) => [what, cm3])).toEqual(expected.map(([what, cm3]) => [what, cm3]));
    for (const [index, [, , mm]] of expected.entries()) {
      // 0.1 mm: the depths written above start from figures rounded to 0.1 mm.
      expect(Math.abs(marks[index].depthMm - mm)).toBeLessThanOrEqual(0.1);
    }
  });

  test("the warmed tubes stay below a tenth of the boiling tube: 5.25 cm3 against 5.8 cm3 (table)", () => {
    expect(plan.tubes.map((tube) => tube.heatingLimitCm3?.toFixed(1))).toEqual([
      "5.8",
      "5.8",
      ...Array(4).fill(undefined),
    ]);
    expect(plan.warnings).toEqual([]);
  });

  test("reagents used and set out", () => {
    expect(
      plan.reagents.map(({ id, concentration, neededCm3, setOutCm3 }) => [id, concentration, neededCm3, setOutCm3]),
    ).toEqual([
      ["NaOH(aq)", "1 mol/dm3", 8.5, 13], // 2 x (0.25 + 4); x 1.5 = 12.75
      ["HNO3(aq)", "1 mol/dm3", 4, 6], // 2 samples x 2 parts x 1; x 1.5 = 6
      ["Ba(NO3)2(aq)", "0.1 mol/dm3", 1, 2], // 2 x 0.5; x 1.5 = 1.5, at least 2
      ["AgNO3(aq)", "0.05 mol/dm3", 0.5, 2], // 2 x 0.25; x 1.5 = 0.75, at least 2
    ]);
  });

  test("samples used and set out, a third kept back", () => {
    // Three parts of 1 cm3 are two thirds of 4.5 cm3.
    const each = {
      needed: "3 cm3 of solution",
      setOut: "4.5 cm3 of solution, 1.5 cm3 of it kept back",
      forms: [{ of: "solution", needed: 3, setOut: 4.5 }],
    };
    expect(plan.samples).toEqual([
      { sample: "P", ...each },
      { sample: "Q", ...each },
    ]);
  });

  test("extras counted", () => {
    const counted = plan.extras.map(({ what, count, because }) => [what, count, because]);
    expect(counted).toContainEqual(["red litmus paper", 2, "damp red litmus: asked for in a(iii)"]); // 1 test x 2 samples
    expect(counted).toContainEqual([
      "small tube with limewater and a clean dropper",
      4, // 2 tests x 2 samples, though no step asks for it
      "limewater: in case b(i) or c gives carbon dioxide; no step asks for it",
    ]);
    expect(counted).toContainEqual(["clean dropper", 6, "one dropper for each bottle of solution"]); // 2 samples + 4 reagents
    expect(counted).toContainEqual(["burner with heat mat and lighter", 1, "heating in part a"]);
    expect(counted).toContainEqual(["test-tube holder", 1, "heating in part a"]);
    expect(plan.extras.map(({ what }) => what)).toEqual(
      expect.arrayContaining(["pair of goggles", "waste beaker", "label pen and paper labels"]),
    );
    const limewater = plan.extras.find(({ what }) => what.includes("limewater"));
    expect(limewater?.prepare).toContain("1 cm3 of limewater in each, 4 cm3 in all");
    expect(plan.extras.find(({ what }) => what === "red litmus paper")?.prepare).toContain("deionised water");
  });

  test("limewater stands with what is set out: 4 x 1 cm3 (RSC: not more in the second tube), half as much again", () => {
    expect(plan.besides.map(({ what, neededCm3, setOutCm3 }) => [what, neededCm3, setOutCm3])).toEqual([
      ["limewater, in case", 4, 6],
      // Two tubes with 0.5 cm3 of 0.1 mol/dm3: 0.1 mmol, half as much again, of 0.5 mol/dm3; never below 2 cm3 set out.
      ["aqueous magnesium sulfate, put into the barium waste bottle before the first tube", 0.3, 2],
    ]);
  });

  test("an excess is known by its reagent and its most: 4 cm3 for 1 cm3 of sample", () => {
    const marks = plan.tubes.find(({ label }) => label === "P a")?.marks ?? [];
    expect(marks.map(({ excess }) => excess)).toEqual([undefined, undefined, { reagent: "NaOH(aq)", cm3: 4 }]);
  });

  test("no splints among the checks when no test asks for one", () => {
    expect(plan.checks.find((check) => check.includes("within reach"))).toBe(
      "Papers and limewater for the gases within reach, papers not yet damp.",
    );
  });

  test("gases with the salts they come from", () => {
    expect(plan.gases).toEqual([
      { cell: "a(iii)", gas: "NH3", from: ["NH4Cl", "(NH4)2SO4"], have: "damp red litmus paper" },
      { cell: "b(i)", gas: "CO2", from: ["Na2CO3"], have: "limewater" },
      { cell: "c", gas: "CO2", from: ["Na2CO3"], have: "limewater" },
    ]);
  });

  test("cautions: eyes before fizzing, the teacher last, each once", () => {
    const at = (part: string) => plan.cautions.findIndex((text) => text.includes(part));
    expect(at("Aqueous sodium hydroxide: burns skin")).toBeGreaterThanOrEqual(0);
    expect(at("Ammonia hurts eyes")).toBeGreaterThanOrEqual(0);
    expect(at("Aqueous sodium hydroxide: burns skin")).toBeLessThan(at("A heated solution can shoot out"));
    expect(at("A heated solution can shoot out")).toBeLessThan(at("Aqueous silver nitrate: irritates eyes"));
    expect(at("Aqueous silver nitrate: irritates eyes")).toBeLessThanOrEqual(at("Fizzing"));
    expect(plan.cautions.at(-1)).toBe("Your teacher and your school's rules come first.");
    expect(new Set(plan.cautions).size).toBe(plan.cautions.length);
    expect(at("lead")).toBe(-1);
  });

  test("checks in the order in which they are done", () => {
    const order = [
      "Read all",
      "Goggles",
      "Tubes clean",
      "Burner and lighter",
      "labelled",
      "Fill marks",
      "within reach",
      "Waste bottles and beaker",
      "kept back",
    ];
    expect(plan.checks).toHaveLength(order.length);
    order.forEach((words, index) => {
      expect(plan.checks[index]).toContain(words);
    });
  });
});
