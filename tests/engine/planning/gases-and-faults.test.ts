import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { GAS_SAFETY } from "../../../src/engine/constants/gas-safety.ts";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { GAS_EVIDENCE, GAS_TESTS, GASES, type Gas } from "../../../src/engine/practical.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

const ACID = [
  {
    label: "a",
    title: "acid",
    tests: [{ steps: [{ take: "1 cm3" }, { add: "HCl(aq)", volume: "1 cm3" }, { testGas: "limewater" }] }],
  },
];
const seen = (formula: Gas) => ({ formula, evidence: GAS_EVIDENCE[formula] });

describe("gases", () => {
  test("a gas that its step already tests is counted once, another gas of the same test gets its own paper", () => {
    const procedure = planned(ACID, { letters: ["P", "Q", "R"] });
    const carbonate = planBench(procedure, tableOf(procedure, { a: [seen("CO2"), ["Na2CO3"]] }), CHOICE);
    expect(carbonate.extras.find(({ what }) => what.includes("limewater"))?.count).toBe(3); // 1 test x 3 samples
    const sulfite = planBench(procedure, tableOf(procedure, { a: [seen("SO2"), ["Na2CO3"]] }), CHOICE);
    expect(sulfite.extras.find(({ what }) => what === "strip of filter paper")).toMatchObject({
      count: 3,
      because: "acidified manganate(VII) paper: in case a gives sulfur dioxide; no step asks for it",
    });
    expect(sulfite.besides.map(({ what, neededCm3, setOutCm3 }) => [what, neededCm3, setOutCm3])).toEqual([
      ["limewater", 3, 4.5], // 3 tubes x 1 cm3 (RSC); half as much again
      ["acidified potassium manganate(VII), for paper, in case", 0.15, 2], // 3 drops; never below 2
    ]);
    expect(sulfite.cautions.some((text) => text.includes("asthma"))).toBe(true);
  });

  test("a gas that the eye shows has a white card, and no paper", () => {
    const procedure = planned(ACID);
    const brown = planBench(procedure, tableOf(procedure, { a: [seen("NO2"), ["Na2CO3"]] }), CHOICE);
    expect(brown.extras.find(({ what }) => what === "white card")).toMatchObject({
      count: 1,
      because: "in case a gives a coloured gas",
    });
    const none = planBench(procedure, tableOf(procedure, { a: [seen("CO2"), ["Na2CO3"]] }), CHOICE);
    expect(none.extras.some(({ what }) => what === "white card")).toBe(false);
  });

  test("a delivery tube: 2 cm3 of limewater for each sample, and the caution only where something is heated", () => {
    const lead = { leadThrough: "limewater" };
    const acid = [{ take: "1 cm3" }, { add: "HCl(aq)", volume: "1 cm3" }];
    const of = (steps: unknown[]) => {
      const procedure = planned([{ label: "a", title: "acid", tests: [{ steps }] }], { letters: ["P", "Q", "R"] });
      return planBench(procedure, tableOf(procedure, { a: [seen("CO2"), ["Na2CO3"]] }), CHOICE);
    };
    const cold = of([...acid, lead]);
    expect(cold.extras.find(({ what }) => what.includes("delivery tube"))).toMatchObject({
      count: 3,
      because: "delivery tube into limewater: asked for in a",
    });
    expect(cold.besides).toEqual([
      {
        id: "Ca(OH)2(aq)",
        what: "limewater, to lead a gas through",
        neededCm3: 6,
        setOutCm3: 9,
        because: "asked for in a",
      },
    ]);
    expect(of([...acid, { ...lead, at: "0.01 mol/dm3" }]).besides[0].because).toBe("asked for in a (0.01 mol/dm3)");
    expect(cold.checks.join()).toContain("Limewater and delivery tubes for the gases");
    expect(cold.cautions.join()).not.toContain("sucked back");
    expect(of([...acid, { warm: true }, lead]).cautions.join()).toContain("sucked back");
  });

  test("another way of showing the gas counts as well: dichromate(VI) paper for sulfur dioxide, with its own caution", () => {
    const steps = [
      { take: "1 cm3" },
      { add: "HCl(aq)", volume: "1 cm3" },
      { testGas: "acidified dichromate(VI) paper" },
    ];
    const procedure = planned([{ label: "a", title: "acid", tests: [{ steps }] }], { letters: ["P"] });
    const plan = planBench(procedure, tableOf(procedure, { a: [seen("SO2"), ["Na2CO3"]] }), CHOICE);
    expect(plan.extras.filter(({ what }) => what.startsWith("strip of filter paper"))).toHaveLength(1);
    expect(plan.cautions.join()).toMatch(/dichromate\(VI\) paper: can cause cancer/);
  });

  test("indicator paper: one for each sample of each test that asks for it, and a rod", () => {
    const steps = [{ take: "1 cm3" }, { indicator: "litmus" }];
    const procedure = planned([{ label: "a", title: "acid or not", tests: [{ steps }] }], { letters: ["P", "Q"] });
    const { extras } = planBench(procedure, tableOf(procedure), CHOICE);
    expect(extras.find(({ what }) => what === "neutral litmus paper")).toMatchObject({
      count: 2,
      because: "asked for in a",
    });
    expect(extras.find(({ what }) => what.includes("glass rod"))?.count).toBe(1);
  });

  test("a long list of salts is cut after six", () => {
    const salts = ["Na", "K", "Li", "Rb", "Cs", "Tl", "Ag", "Cu"].map((metal) => ({
      formula: `${metal}2CO3`,
      cations: [`${metal}+`],
      anions: ["CO3^2-"],
    }));
    const procedure = planned(ACID);
    const table = tableOf(procedure, { a: [seen("CO2"), salts.map(({ formula }) => formula)] }, salts);
    expect(planBench(procedure, table, CHOICE).gases[0].from).toEqual([
      "Na2CO3",
      "K2CO3",
      "Li2CO3",
      "Rb2CO3",
      "Cs2CO3",
      "Tl2CO3",
      "and 2 more",
    ]);
  });

  test.each(GASES)("%s: the safety row and the observation name the same evidence", (gas) => {
    const row = GAS_SAFETY[gas];
    expect(row.hazard.length).toBeGreaterThan(20);
    expect(row.source).not.toBe("");
    // Chlorine: the safety row adds that the paper turns red first.
    const key = GAS_EVIDENCE[gas].split(" ").at(-1) as string;
    expect(row.test).toContain(key);
    if (row.shownBy) expect(GAS_TESTS).toContain(row.shownBy);
  });
});

test("samples that may hold lead are cautioned before anything that only irritates", () => {
  const procedure = planned(ACID, { cations: ["Pb^2+", "Zn^2+"] });
  const { cautions } = planBench(procedure, tableOf(procedure), CHOICE);
  const lead = cautions.findIndex((text) => text.startsWith("A sample may hold lead"));
  const acid = cautions.findIndex((text) => text.startsWith("Dilute hydrochloric acid"));
  expect(lead).toBeGreaterThanOrEqual(0);
  expect(lead).toBeLessThan(acid);
});

/** What no class heats dry or puts into a flame: common practice; CLP for lead, cobalt and nickel dust. */
describe("tests that are unsafe on what a sample may be", () => {
  const part = (label: string, step: object, samples?: string[]) => ({
    label,
    title: "dry",
    ...(samples && { samples }),
    tests: [{ steps: [{ take: "0.3 g" }, step] }],
  });
  const HEAT = { heat: "gently" };
  const FLAME = { flame: true };
  const salt = (formula: string, cation: string, anion: string) => ({ formula, cations: [cation], anions: [anion] });
  const ammonium = salt("NH4NO3", "NH4+", "NO3-");
  const lead = salt("Pb(NO3)2", "Pb^2+", "NO3-");
  const leadChloride = salt("PbCl2", "Pb^2+", "Cl-");
  const cobalt = salt("CoSO4", "Co^2+", "SO4^2-");
  const sodium = salt("NaNO3", "Na+", "NO3-");
  const plan = (parts: object[], salts: ReturnType<typeof salt>[]) => {
    const procedure = planned(parts, { given: "solid" });
    return planBench(procedure, tableOf(procedure, {}, salts), CHOICE);
  };

  test("each part that heats names what its samples may be, and the cautions say why, right after goggles", () => {
    const { warnings, cautions, askFirst } = plan(
      [part("a", HEAT), part("b", HEAT, ["Q"])],
      [ammonium, lead, cobalt, sodium],
    );
    expect(askFirst.map((one) => one.part)).toEqual(["a", "b"]);
    const what = "may be ammonium nitrate or lead(II) nitrate, or hold cobalt(II), which is not heated dry in class.";
    expect(warnings).toEqual([
      `Part a: P and Q ${what} Ask your teacher before you begin it.`,
      `Part b: Q ${what} Ask your teacher before you begin it.`,
    ]);
    expect(cautions[0]).toContain("goggles");
    expect(cautions.slice(1, 4).map((text) => text.slice(0, text.indexOf(".")))).toEqual([
      "A sample may be ammonium nitrate",
      "A sample may be lead(II) nitrate",
      "A sample may hold cobalt(II)",
    ]);
    expect(cautions[1]).toContain("explode");
  });
  test("lead of any salt is not put into a flame, and its chloride may be heated", () => {
    expect(plan([part("a", FLAME)], [leadChloride, sodium]).warnings).toEqual([
      "Part a: P and Q may hold lead(II), which is not put into a flame in class. Ask your teacher before you begin it.",
    ]);
    expect(plan([part("a", HEAT)], [leadChloride, sodium]).warnings).toEqual([]);
  });
  test("a solution is warmed without a word", () => {
    const procedure = planned([{ label: "a", title: "warm", tests: [{ steps: [{ take: "1 cm3" }, { warm: true }] }] }]);
    expect(planBench(procedure, tableOf(procedure, {}, [ammonium, lead]), CHOICE).warnings).toEqual([]);
  });
});

test("a reagent that turns toxic with hot acid stands with the toxic ones, though it is low hazard alone", () => {
  const procedure = planned([
    {
      label: "a",
      title: "iron",
      tests: [{ steps: [{ take: "1 cm3" }, { add: "K4[Fe(CN)6](aq)", drops: 5 }, { add: "AgNO3(aq)", drops: 1 }] }],
    },
  ]);
  const { cautions } = planBench(procedure, tableOf(procedure), CHOICE);
  const at = (start: string) => cautions.findIndex((text) => text.startsWith(start));
  expect(at("Aqueous potassium hexacyanoferrate(II)")).toBeGreaterThanOrEqual(0);
  expect(at("Aqueous potassium hexacyanoferrate(II)")).toBeLessThan(at("Aqueous silver nitrate"));
});

describe("faults", () => {
  const procedure = planned(ACID);
  const table = tableOf(procedure);
  test("a tube size that does not exist", () => {
    expect(() => planBench(procedure, table, { ...CHOICE, boilingTube: "bucket" })).toThrow(
      'bench plan, boilingTube: found the size "bucket", expected one of boiling-tube-150x24, boiling-tube-150x25, boiling-tube-200x25',
    );
  });
  test("a reagent that does not exist", () => {
    const other = planned([
      { label: "a", title: "one", tests: [{ steps: [{ take: "1 cm3" }, { add: "XeF2(aq)", drops: 1 }] }] },
    ]);
    expect(() => planBench(other, tableOf(other), CHOICE)).toThrow(
      'bench plan, reagents: found "XeF2(aq)", expected one of NaOH(aq),',
    );
  });
  test("a table of another procedure", () => {
    const two = planned([...ACID, { ...ACID[0], label: "b" }]);
    expect(() => planBench(two, table, CHOICE)).toThrow(
      "bench plan, table: found predictions for the tests a, expected 2 tests in the parts a, b; predict this procedure again",
    );
  });
});

/** Files a module loads at run time, itself included; bare specifiers as they are. */
function loadedBy(file: string, found = new Set<string>()): Set<string> {
  if (found.has(file)) return found;
  found.add(file);
  const code = readFileSync(file, "utf8");
  for (const [, names, from] of code.matchAll(/^(?:import|export) (?!type )([^;]*?) from "([^"]+)";/gm)) {
    const onlyTypes =
      /^\{[^}]*\}$/.test(names) &&
      names
        .slice(1, -1)
        .split(",")
        .every((name) => !name.trim() || name.trim().startsWith("type "));
    if (onlyTypes) continue;
    if (from.startsWith("#words/")) loadedBy(resolve("src/words/en-GB", from.slice("#words/".length)), found);
    else if (from.startsWith(".")) loadedBy(resolve(dirname(file), from), found);
    else found.add(from);
  }
  return found;
}

describe("weight in a page", () => {
  const planning = resolve(import.meta.dirname, "../../../src/engine/planning");
  test("geometry loads nothing else", () => {
    expect([...loadedBy(`${planning}/geometry.ts`)]).toEqual([`${planning}/geometry.ts`]);
  });
  test("the plan loads no package, so no schema reader", () => {
    const loaded = [...loadedBy(`${planning}/plan-bench.ts`)];
    expect(loaded.some((file) => file.endsWith("constants/reagents.ts"))).toBe(true);
    expect(loaded.filter((file) => !file.startsWith("/") && !file.startsWith("#words/"))).toEqual([]);
  });
});
