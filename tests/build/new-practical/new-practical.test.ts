/** A practical written from a few answers: predicted, marked, and sound. */
import { describe, expect, test } from "vitest";
import { readFrontmatter } from "../../../src/authoring/frontmatter.ts";
import { authorObservation } from "../../../src/build/new-practical/author-observation.ts";
import { newPractical } from "../../../src/build/new-practical/new-practical.ts";
import type { Wanted } from "../../../src/build/new-practical/wanted.ts";
import { observation } from "../../../src/engine/practical.ts";
import { faultsIn } from "../broken.ts";

const WANTED: Wanted = {
  title: "Two bottles from the quay",
  summary: "Two solutions without labels, and three tests to tell them apart.",
  level: "core",
  minutes: 40,
  order: 1,
  samples: [
    { label: "H", salt: "ZnCl2" },
    { label: "K", salt: "CuSO4*5H2O" },
  ],
  given: "solution",
  concentration: "0.1 mol/dm3",
  tests: ["sodium-hydroxide", "ammonia", "sulfate"],
  cations: ["Al^3+", "Cu^2+", "Zn^2+"],
  anions: ["Cl-", "NO3-", "SO4^2-"],
};

function written(wanted: Wanted): { text: string; data: Record<string, unknown> } {
  const made = newPractical(wanted, "quay.mdx");
  if ("faults" in made) throw new Error(JSON.stringify(made.faults));
  return { text: made.text, data: readFrontmatter("quay.mdx", made.text).data as Record<string, unknown> };
}

test("what the boards' tables give for zinc and copper is filled in, and what the tests leave open is said", () => {
  const { text, data } = written(WANTED);
  // Cambridge International 5070, notes for qualitative analysis: zinc white, soluble in excess of both alkalis; copper light blue, insoluble
  // in excess of sodium hydroxide, soluble in ammonia to a dark (deep) blue solution; sulfate white with barium, in acid.
  expect(data.record).toEqual({
    H: {
      "a(i)": { precipitate: "white" },
      "a(ii)": { fate: "dissolves", solution: "colourless" },
      "b(i)": { precipitate: "white" },
      "b(ii)": { fate: "dissolves", solution: "colourless" },
      c: "no visible change",
    },
    K: {
      "a(i)": { precipitate: "light blue" },
      "a(ii)": { fate: "remains" },
      "b(i)": { precipitate: "light blue" },
      "b(ii)": { fate: "dissolves", solution: "deep blue" },
      c: { precipitate: "white" },
    },
  });
  expect(data.undecided).toEqual({ H: ["Zn(NO3)2"] });
  expect(faultsIn(text, "quay.mdx")).toEqual([]);
});

test("every line that was predicted is marked for its author", () => {
  const { text } = written(WANTED);
  expect(text.match(/ # confirm$/gm)).toHaveLength(11);
  expect(text).toContain("# Predicted, not seen by anybody.");
});

test("solids are stirred into water first, and a sample given as both says which is taken", () => {
  const solid = written({
    ...WANTED,
    given: "solid",
    samples: [{ label: "H", salt: "ZnSO4*7H2O" }],
    tests: ["sulfate"],
  });
  expect(solid.text).toContain("- { take: 0.05 g }");
  const both = written({ ...WANTED, given: "both", samples: [{ label: "H", salt: "ZnSO4*7H2O" }], tests: ["sulfate"] });
  expect(both.text).toContain("from: solution");
});

describe("what cannot be is refused", () => {
  test.each<[string, Partial<Wanted>, RegExp]>([
    ["an ion the paper does not offer", { cations: ["Cu^2+"] }, /Zn\^2\+ not among the ions/],
    ["a salt that cannot be read", { samples: [{ label: "H", salt: "Zn((" }] }, /.+/],
    ["a letter that is none", { samples: [{ label: "zinc", salt: "ZnCl2" }] }, /expected a sample letter/],
    [
      "two samples of a letter",
      {
        samples: [
          { label: "H", salt: "ZnCl2" },
          { label: "H", salt: "CuCl2*2H2O" },
        ],
      },
      /H/,
    ],
    [
      "a salt that does not dissolve",
      { samples: [{ label: "H", salt: "PbSO4" }], cations: ["Pb^2+"] },
      /does not dissolve/,
    ],
    ["a strength without a unit", { concentration: "0.1" }, /without a unit/],
    [
      "a lead salt in a flame",
      { samples: [{ label: "H", salt: "Pb(NO3)2" }], cations: ["Pb^2+", "Cu^2+"], tests: ["flame"] },
      /nobody gives out/,
    ],
  ])("%s", (_, change, found) => {
    const made = newPractical({ ...WANTED, ...change }, "quay.mdx");
    if (!("faults" in made)) throw new Error("it was written");
    expect(made.faults.map((fault) => fault.found).join("\n")).toMatch(found);
  });
});

test.each([
  "no visible change",
  { none: true, gas: "none" },
  { precipitate: "none" },
  { precipitate: { colour: "white", amount: "slight" }, solution: "colourless" },
  { gas: "NH3" },
  { gas: { formula: "CO2", evidence: "limewater turns milky, then clear in excess" }, effervescence: true },
  { residue: { hot: "yellow", cold: "white" }, droplets: true },
  { residue: "none", sublimate: "white" },
  { flame: "none" },
])("the short form of %j is read back as it is", (short) => {
  expect(authorObservation(observation.parse(short))).toEqual(short);
});
