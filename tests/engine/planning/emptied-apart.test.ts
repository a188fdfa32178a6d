/** What is poured together when the tubes are emptied. Sources stand on the rows of `NOT_MIXED` and `EMPTIED_APART`. */
import { expect, test } from "vitest";
import { STRAIGHT } from "#words/vessels.ts";
import { unsafeMixtures } from "../../../src/engine/bench/unsafe-mixtures.ts";
import type { BenchPlan } from "../../../src/engine/planning/bench-plan.ts";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import type { Part } from "../../../src/engine/practical.ts";
import { shippedTables } from "../../build/shipped-tables.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

/** The plan of one part for each list of reagents, on sample P. */
function planOf(cations: string[], ...tubes: string[][]) {
  const parts = tubes.map((reagents, index) => ({
    label: "abcdefg"[index],
    title: "one",
    tests: [{ steps: [{ take: "1 cm3" }, ...reagents.map((add) => ({ add, drops: 5 }))] }],
  }));
  const procedure = planned(parts, { letters: ["P"], cations });
  return { parts: procedure.parts, paper: procedure.paper, plan: planBench(procedure, tableOf(procedure), CHOICE) };
}
const rowsOf = ({ plan }: ReturnType<typeof planOf>) => plan.waste.map(({ tubes, into }) => [tubes.join(), into]);

/** Reagents that are gone when a tube reaches the vessel: thiosulfate takes chlorine and iodine first, acid in the bottle the ammonia. */
const GONE = { "sodium thiosulfate": ["Cl2(aq)", "I2(aq)"], "HNO3(aq)": ["NH3(aq)"] };

/** What comes together in each vessel that takes tubes of several parts, by the check that papers are held to; hot too, for bottles stand. */
function mixedIn({ waste, besides }: Pick<BenchPlan, "waste" | "besides">, parts: Part[], ions: string[]) {
  const gone = new Map<string, string[]>();
  for (const { into, first = [] } of waste)
    if (first.includes("sodium thiosulfate"))
      gone.set(into, [...(gone.get(into) ?? []), ...GONE["sodium thiosulfate"]]);
  for (const { into, id } of besides)
    if (into && id === "HNO3(aq)") gone.set(into, [...(gone.get(into) ?? []), ...GONE[id]]);
  const vessels = new Map<string, Set<string>>();
  for (const { tubes, into } of waste.filter((row) => row.into !== STRAIGHT)) {
    const letters = vessels.get(into) ?? new Set();
    for (const label of tubes) letters.add(label.split(" ")[1]);
    vessels.set(into, letters);
  }
  return [...vessels].flatMap(([into, letters]) => {
    const poured = parts.filter(({ label }) => letters.has(label));
    const all = [...poured.flatMap(({ tests }) => tests.flatMap((one) => one.steps)), { do: "warm" as const }];
    const steps = all.filter((step) => step.do !== "add" || !gone.get(into)?.includes(step.reagent));
    if (poured.length < 2) return [];
    return unsafeMixtures([{ ...poured[0], tests: [{ steps }] }], ions).map(({ row }) => `${into}: ${row.what}`);
  });
}

test.each(shippedTables().map((one) => [one.name, one] as const))(
  "%s empties nothing into one vessel that is not mixed in class",
  (_, { practical, table }) => {
    const plan = planBench(practical, table, CHOICE);
    const { parts, paper } = practical;
    expect(plan.waste.length).toBeGreaterThan(0);
    expect(mixedIn(plan, parts, [...paper.cations, ...paper.anions])).toEqual([]);
  },
);

test("thiocyanate, hexacyanoferrates, chlorine and manganate(VII) go down the sink by themselves", () => {
  const of = planOf(["Zn^2+"], ["HCl(aq)"], ["KSCN(aq)"], ["acidified KMnO4(aq)"], ["K3[Fe(CN)6](aq)"], ["Cl2(aq)"]);
  expect(rowsOf(of)).toEqual([
    ["P a", "waste beaker"],
    ["P b,P d", "sink, tube by tube"],
    ["P c", "sink, tube by tube"],
    ["P e", "sink, tube by tube"],
  ]);
  const [, cyanide, , chlorine] = of.plan.waste;
  expect(cyanide.how).toMatch(/^Straight down the sink, one tube at a time.*No acid goes down with it/);
  expect(chlorine.how).toMatch(/^First, in a fume cupboard.*sodium thiosulfate.*Straight down the sink/);
  // 1 cm3 of the sample and 5 drops of 0.05 cm3: as much thiosulfate, set out as any reagent is.
  expect(of.plan.besides).toMatchObject([{ id: "Na2S2O3(aq)", neededCm3: 1.25 }]);
});

test("a tube with acid and a thiocyanate or hexacyanoferrate loses its acid before it meets the sink", () => {
  const of = planOf(
    ["Zn^2+"],
    ["H2SO4(aq)", "K4[Fe(CN)6](aq)"],
    ["K4[Fe(CN)6](aq)"],
    ["H2SO4(aq)", "NaOH(aq)", "NaOH(aq)", "NaOH(aq)", "NaOH(aq)", "KSCN(aq)"],
  );
  // 5 drops of acid of 1 mol/dm3 with two H+ against twenty of alkali of 1 mol/dm3: part c ends alkaline.
  expect(of.plan.waste.map(({ tubes, first }) => [tubes.join(), first])).toEqual([
    ["P a", ["solid sodium carbonate"]],
    ["P b,P c", undefined],
  ]);
  expect(of.plan.waste[0].how).toMatch(
    /^It holds acid itself: first add solid sodium carbonate.*Straight down the sink/,
  );
  // 0.5 mmol of H+ take 0.25 mmol of 106 g/mol, 0.027 g; half as much again is 0.04 g, and a tenth of a gram is the least that is weighed.
  expect(of.plan.extras.find(({ what }) => what.includes("sodium carbonate"))).toMatchObject({
    because: expect.stringContaining("P a before"),
    grams: 0.1,
  });
});

test("where a sulfite may be, no tube waits in a beaker for the acid of another", () => {
  const steps = [{ take: "1 cm3" }, { add: "HCl(aq)", drops: 5 }];
  const procedure = planned([{ label: "a", title: "one", tests: [{ steps }] }], { letters: ["P"] });
  const paper = { ...procedure.paper, anions: ["SO3^2-", "Cl-"] };
  const [row] = planBench({ ...procedure, paper }, tableOf(procedure), CHOICE).waste;
  expect(row.into).toBe("sink, tube by tube");
  expect(row.how).toContain("acid sets sulfur dioxide free");
});

test("a collected kind has two bottles rather than one in which a poison forms", () => {
  const of = planOf(
    ["Pb^2+"],
    ["KSCN(aq)"],
    ["acidified H2O2(aq)"],
    ["NaOH(aq)"],
    ["K4[Fe(CN)6](aq)"],
    ["H2SO4(aq)", "acidified H2O2(aq)", "KSCN(aq)"],
  );
  expect(rowsOf(of)).toEqual([
    ["P b,P c", "lead waste bottle"],
    ["P a,P d", "lead waste bottle for parts a and d"],
    ["P e", "lead waste bottle for part e"],
  ]);
  expect(of.plan.waste[1].how).toContain("A bottle of its own: the other would bring together a thiocyanate and");
  expect(of.plan.extras.filter(({ what }) => what.includes("waste bottle")).map(({ what }) => what)).toEqual([
    "lead waste bottle",
    "lead waste bottle for parts a and d",
    "lead waste bottle for part e",
  ]);
  expect(mixedIn(of.plan, of.parts, [...of.paper.cations, ...of.paper.anions])).toEqual([]);
});

test("chlorine is taken by thiosulfate before it meets ammonium in a bottle", () => {
  const of = planOf(["Pb^2+", "NH4+"], ["NaOH(aq)"], ["Cl2(aq)"]);
  expect(rowsOf(of)).toEqual([
    ["P a", "lead waste bottle"],
    ["P b", "lead waste bottle"],
  ]);
  expect(of.plan.waste[1].how).toMatch(/^First, .*thiosulfate.*Into the bottle marked LEAD/);
});
