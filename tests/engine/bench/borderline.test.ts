/**
 * Which predictions are near to flipping. What should flip, and with what, is what an independent prototype of the same equilibrium found
 * (nearly the same constants, another program); the tests of chloride and sulfate that nothing shakes are textbook statements.
 */
import { describe, expect, test } from "vitest";
import { borderline, type Variation } from "../../../src/engine/bench/borderline.ts";
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { procedure } from "../../../src/engine/practical.ts";
import { cm3, drops, excess, solve, take } from "./show.ts";

const partsOf = (tests: unknown[][]) =>
  procedure.parse([{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }]);

const ABOUT = { given: "solution", concentration: { molPerDm3: 0.1, about: true } } as const;

/** The border of a salt in tests that follow one another in one tube, the sample's strength left open. */
const open = (cation: string, anion: string, ...tests: unknown[][]) =>
  borderline(saltOf(cation, anion), ABOUT, partsOf(tests), solve);

const alkali = (reagent: string) => [[take, drops(reagent)], [excess(reagent)]];

const strengths = (flips: { variation: Variation }[], of: "sample" | "reagent") =>
  flips.flatMap(({ variation }) => (variation.of === of ? [variation.molPerDm3] : []));

describe("the strength of the sample", () => {
  test("aluminium hydroxide stays in excess ammonia, but not from 0.02 mol/dm3", () => {
    const cell = open("Al^3+", "NO3-", ...alkali("NH3(aq)")).get("a(ii)");
    expect(cell?.flips.find(({ variation }) => "molPerDm3" in variation && variation.molPerDm3 === 0.02)).toMatchObject(
      {
        reading: { fate: "dissolves" },
      },
    );
  });
  test("no lasting brown with silver and ammonia at 0.05 mol/dm3 and below", () => {
    const flips = open("Ag+", "NO3-", ...alkali("NH3(aq)")).get("a(i)")?.flips ?? [];
    expect(strengths(flips, "sample")).toEqual([0.02, 0.05]);
  });
  test("too little carbonate does not fizz", () => {
    const cell = open("Na+", "CO3^2-", [take, cm3("HCl(aq)")]).get("a");
    expect(cell?.flips).toMatchObject([{ variation: { of: "sample", molPerDm3: 0.02 }, reading: { none: true } }]);
    expect(cell?.readings).toContainEqual({ effervescence: true });
    expect(cell?.readings).toContainEqual({ none: true });
  });
  test("is not varied where the paper gives it, nor beyond what dissolves", () => {
    const given = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;
    expect(borderline(saltOf("Al^3+", "NO3-"), given, partsOf(alkali("NH3(aq)")), solve).size).toBe(0);
    // Barium nitrate does not dissolve to 0.5 mol/dm3 (CRC Handbook, from memory: 0.39 mol/dm3 at 25 C).
    const barium = open("Ba^2+", "NO3-", [take, excess("NH3(aq)")]);
    expect([...barium.values()].flatMap(({ flips }) => strengths(flips, "sample"))).not.toContain(0.5);
  });
});

// Q048: "a faint white precipitate is nearly always seen unless the reagents are pure (carbonate in the alkali)"; Q014 and Q015, calcium
// with ammonia: "no precipitate or a very slight white one", Q050, barium: none "if the reagents are pure". Magnesium hydroxide is there
// whatever the carbonate.
describe("carbonate of the alkali", () => {
  const carbonate = (cation: string, reagent: string) =>
    [...open(cation, "NO3-", ...alkali(reagent))].flatMap(([cell, { flips }]) =>
      flips.flatMap(({ variation, reading }) => (variation.of === "carbonate" ? [[cell, reading]] : [])),
    );
  test("barium with sodium hydroxide may show a faint white that stays", () => {
    expect(carbonate("Ba^2+", "NaOH(aq)")).toEqual([
      ["a(i)", { precipitate: { colour: "white", amount: "slight" } }],
      ["a(ii)", { fate: "remains" }],
    ]);
  });
  test.each(["Ca^2+", "Ba^2+"])("%s with ammonia may show a faint white that stays", (cation) => {
    const found = carbonate(cation, "NH3(aq)");
    expect(found.map(([cell]) => cell)).toEqual(expect.arrayContaining(["a(i)", "a(ii)"]));
    for (const [, reading] of found)
      expect([
        { fate: "remains" },
        ...["slight", "trace"].map((amount) => ({ precipitate: { colour: "white", amount } })),
      ]).toContainEqual(reading);
  });
  test.each([
    ["Mg^2+", "NaOH(aq)"],
    ["Mg^2+", "NH3(aq)"],
    ["Na+", "NaOH(aq)"],
  ])("not %s with %s", (cation, reagent) => {
    expect(carbonate(cation, reagent)).toEqual([]);
  });
});

describe("the strength of the reagent", () => {
  test.each(["Cu^2+", "Zn^2+"])("weak ammonia does not dissolve all of the hydroxide of %s", (cation) => {
    const cell = open(cation, "NO3-", ...alkali("NH3(aq)")).get("a(ii)");
    expect(strengths(cell?.flips ?? [], "reagent")).toEqual([0.4]);
    expect(cell?.readings.map(({ fate }) => fate)).toContain("dissolves");
    expect(cell?.readings.map(({ fate }) => fate)).toContain("partly dissolves");
  });
  test("twice as strong nitric acid keeps silver sulfite away", () => {
    const cell = open("Na+", "SO3^2-", [take, cm3("HNO3(aq)"), cm3("AgNO3(aq)")]).get("a");
    expect(cell?.flips).toContainEqual({
      variation: { of: "reagent", id: "HNO3(aq)", molPerDm3: 2 },
      reading: { none: true },
    });
  });
  test("is not varied where the paper gives it", () => {
    const fixed = [[take, drops("NH3(aq)")], [{ ...excess("NH3(aq)"), at: "2 mol/dm3" }]];
    const flips = open("Zn^2+", "NO3-", ...fixed).get("a(ii)")?.flips ?? [];
    expect(strengths(flips, "reagent")).toEqual([]);
  });
});

// The prototype finds the constant of lead hydroxide at the end of the window in which published rows agree (12.98 of 10.5 to 13.0). The
// first drops bring it down wherever they land, whatever the constant; on the border is whether it shows at once or only in excess.
test("lead hydroxide with ammonia has a narrow margin in its own constant, and no other reading is lost", () => {
  const tests = alkali("NH3(aq)");
  const cell = open("Pb^2+", "NO3-", ...tests).get("a(ii)");
  const constants = cell?.flips.flatMap(({ variation }) => (variation.of === "constant" ? [variation.id] : []));
  expect(constants).toContain("Pb(OH)2(s)");
  const plain = predictSalt({ ions: saltOf("Pb^2+", "NO3-").ions, molPerDm3: 0.1 }, partsOf(tests), solve).get("a(ii)");
  expect(cell?.readings.slice(0, plain?.readings.length)).toEqual(plain?.readings);
});

describe("nothing shakes", () => {
  test.each([
    ["Cl-", "AgNO3(aq)"],
    ["Br-", "AgNO3(aq)"],
    ["I-", "AgNO3(aq)"],
    ["SO4^2-", "Ba(NO3)2(aq)"],
    ["NO3-", "AgNO3(aq)"],
    ["NO3-", "Ba(NO3)2(aq)"],
  ])("%s in nitric acid with %s", (anion, reagent) => {
    expect(open("Na+", anion, [take, cm3("HNO3(aq)"), cm3(reagent)])).toEqual(new Map());
  });
  test.each(["Cu^2+", "Fe^2+", "Mg^2+", "Zn^2+", "Al^3+"])("%s with sodium hydroxide", (cation) => {
    expect(open(cation, "NO3-", ...alkali("NaOH(aq)"))).toEqual(new Map());
  });
});

// Q032 to Q035: iron(III) gives a red-brown precipitate with either alkali; a sample given as a solution is clear (common practice).
test("a constant by which the given solution would not be clear makes no border", () => {
  const given = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;
  for (const alkalis of [alkali("NaOH(aq)"), alkali("NH3(aq)")]) {
    const border = borderline(saltOf("Fe^3+", "SO4^2-"), given, partsOf(alkalis), solve);
    expect(border.get("a(i)")?.readings ?? []).not.toContainEqual({ fate: "remains" });
  }
});
