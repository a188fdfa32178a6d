/** The sentence on a sample that is still open; which salts are left is given, so no chemistry is needed here. */
import { expect, test } from "vitest";
import { headline } from "../../../src/components/conclude/headline.ts";
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";

const names = { "Fe^2+": "iron(II)", "Cu^2+": "copper(II)", "Na+": "sodium", "K+": "potassium", "Al^3+": "aluminium" };

function said(...left: [cations: string, anions: string][]): string {
  const salts = left.map(([cations, anions]) => ({
    formula: `${cations} ${anions}`,
    cations: cations.split(" "),
    anions: anions.split(" "),
  }));
  const places = salts.map((_, salt) => salt);
  const table = {
    salts,
    sets: [{ salts: [...places, salts.length] }],
    samples: [{ label: "X", set: 0 }],
  } as unknown as PredictionTable;
  const sample = { sample: "X", salts: places, ions: [] };
  return headline(table, names, { assignments: left.length, samples: [sample] }, sample, [], places);
}

test.each([
  [
    "one ion of each kind",
    [
      ["Na+", "Cl-"],
      ["K+", "Cl-"],
    ],
    "X holds Cl-; the cation is sodium (Na+) or potassium (K+).",
  ],
  [
    "neither kind settled",
    [
      ["Na+", "Cl-"],
      ["K+", "Br-"],
    ],
    "X is still open, 2 salts: the cation is sodium (Na+) or potassium (K+); the anion is Cl- or Br-.",
  ],
  [
    "two cations that are both certain",
    [
      ["Fe^2+ Cu^2+", "Cl-"],
      ["Fe^2+ Cu^2+", "Br-"],
    ],
    "X holds iron(II) (Fe^2+) and copper(II) (Cu^2+); the anion is Cl- or Br-.",
  ],
  [
    "two cations of which one is certain",
    [
      ["Na+ Al^3+", "Cl-"],
      ["K+ Al^3+", "Cl-"],
    ],
    "X holds Cl-; the cations are aluminium (Al^3+), with sodium (Na+) or potassium (K+).",
  ],
  [
    "two cations of which none is certain",
    [
      ["Na+ K+", "Cl-"],
      ["K+ Al^3+", "Cl-"],
      ["Na+ Al^3+", "Cl-"],
    ],
    "X holds Cl-; the cations are two of sodium (Na+), potassium (K+) and aluminium (Al^3+).",
  ],
] as [string, [string, string][], string][])("%s", (_, left, words) => {
  expect(said(...left)).toBe(words);
});

test("ions too many to name are counted", () => {
  const many = [1, 2, 3, 4, 5, 6, 7].map((ion): [string, string] => [`X${ion}+`, "Cl-"]);
  expect(said(...many)).toBe("X holds Cl-; the cation is one of 7.");
});
