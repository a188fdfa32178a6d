/**
 * What a school bench has and does, each once: ions, bottles, operations. What is seen is that of school tables and textbooks, from memory;
 * amounts, limits and exceptions stand in the tests of each room.
 */
import { describe, expect, test } from "vitest";
import { usableReagents } from "../../../src/engine/bench/operations.ts";
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { INDICATORS } from "../../../src/engine/constants/indicators.ts";
import { ANIONS, CATIONS, ION_LISTS } from "../../../src/engine/constants/ions.ts";
import { type Observation, procedure } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { cm3, drops, excess, saltWith, solve, take, test as tryGas, warm } from "./show.ts";

test("nineteen cations and thirteen anions, and two lists of them", () => {
  const cations =
    "NH4+ Li+ Na+ K+ Mg^2+ Ca^2+ Sr^2+ Ba^2+ Al^3+ Cr^3+ Mn^2+ Fe^2+ Fe^3+ Co^2+ Ni^2+ Cu^2+ Zn^2+ Ag+ Pb^2+";
  const anions = "CO3^2- HCO3- Cl- Br- I- NO3- NO2- SO4^2- SO3^2- S2O3^2- CrO4^2- OH- O^2-";
  expect([...CATIONS].sort()).toEqual(cations.split(" ").sort());
  expect([...ANIONS].sort()).toEqual(anions.split(" ").sort());
  for (const { cations, anions } of Object.values(ION_LISTS)) {
    expect(CATIONS).toEqual(expect.arrayContaining([...cations]));
    expect(ANIONS).toEqual(expect.arrayContaining([...anions]));
  }
});

test("the bottles", () => {
  const bottles = [
    ...[
      "NaOH(aq)",
      "NH3(aq)",
      "HCl(aq)",
      "HNO3(aq)",
      "H2SO4(aq)",
      "AgNO3(aq)",
      "BaCl2(aq)",
      "Ba(NO3)2(aq)",
      "Pb(NO3)2(aq)",
    ],
    ...[
      "KI(aq)",
      "K2CrO4(aq)",
      "acidified KMnO4(aq)",
      "acidified K2Cr2O7(aq)",
      "H2O2(aq)",
      "KSCN(aq)",
      "K4[Fe(CN)6](aq)",
    ],
    ...["K3[Fe(CN)6](aq)", "Na2CO3(aq)", "FeSO4(aq)", "Cl2(aq)", "starch solution", "Ca(OH)2(aq)", "Al(s)", "Zn(s)"],
  ];
  expect(usableReagents).toEqual(expect.arrayContaining(bottles));
  expect(Object.keys(INDICATORS)).toEqual(expect.arrayContaining(["litmus", "universal indicator"]));
});

/** What the last of the tests shows, the likeliest reading in words. */
function last(ions: Record<string, number>, tests: unknown[][], solid?: string): string {
  const parts = procedure.parse([{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }]);
  const shown = [...predictSalt({ ions, molPerDm3: 0.1, ...(solid && { solid }) }, parts, solve).values()].at(-1);
  return phrase(shown?.readings[0] as Observation, solid ? "solid" : "precipitate");
}

const alkali = cm3("NaOH(aq)");
const foil = { add: "Al(s)", pieces: 1 };
const carbonate = saltOf("Na+", "CO3^2-").ions;

describe("the operations", () => {
  test.each<[what: string, ions: Record<string, number>, tests: unknown[][], seen: RegExp]>([
    ["drops", saltWith("Zn^2+"), [[take, drops("NaOH(aq)")]], /^white precipitate$/],
    ["excess", saltWith("Zn^2+"), [[take, drops("NaOH(aq)")], [excess("NaOH(aq)")]], /dissolves, giving a colourless/],
    ["shake", saltWith("Zn^2+"), [[take, drops("NaOH(aq)")], [{ shake: true }]], /remains|no visible change/],
    ["stand in air: iron(II)", saltWith("Fe^2+"), [[take, alkali], [{ stand: "5 min" }]], /brown/],
    ["stand in air: manganese(II)", saltWith("Mn^2+"), [[take, alkali], [{ stand: "5 min" }]], /brown/],
    ["warm", saltWith("NH4+"), [[take, alkali, warm, tryGas("damp red litmus")]], /red litmus turns blue/],
    ["boil", saltWith("Cu^2+"), [[take, alkali], [{ boil: "1 min" }]], /black/],
    ["cool", saltWith("Pb^2+"), [[take, cm3("H2O(l)"), drops("HCl(aq)"), warm], [{ cool: true }]], /white precipitate/],
    [
      "filter, then the filtrate",
      saltWith("Cu^2+"),
      [[take, alkali], [{ filter: "filtrate" }], [excess("NH3(aq)")]],
      /no visible change/,
    ],
    [
      "filter, then the residue, washed",
      saltWith("Cu^2+"),
      [[take, alkali], [{ filter: "residue" }, { wash: true }], [cm3("HNO3(aq)", 2)]],
      /dissolves, giving a (pale )?blue/,
    ],
    ["gas through limewater", carbonate, [[take, cm3("HCl(aq)"), { leadThrough: "limewater" }]], /milky/],
    ["flame", saltWith("K+"), [[{ flame: true }]], /lilac/],
    ["litmus", carbonate, [[take, { indicator: "litmus" }]], /blue/],
    ["universal indicator", carbonate, [[take, { indicator: "universal indicator" }]], /blue|violet|purple/],
    [
      "aluminium foil",
      saltWith("NO3-"),
      [[take, cm3("NaOH(aq)", 2), foil, warm, tryGas("damp red litmus")]],
      /red litmus turns blue/,
    ],
    [
      "zinc",
      saltWith("Cl-"),
      [[take, cm3("H2SO4(aq)", 4), { add: "Zn(s)", pieces: 1 }, tryGas("lighted splint")]],
      /pop/,
    ],
  ])("%s", (_, ions, tests, seen) => {
    expect(last(ions, tests)).toMatch(seen);
  });

  test.each<[what: string, solid: string, ions: Record<string, number>, tests: unknown[][], seen: RegExp]>([
    ["dissolve a solid", "NaCl", saltOf("Na+", "Cl-").ions, [[{ take: "0.2 g" }, cm3("H2O(l)", 4)]], /dissolves/],
    ["heat gently", "CuSO4*5H2O", saltOf("Cu^2+", "SO4^2-").ions, [[{ take: "0.2 g" }, { heat: "gently" }]], /white/],
    [
      "heat strongly, hot and cold",
      "ZnCO3",
      saltOf("Zn^2+", "CO3^2-").ions,
      [[{ take: "0.2 g" }, { heat: "strongly" }]],
      /yellow.*white/,
    ],
    [
      "gas through limewater in excess",
      "Na2CO3",
      carbonate,
      [[{ take: "0.5 g" }, cm3("HCl(aq)", 8), { leadThrough: "limewater", until: "in excess", at: "0.01 mol/dm3" }]],
      /milky, then clear/,
    ],
  ])("%s", (_, solid, ions, tests, seen) => {
    expect(last(ions, tests, solid)).toMatch(seen);
  });
});
