/** Where tubes are emptied, and what stands ready for it. */
import { describe, expect, test } from "vitest";
import { salts as store } from "../../../src/engine/constants/salts.ts";
import { COLLECTED } from "../../../src/engine/planning/emptied.ts";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

/** Common practice, no source: one bottle for a tube, lead before silver before barium; local rules decide. */
describe("waste", () => {
  const silverAndBarium = (cations: string[]) => {
    const part = (label: string, reagent: string) => ({
      label,
      title: "one",
      tests: [{ steps: [{ take: "1 cm3" }, { add: reagent, drops: 5 }] }],
    });
    const procedure = planned([part("a", "AgNO3(aq)"), part("b", "BaCl2(aq)"), part("c", "NaOH(aq)")], {
      letters: ["P"],
      cations,
    });
    return planBench(procedure, tableOf(procedure), CHOICE);
  };
  const rows = (cations: string[]) => silverAndBarium(cations).waste.map(({ tubes, into }) => [tubes, into]);
  const bottles = (cations: string[]) =>
    silverAndBarium(cations)
      .extras.filter(({ what }) => what.endsWith("waste bottle"))
      .map(({ what, because }) => [what, because]);

  test("each tube has its bottle; what needs none goes last, into the sink", () => {
    expect(rows(["Zn^2+"])).toEqual([
      [["P a"], "silver waste bottle"],
      [["P b"], "barium waste bottle"],
      [["P c"], "waste beaker"],
    ]);
    expect(bottles(["Zn^2+"])).toEqual([
      ["silver waste bottle", "aqueous silver nitrate"],
      ["barium waste bottle", "aqueous barium chloride"],
    ]);
  });
  test("what may hold lead goes to the lead, silver too, and the bottle says what else is in it", () => {
    // The stricter order: lead before silver. Silver and ammonia kept together can explode, so all that goes in with silver is acid.
    expect(rows(["Pb^2+", "Zn^2+"])).toEqual([
      [["P a"], "lead waste bottle"],
      [["P b"], "lead waste bottle"],
      [["P c"], "lead waste bottle"],
    ]);
    expect(bottles(["Pb^2+", "Zn^2+"])).toEqual([["lead waste bottle", "what the samples may hold"]]);
    const [silver, barium, alkali] = silverAndBarium(["Pb^2+"]).waste;
    expect(silver.how).toContain("May also hold silver");
    expect(alkali.how).not.toContain("ammonia");
    expect(barium.how).toContain("The sulfate that stands in it is for the barium");
  });
});

/** By the store's own list: what it collects of a salt (a row apart from the ions' cautions) never goes down the sink with a sample of it. */
test("every salt whose waste is collected gets its bottle", () => {
  const collected = store.filter(({ waste }) => (COLLECTED as readonly string[]).includes(waste));
  expect(collected.length).toBeGreaterThanOrEqual(10);
  for (const { formula, cations, anions, waste } of collected) {
    const procedure = planned([
      { label: "a", title: "one", tests: [{ steps: [{ take: "1 cm3" }, { add: "H2O(l)", volume: "1 cm3" }] }] },
    ]);
    const paper = { ...procedure.paper, cations: [...cations], anions: [...anions] };
    const rows = planBench({ ...procedure, paper }, tableOf(procedure), CHOICE).waste;
    expect(
      rows.map(({ tubes, into }) => [tubes, into]),
      formula,
    ).toEqual([[["P a", "Q a"], `${waste} waste bottle`]]);
  }
});

/** Common practice, no source: what has touched chromium(VI) is collected, limewater is washed away, other papers are no sink waste. */
test("limewater tubes and used papers are emptied too, a chromium paper into its own bottle", () => {
  const steps = ["limewater", "damp blue litmus", "acidified dichromate(VI) paper"].map((testGas) => ({ testGas }));
  const procedure = planned([{ label: "a", title: "acid", tests: [{ steps: [{ take: "1 cm3" }, ...steps] }] }], {
    letters: ["P"],
    cations: ["Zn^2+"],
  });
  const { waste, extras } = planBench(procedure, tableOf(procedure), CHOICE);
  expect(waste.slice(1).map(({ tubes, into }) => [tubes, into])).toEqual([
    [["limewater tubes"], "waste beaker"],
    [["used papers"], "solid waste"],
    [["used dichromate(VI) papers"], "chromium(VI) waste bottle"],
  ]);
  expect(extras.filter(({ what }) => what === "chromium(VI) waste bottle")).toHaveLength(1);
  expect(extras.filter(({ what }) => what === "tweezers")).toHaveLength(1);
});

/** Volumes by hand: half as much again as neutralises or precipitates (common practice, no source), 20 drops to 1 cm3. */
describe("what a treatment needs stands ready", () => {
  const plan = (cations: string[], ...tubes: unknown[][]) => {
    const procedure = planned(
      tubes.map((steps, n) => ({ label: "abc"[n], title: "one", tests: [{ steps: [{ take: "1 cm3" }, ...steps] }] })),
      { letters: ["P"], cations },
    );
    return planBench(procedure, tableOf(procedure), CHOICE);
  };
  const cm3 = (add: string, volume: number) => ({ add, volume: `${volume} cm3` });
  const standing = ({ besides }: ReturnType<typeof plan>) =>
    besides.flatMap(({ id, into, neededCm3 }) => (into ? [[id, into, neededCm3]] : []));

  // 4 cm3 of ammonia of 2 mol/dm3 less 1 cm3 of acid of 1 mol/dm3: 7 mmol, so 7 cm3 of that acid, and half as much again.
  test("acid for silver in ammonia, in the bottle and not in a tube that has no room for it", () => {
    const halide = plan(["Na+"], [cm3("HNO3(aq)", 1), cm3("AgNO3(aq)", 1), cm3("NH3(aq)", 4)]);
    expect(standing(halide)).toEqual([["HNO3(aq)", "silver waste bottle", 10.5]]);
    expect(halide.extras.find(({ what }) => what === "silver waste bottle")?.prepare).toBe(
      "Before the first tube, put in 10.5 cm3 of dilute nitric acid.",
    );
    expect(halide.waste[0].how).toContain("pour it into the acid that stands there as soon as");
  });
  test("acid for the ammonia of another tube that goes into the bottle of the silver; none for what is acid already", () => {
    const apart = plan(["Pb^2+"], [cm3("AgNO3(aq)", 1)], [cm3("NH3(aq)", 2)], [cm3("NH3(aq)", 1), cm3("HNO3(aq)", 3)]);
    expect(standing(apart)).toEqual([["HNO3(aq)", "lead waste bottle", 6]]);
    expect(apart.waste.filter(({ how }) => how.includes("holds ammonia")).map(({ tubes }) => tubes)).toEqual([["P b"]]);
    expect(standing(plan(["Zn^2+"], [cm3("AgNO3(aq)", 1)], [cm3("NH3(aq)", 2)]))).toEqual([]);
  });
  // 1 cm3 of 0.1 mol/dm3 barium chloride: 0.1 mmol, so 0.2 cm3 of 0.5 mol/dm3 sulfate; a sample that may hold barium brings as much.
  test("sulfate for barium, of a reagent and of a sample", () => {
    const reagent = [cm3("BaCl2(aq)", 1)];
    expect(standing(plan(["Zn^2+"], reagent))).toEqual([["MgSO4(aq)", "barium waste bottle", 0.3]]);
    expect(standing(plan(["Ba^2+"], reagent))).toEqual([["MgSO4(aq)", "barium waste bottle", 0.6]]);
    expect(standing(plan(["Pb^2+"], reagent))).toEqual([["MgSO4(aq)", "lead waste bottle", 0.3]]);
  });
  test("thiosulfate for iodine, and a word on what may explode where ammonia meets it", () => {
    const iodine = plan(["Na+"], [cm3("I2(aq)", 1)]);
    expect(iodine.besides).toMatchObject([{ id: "Na2S2O3(aq)", neededCm3: 2 }]);
    expect(iodine.waste[0]).toMatchObject({ into: "sink, tube by tube", first: ["sodium thiosulfate"] });
    expect(iodine.waste[0].how).not.toContain("explodes");
    const both = plan(["Na+"], [cm3("I2(aq)", 1), cm3("NH3(aq)", 1)]);
    expect(both.waste[0].how).toMatch(/explodes once it is dry: keep it wet.*with your teacher/);
  });
  test("thiosulfate that was added is remembered: acid sets sulfur dioxide free from it", () => {
    const shared = plan(["Pb^2+"], [cm3("Cl2(aq)", 2)], [cm3("HCl(aq)", 5)]);
    expect(shared.waste.find(({ tubes }) => tubes.includes("P a"))?.how).toContain("acid sets sulfur dioxide free");
  });
});
