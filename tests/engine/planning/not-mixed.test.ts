/** What the plan says of mixtures that are not made in class, or that could explode. */
import { describe, expect, test } from "vitest";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

/** Common practice, and CLP (EUH032) for thiocyanates. */
describe("what is not brought together", () => {
  const warnings = (steps: unknown[], anions = ["Cl-"], cations?: string[]) => {
    const parts = [{ label: "a", title: "mix", tests: [{ steps: [{ take: "1 cm3" }, ...steps] }] }];
    const procedure = planned(parts, cations && { cations });
    const allowed = { ...procedure, paper: { ...procedure.paper, anions } };
    return planBench(allowed, tableOf(allowed), CHOICE).warnings;
  };
  const add = (reagent: string) => (reagent.endsWith("(s)") ? { add: reagent, pieces: 1 } : { add: reagent, drops: 5 });
  const boiled = { boil: "1 min" };
  test.each([
    [
      "a hexacyanoferrate boiled with acid",
      [add("K4[Fe(CN)6](aq)"), add("HCl(aq)"), { boil: "1 min" }],
      "hydrogen cyanide",
    ],
    ["the acid first", [add("H2SO4(aq)"), add("K3[Fe(CN)6](aq)"), { warm: true }], "hydrogen cyanide"],
    ["a thiocyanate and acidified peroxide, cold", [add("acidified H2O2(aq)"), add("KSCN(aq)")], "hydrogen cyanide"],
    ["a thiocyanate and acidified dichromate", [add("acidified K2Cr2O7(aq)"), add("KSCN(aq)")], "hydrogen cyanide"],
    [
      "chromate made acid, with a thiocyanate",
      [add("K2CrO4(aq)"), add("HNO3(aq)"), add("KSCN(aq)")],
      "hydrogen cyanide",
    ],
    ["manganate(VII) and hydrochloric acid, cold", [add("KMnO4(aq)"), add("HCl(aq)")], "chlorine"],
    ["poured into a tube that is still hot", [{ warm: true }, add("HCl(aq)"), add("KSCN(aq)")], "hydrogen cyanide"],
    ["chlorine water and ammonia", [add("Cl2(aq)"), add("NH3(aq)")], "chloramines"],
    // From memory (school safety notes, textbooks): nitrogen triiodide; silver nitride from silver in ammonia, on heating or in time.
    ["iodine and ammonia", [add("I2(aq)"), add("NH3(aq)")], "nitrogen triiodide"],
    ["iodine and the ammonium a sample may hold, in alkali", [add("I2(aq)"), add("NaOH(aq)")], "nitrogen triiodide"],
    ["silver in ammonia, boiled", [add("AgNO3(aq)"), add("NH3(aq)"), { boil: "1 min" }], "explodes"],
    ["silver in ammonia, left", [add("AgNO3(aq)"), add("NH3(aq)"), { stand: "30 min" }], "explodes"],
  ])("%s", (_, steps, gas) => {
    expect(warnings(steps)).toHaveLength(1);
    expect(warnings(steps)[0]).toMatch(new RegExp(`^Part a: it brings together .*${gas}.* Ask your teacher`));
  });
  // As above, from memory; hydrogen sulfide: Vogel's test for sulfite with zinc and acid.
  test.each<[what: string, cation: string, anion: string, steps: unknown[], danger: string]>([
    ["iodide, acidified peroxide, ammonia", "Na+", "I-", [add("acidified H2O2(aq)"), add("NH3(aq)")], "triiodide"],
    ["the iodide from the bottle", "Na+", "Cl-", [add("KI(aq)"), add("KMnO4(aq)"), add("NH3(aq)")], "triiodide"],
    ["copper(II), iodide, ammonia", "Cu^2+", "Cl-", [add("KI(aq)"), add("NH3(aq)")], "triiodide"],
    ["iron(III), iodide, ammonia", "Fe^3+", "Cl-", [add("KI(aq)"), add("NH3(aq)")], "triiodide"],
    ["nitrite, iodide, acid, ammonia", "Na+", "NO2-", [add("KI(aq)"), add("HCl(aq)"), add("NH3(aq)")], "triiodide"],
    ["iodide, dichromate, ammonia", "Na+", "I-", [add("acidified K2Cr2O7(aq)"), add("NH3(aq)")], "triiodide"],
    ["an ammonium salt", "NH4+", "I-", [add("acidified H2O2(aq)"), add("NaOH(aq)")], "triiodide"],
    ["zinc and acid on a sulfite", "Na+", "SO3^2-", [add("HCl(aq)"), add("Zn(s)")], "hydrogen sulfide"],
    ["zinc and acid on a thiosulfate", "Na+", "S2O3^2-", [add("Zn(s)"), add("H2SO4(aq)")], "hydrogen sulfide"],
    ["silver nitrate on an ammonium salt", "NH4+", "NO3-", [add("AgNO3(aq)"), add("NaOH(aq)"), boiled], "explodes"],
    ["ammonium on a silver salt", "Ag+", "NO3-", [add("NH4Cl(aq)"), add("NaOH(aq)"), boiled], "explodes"],
    ["thiocyanate, a nitrite and acid", "Na+", "NO2-", [add("KSCN(aq)"), add("HNO3(aq)")], "hydrogen cyanide"],
  ])("%s: on %s, %s", (_, cation, anion, steps, danger) => {
    expect(warnings(steps, [anion], [cation])).toHaveLength(1);
    expect(warnings(steps, [anion], [cation])[0]).toContain(danger);
  });
  test("no sample is made of what only another sample holds", () => {
    const ions = [
      ["I-", "Cl-", "NO2-", "CrO4^2-"],
      ["Cu^2+", "Fe^3+", "Ag+", "NH4+"],
    ] as const;
    const of = (...steps: unknown[]) => warnings(steps, [...ions[0]], [...ions[1]]);
    expect(of(add("NH3(aq)"))).toEqual([]);
    expect(of(add("HNO3(aq)"), add("AgNO3(aq)"), add("NH3(aq)"))).toEqual([]);
    expect(of(add("KI(aq)"))).toEqual([]);
    expect(of(add("acidified KMnO4(aq)"))).toEqual([]);
    expect(of(add("NaOH(aq)"), boiled)).toEqual([]);
    expect(of(add("Zn(s)"), add("HCl(aq)"))).toEqual([]);
  });
  test("chlorine water: with a thiocyanate, and with the ammonium that the samples may hold", () => {
    expect(warnings([add("KSCN(aq)"), add("Cl2(aq)")]).join()).toMatch(/cyanogen chloride.*chloramines/);
  });
  test("a sample that may be a thiocyanate counts, once", () => {
    const hot = [add("HCl(aq)"), { warm: true }, { boil: "1 min" }];
    expect(warnings(hot, ["SCN-", "Cl-"])).toHaveLength(1);
    expect(warnings(hot)).toEqual([]);
  });
  test.each([
    ["a hexacyanoferrate and acid, cold", [add("HCl(aq)"), add("K4[Fe(CN)6](aq)")]],
    ["a hexacyanoferrate, hot, without acid", [add("K4[Fe(CN)6](aq)"), { warm: true }]],
    ["peroxide that is not acid", [add("H2O2(aq)"), add("KSCN(aq)")]],
    ["heated, and cooled before the acid comes", [{ warm: true }, { cool: true }, add("HCl(aq)"), add("KSCN(aq)")]],
    ["iodine and alkali, where no ammonium may be", [add("I2(aq)"), add("NaOH(aq)")], ["Na+"]],
    ["silver in ammonia, cold", [add("AgNO3(aq)"), add("NH3(aq)")]],
    ["manganate(VII) with sulfuric acid, hot", [add("acidified KMnO4(aq)"), add("H2SO4(aq)"), { warm: true }]],
  ])("%s goes without a word", (_, steps, cations?: string[]) => {
    expect(warnings(steps, ["Cl-"], cations)).toEqual([]);
  });
});

describe("what could explode", () => {
  test("silver in ammonia is cautioned where they meet, not where they stand in different tubes", () => {
    const silver = { add: "AgNO3(aq)", drops: 5 };
    const ammonia = { add: "NH3(aq)", drops: 5 };
    const parts = (...tubes: unknown[][]) =>
      planned(
        tubes.map((steps, index) => ({
          label: "ab"[index],
          title: "part",
          tests: [{ steps: [{ take: "1 cm3" }, ...steps] }],
        })),
      );
    const cautioned = (procedure: ReturnType<typeof planned>) =>
      planBench(procedure, tableOf(procedure), CHOICE).cautions.some((text) =>
        text.startsWith("A mixture of silver and ammonia"),
      );
    expect(cautioned(parts([silver, ammonia]))).toBe(true);
    expect(cautioned(parts([silver], [ammonia]))).toBe(false);
  });
});
