/**
 * Coloured reagents poured into what does nothing to them, after another reagent. Nitrate and sodium ions, water and dilute acid or alkali
 * leave manganate(VII) purple, hexacyanoferrate(III) yellow and (acid or water) iodine brown; chromate is yellow in alkali and turns orange
 * in acid (textbooks, from memory). None of them is ever colourless there.
 */
import { expect, test } from "vitest";
import { cm3, drops, saltWith, show, take } from "./show.ts";

const ACIDS = ["HNO3(aq)", "HCl(aq)", "H2SO4(aq)"];
const ALKALIS = ["NaOH(aq)", "NH3(aq)"];
const WATER = "H2O(l)";

/** Colours of the liquid that are accepted, where not "no visible change", when a bottle follows another one on sodium nitrate, drops and cm3 alike. */
const colours = (first: string, bottle: string): unknown[] =>
  [drops(bottle), cm3(bottle)].flatMap((pour) =>
    show(saltWith("NO3-"), [take, cm3(first), pour]).flatMap(({ readings }) =>
      readings.flatMap(({ none, solution }) => (none ? [] : [solution])),
    ),
  );

const stays = [
  ...[WATER, ...ACIDS, ...ALKALIS].flatMap((first) =>
    [
      ["KMnO4(aq)", "purple"],
      ["acidified KMnO4(aq)", "purple"],
      ["K3[Fe(CN)6](aq)", "yellow"],
    ].map(([bottle, colour]) => [bottle, first, colour]),
  ),
  ...[WATER, ...ACIDS].map((first) => ["I2(aq)", first, "brown"]),
  ...[WATER, ...ALKALIS].map((first) => ["K2CrO4(aq)", first, "yellow"]),
];

test.each(stays)("%s after %s is %s", (bottle, first, colour) => {
  expect(new Set(colours(first, bottle))).toEqual(new Set([colour]));
});

test.each(ACIDS)("chromate and dichromate(VI) are orange after %s", (acid) => {
  for (const bottle of ["K2CrO4(aq)", "acidified K2Cr2O7(aq)"]) {
    for (const colour of colours(acid, bottle)) expect(colour).toMatch(/orange/);
  }
});

test("dichromate(VI) turns yellow in alkali, and orange again where its own acid outdoes the alkali", () => {
  for (const alkali of ALKALIS) {
    const seen = colours(alkali, "acidified K2Cr2O7(aq)");
    expect(seen[0]).toBe("yellow");
    for (const colour of seen) expect(colour).toMatch(/yellow|orange/);
  }
});

test("weak chlorine water shows no colour that it could lose", () => {
  for (const first of [WATER, ...ACIDS, ...ALKALIS]) expect(colours(first, "Cl2(aq)")).not.toContain("colourless");
});

test("what a sample's stronger colour hides is not lost", () => {
  const [shown] = show(saltWith("Cr^3+"), [take, drops("I2(aq)")]);
  for (const { solution } of shown.readings) expect(solution).not.toBe("colourless");
});

test("a reagent that does lose its colour is still told, with its excess or without", () => {
  const [shown] = show({ "Fe^2+": 0.2, "SO4^2-": 0.2 }, [take, cm3("H2SO4(aq)"), drops("acidified KMnO4(aq)")]);
  const seen = shown.readings.map(({ solution }) => solution);
  expect(seen).toContain("purple");
  expect(seen.length).toBeGreaterThan(1);
});
