/** Indicators: pH of salt solutions against handbooks, the colours that go with them, and what an indicator cannot show. */
import { describe, expect, test } from "vitest";
import { coloursAt } from "../../../src/engine/bench/indicator.ts";
import { COLOURS } from "../../../src/engine/constants/colours.ts";
import { INDICATORS, type Indicator } from "../../../src/engine/constants/indicators.ts";
import { cm3, saltWith, show, take } from "./show.ts";

const tried = (ions: Record<string, number>, indicator: Indicator, ...before: unknown[]) =>
  show(ions, [take, ...before, { indicator }])[0];
const colours = (...of: Parameters<typeof tried>) => tried(...of).readings.map((seen) => seen.indicator);
const pH = (ions: Record<string, number>) =>
  tried(ions, "litmus").events.find(({ kind }) => kind === "indicator")?.pH ?? Number.NaN;

describe("pH of 0.1 mol/dm3 solutions", () => {
  // Textbook formulas with thermodynamic constants at 25 C, from memory (pKa: NH4+ 9.25, HCO3- 10.33, H2CO3 6.35, HSO3- 7.2, Al3+ 5.0,
  // Fe3+ 2.2, Cr3+ 4.0, Zn2+ 9.0): sqrt(c Ka), sqrt(c Kw/Ka), (pK1 + pK2)/2, or the quadratic where much reacts. They leave activities out,
  // which at these ionic strengths (0.1 to 0.6) move log K by up to 0.8 and the pH by half of that: so far, 0.45, it may differ.
  test.each<[string, Record<string, number>, number]>([
    ["ammonium", saltWith("NH4+"), 5.13],
    ["carbonate", saltWith("CO3^2-"), 11.65],
    ["hydrogencarbonate", saltWith("HCO3-"), 8.34],
    ["sulfite", saltWith("SO3^2-"), 10.1],
    ["aluminium", saltWith("Al^3+"), 3.0],
    ["iron(III)", saltWith("Fe^3+"), 1.7],
    ["chromium(III)", saltWith("Cr^3+"), 2.5],
    ["zinc", saltWith("Zn^2+"), 5.0],
    ["chloride", saltWith("Cl-"), 7.0],
    ["hydroxide", saltWith("OH-"), 13.0],
  ])("%s", (_, ions, textbook) => {
    expect(Math.abs(pH(ions) - textbook)).toBeLessThan(0.45);
  });
});

describe("colours", () => {
  // Textbook: salts of a weak base or a small highly charged cation turn litmus red, those of a weak acid blue.
  test.each<[string, string[]]>([
    ["Al^3+", ["red"]],
    ["Fe^3+", ["red"]],
    ["Cr^3+", ["red"]],
    ["Cu^2+", ["red"]],
    ["CO3^2-", ["blue"]],
    ["SO3^2-", ["blue"]],
    ["OH-", ["blue"]],
    ["Na+", ["purple"]],
    ["NO3-", ["purple"]],
  ])("litmus with %s: %j", (ion, seen) => {
    expect(colours(saltWith(ion), "litmus")).toEqual(seen);
  });
  test("near the edge of a band either colour is accepted: ammonium, hydrogencarbonate", () => {
    expect(colours(saltWith("NH4+"), "litmus")).toEqual(["purple", "red"]);
    expect(colours(saltWith("HCO3-"), "litmus")).toEqual(["blue", "purple"]);
  });
  // School charts: strong acid red, weak acid orange to yellow, neutral green, weak alkali blue, strong alkali violet (from memory).
  test("universal indicator from acid to alkali", () => {
    const nothing = saltWith("Cl-");
    expect(colours(nothing, "universal indicator", cm3("HCl(aq)"))).toEqual(["red"]);
    expect(colours(nothing, "universal indicator", cm3("NH4Cl(aq)"))).toContain("yellow");
    expect(colours(nothing, "universal indicator", cm3("NaOH(aq)"))).toEqual(["violet"]);
    expect(colours(saltWith("SO3^2-"), "universal indicator")).toEqual(["blue"]);
  });
  test("a neutral solution may have drawn its acid from the air: green or yellow", () => {
    expect(colours(saltWith("Na+"), "universal indicator")).toEqual(["green", "yellow"]);
  });
  test("an acid neutralised to the drop, and one drop more of alkali", () => {
    expect(colours(saltWith("Cl-"), "litmus", cm3("HCl(aq)"), cm3("NaOH(aq)", 0.9))).toEqual(["red"]);
    expect(colours(saltWith("Cl-"), "litmus", cm3("HCl(aq)"), cm3("NaOH(aq)", 1.1))).toEqual(["blue"]);
  });
  test("chlorine water bleaches it, so the engine names no colour", () => {
    expect(tried(saltWith("Cl-"), "litmus", cm3("Cl2(aq)")).readings).toEqual([]);
  });
});

test.each(Object.keys(INDICATORS) as Indicator[])("%s: bands rise, have named colours, and cover every pH", (name) => {
  const { bands } = INDICATORS[name];
  expect(bands.map(({ below }) => below)).toEqual(bands.map(({ below }) => below).toSorted((a, b) => a - b));
  expect(bands.at(-1)?.below).toBe(Number.POSITIVE_INFINITY);
  for (const { colour } of bands) expect(COLOURS).toHaveProperty([colour]);
  for (let at = -1; at <= 15; at += 0.1) expect(coloursAt(name, at).length).toBeGreaterThan(0);
});
