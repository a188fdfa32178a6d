/** The tables behind the pages on ions, against what every textbook of qualitative analysis says of the same tests. */
import { describe, expect, test } from "vitest";
import { lookalikes } from "../../../src/build/ions/lookalikes.ts";
import { looksFor, standardSights } from "../../../src/build/ions/standard-sights.ts";
import { ANIONS, CATIONS } from "../../../src/engine/constants/ions.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";

const IONS = [...CATIONS, ...ANIONS];
const sight = (ion: string, test: string) => standardSights(ion).find((one) => one.test.id === test);
const words = (ion: string, test: string) => sight(ion, test)?.stages.map(({ readings }) => phrase(readings[0]));

describe("what an ion shows of its own", () => {
  // Cambridge International 5070, notes for qualitative analysis (2023); flames: Edexcel 4CH1.
  test.each([
    ["Cu^2+", "ammonia", ["light blue precipitate", "precipitate dissolves, giving a deep blue solution"]],
    ["Zn^2+", "sodium-hydroxide", ["white precipitate", "precipitate dissolves, giving a colourless solution"]],
    ["NH4+", "ammonium", ["damp red litmus turns blue (ammonia)"]],
    ["K+", "flame", ["lilac flame"]],
    ["CO3^2-", "carbonate", ["effervescence, limewater turns milky"]],
    ["SO4^2-", "sulfate", ["white precipitate"]],
    ["NO3-", "nitrate", [/gas test shows nothing$/, /damp red litmus turns blue \(ammonia\)$/]],
  ])("%s, %s", (ion, id, expected) => {
    expect(sight(ion, id)?.own).toBe(true);
    const seen = words(ion, id) ?? [];
    expect(seen).toHaveLength(expected.length);
    for (const [n, one] of expected.entries()) expect(seen[n]).toMatch(one);
  });
});

describe("what is no sight of the ion's own", () => {
  test.each([
    ["the ammonia that the nitrate of its salt would give with foil", "Na+", "nitrate"],
    ["the yellow that the sodium of its salt gives a flame", "Cl-", "flame"],
    ["the purple of manganate(VII) that nothing takes away", "Na+", "manganate"],
    ["the colour of the sample beside that of the reagent", "Ni^2+", "hexacyanoferrate-iii"],
  ])("%s", (_, ion, id) => {
    expect(sight(ion, id)?.own).toBe(false);
  });
});

test("every ion that dissolves is tried in every test it has a soluble salt for", () => {
  const lacking = IONS.filter((ion) => standardSights(ion).length < standardSights("Na+").length);
  // With foil the chloride is taken, or the sulfate; of these two salts neither dissolves: textbook solubility rules.
  expect(lacking).toEqual(["Ag+", "Pb^2+"]);
});

/** Bromide ions and the like are seen somewhere; the alkali metals and ammonium in one test each. */
test.each(IONS.filter((ion) => ion !== "O^2-"))("%s shows something in a test that looks for it", (ion) => {
  expect(standardSights(ion).some((one) => one.own && looksFor(one, ion))).toBe(true);
});

describe("which ions are taken for which", () => {
  // The pairs every school text warns of, from memory.
  test.each([
    ["Al^3+", "Pb^2+", ["sodium-hydroxide", "ammonia"], "iodide"],
    ["Al^3+", "Zn^2+", ["sodium-hydroxide"], "ammonia"],
    ["Mg^2+", "Ca^2+", ["sodium-hydroxide"], "ammonia"],
    ["Li+", "Sr^2+", ["flame"], "sulfuric-acid"],
    ["CO3^2-", "HCO3-", ["carbonate"], "hydrogencarbonate"],
    ["Br-", "I-", ["halide"], "chlorine-water"],
    ["NO3-", "NO2-", ["nitrate"], "carbonate"],
  ])("%s and %s", (ion, other, same, apart) => {
    const found = lookalikes(ion).find((one) => one.ion === other);
    expect(found?.alikeIn.map(({ id }) => id)).toEqual(expect.arrayContaining(same));
    expect(found?.apartIn.map(({ id }) => id)).toContain(apart);
  });

  test("a likeness goes both ways", () => {
    const pairs = IONS.filter((ion) => ion !== "O^2-").flatMap((ion) =>
      lookalikes(ion).map((one) => [ion, one.ion].sort().join(" ")),
    );
    for (const pair of new Set(pairs))
      expect(
        pairs.filter((one) => one === pair),
        pair,
      ).toHaveLength(2);
  });
});
