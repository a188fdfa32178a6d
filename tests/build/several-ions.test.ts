/** A practical with a mixture, and statements on which samples hold an ion or are the same salt, through the whole check. */
import { describe, expect, test } from "vitest";
import { wordFault } from "../../src/authoring/faults.ts";
import { faultsIn } from "./broken.ts";

const FILE = "src/content/practicals/mixture.mdx";

/** Invented: a crate of two bottles and a jar. */
const page = (edit: (text: string) => string = (text) => text) =>
  faultsIn(
    edit(`---
title: The crate behind the boiler
summary: One bottle holds two salts at once; the other is the solution of the solid in the jar.
level: stretch
minutes: 40
order: 9
samples:
  - { label: F, given: solution, concentration: 0.1 mol/dm3, holds: { cations: 2, anions: 1 }, salt: (NH4)2SO4 + CuSO4 }
  - { label: G, given: solution, concentration: 0.1 mol/dm3, salt: ZnSO4*7H2O }
  - { label: H, given: solid, salt: ZnSO4*7H2O }
paper:
  cations: [NH4+, Cu^2+, Zn^2+, Na+]
  anions: [Cl-, SO4^2-]
  same: [[G, H]]
  contains: [{ ion: NH4+, count: 1 }]
parts:
  - label: a
    title: Sodium hydroxide, then warmed
    samples: [F, G]
    tests:
      - steps: [{ take: 1 cm3 }, { add: NaOH(aq), drops: 5 }]
      - steps: [{ add: NaOH(aq), until: in excess }]
      - steps: [{ warm: true }, { testGas: damp red litmus }]
  - label: b
    title: Nitric acid, then barium nitrate
    samples: [F, G]
    tests:
      - steps: [{ take: 1 cm3 }, { add: HNO3(aq), volume: 1 cm3 }, { add: Ba(NO3)2(aq), volume: 1 cm3 }]
  - label: c
    title: Water on the solid
    samples: [H]
    tests:
      - steps: [{ take: 0.2 g }, { add: H2O(l), volume: 3 cm3 }]
record:
  F:
    a(i): { precipitate: light blue }
    a(ii): { fate: remains }
    a(iii): { precipitate: black, gas: NH3 }
    b: { precipitate: white }
  G:
    a(i): { precipitate: white }
    a(ii): { fate: dissolves, solution: colourless }
    b: { precipitate: white }
  H:
    c: { fate: dissolves, solution: colourless }
---

Text.
`),
    FILE,
  );
const faulty = (find: string, put: string) =>
  page((text) => {
    expect(text).toContain(find);
    return text.replace(find, put);
  });

describe("a sample of several ions", () => {
  test("passes when the record is what the engine finds and the tests decide it", () => {
    expect(page().map(wordFault)).toEqual([]);
  });

  test("whose salts hold another number of ions is told so", () => {
    const [fault] = faulty("salt: (NH4)2SO4 + CuSO4", "salt: CuSO4*5H2O");
    expect(fault).toMatchObject({ what: "sample F: the answer" });
    expect(fault.found).toBe("Cu^2+, SO4^2- where the sample holds 2 cations and one anion");
  });

  test("that cannot be one solution is told why", () => {
    const [fault] = page((text) =>
      text
        .replace("(NH4)2SO4 + CuSO4", "Na2SO4 + BaSO4")
        .replace("[NH4+, Cu^2+, Zn^2+, Na+]", "[NH4+, Cu^2+, Zn^2+, Na+, Ba^2+]"),
    );
    expect(fault.found).toMatch(/^sodium, barium and sulfate do not stay dissolved together/);
  });
});

describe("statements of the paper that are not true of the answers", () => {
  test.each([
    ["salt: ZnSO4*7H2O }\n  - { label: H", "salt: ZnCl2 }\n  - { label: H", "G and H are the same salt"],
    ["count: 1", "count: 2", "2 of F, G, H contains NH4+"],
    ["ion: NH4+, count: 1", "ion: Na+", "at least one of F, G, H contains Na+"],
  ])("%s becomes %s", (find, put, stated) => {
    expect(faulty(find, put).map((fault) => fault.stated)).toContain(stated);
  });

  test.each([
    ["[[G, H]]", "[[G, K]]", "sample K, expected one of F, G, H"],
    ["count: 1", "count: 9", "9, expected"],
    ["ion: NH4+", "ion: Xx+", '"Xx+", expected an ion the engine knows'],
    ["cations: 2, anions: 1", "cations: 3", "more than 2 ions of a kind, expected 1 or 2"],
  ])("%s becomes %s: refused when read", (find, put, found) => {
    const faults = faulty(find, put);
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.map(wordFault).join("\n")).toContain(found);
  });
});
