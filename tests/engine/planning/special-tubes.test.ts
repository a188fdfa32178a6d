import { describe, expect, test } from "vitest";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

type Given = Parameters<typeof planned>[1];
const plan = (steps: unknown[], given: Given = { letters: ["P"] }, choice = CHOICE) => {
  const procedure = planned([{ label: "a", title: "one part", tests: [{ steps }] }], given);
  return planBench(procedure, tableOf(procedure), choice);
};
const NARROW = { ...CHOICE, boilingTube: "boiling-tube-150x24" };

describe("filling of heated tubes", () => {
  test("2 cm3 with an excess of 3 x 2 cm3 is above a tenth of a 24 mm boiling tube (5.3 cm3, table)", () => {
    const { warnings } = plan(
      [{ take: "2 cm3" }, { add: "NaOH(aq)", until: "in excess" }, { warm: true }],
      undefined,
      NARROW,
    );
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatch(
      /^Part a: the tubes may hold 8 cm3 when heated in a, above the safe filling of 5\.3\d? cm3 \(one tenth/,
    );
  });
  test("the same warning is given once for all samples", () => {
    const steps = [{ take: "2 cm3" }, { add: "NaOH(aq)", until: "in excess" }, { warm: true }];
    expect(plan(steps, { letters: ["P", "Q", "R"] }, NARROW).warnings).toHaveLength(1);
  });
  test("what is added after the heating does not count", () => {
    const { warnings } = plan(
      [{ take: "2 cm3" }, { warm: true }, { add: "NaOH(aq)", until: "in excess" }],
      undefined,
      NARROW,
    );
    expect(warnings).toEqual([]);
  });
  test("a solid under the liquid takes up room: 5 cm3 and 0.5 g at 1 cm3/g are above 5.3 cm3, 5 cm3 alone are not", () => {
    const solid: Given = { letters: ["P"], given: "solid" };
    const heated = (g: number) =>
      plan([{ take: `${g} g` }, { add: "H2O(l)", volume: "5 cm3" }, { warm: true }], solid, NARROW).warnings;
    expect(heated(0.2)).toEqual([]);
    expect(heated(0.5)).toHaveLength(1);
    expect(heated(0.5)[0]).toContain(
      "may hold 5.5 cm3, 0.5 cm3 of it the solid, when heated in a, above the safe filling",
    );
  });
  test("a solid is heated in hard glass, up to a fifth of it (3.7 cm3 for 125 x 16 mm, table)", () => {
    const solid: Given = { letters: ["P"], given: "solid" };
    const { tubes, warnings, samples } = plan([{ take: "0.5 g" }, { heat: "strongly" }], solid);
    expect(tubes).toHaveLength(1);
    expect(tubes[0]).toMatchObject({ label: "P a", solidG: 0.5, marks: [], size: { id: "hard-glass-tube-125x16" } });
    expect(tubes[0].heatingLimitCm3?.toFixed(1)).toBe("3.7");
    expect(warnings).toEqual([]);
    // 0.5 / (2/3) = 0.75 g, up to the next 0.1 g
    expect(samples).toEqual([
      {
        sample: "P",
        needed: "0.5 g of solid",
        setOut: "0.8 g of solid, 0.3 g of it kept back",
        forms: [{ of: "solid", needed: 0.5, setOut: 0.8 }],
      },
    ]);
    expect(plan([{ take: "5 g" }, { heat: "gently" }], solid).warnings[0]).toContain("5 g of solid fills about 5 cm3");
  });
  test("boiling asks for an anti-bumping granule in each tube", () => {
    const { extras } = plan([{ take: "1 cm3" }, { boil: "1 min" }], { letters: ["P", "Q"] });
    expect(extras.find(({ what }) => what === "anti-bumping granule")?.count).toBe(2);
  });
});

test("a tube more than half full cannot be shaken: 5 cm3 in 75 x 12 mm, which holds 6 cm3 (table)", () => {
  const { warnings } = plan([{ take: "1 cm3" }, { add: "NH3(aq)", until: "in excess" }], undefined, {
    ...CHOICE,
    testTube: "test-tube-75x12",
  });
  expect(warnings).toHaveLength(1);
  expect(warnings[0]).toContain("too full to shake");
});
test("a tube that overflows: 5 cm3 in 75 x 10 mm, which holds 4 cm3 (table)", () => {
  const { warnings } = plan([{ take: "1 cm3" }, { add: "NH3(aq)", until: "in excess" }], undefined, {
    ...CHOICE,
    testTube: "test-tube-75x10",
  });
  expect(warnings).toHaveLength(1);
  expect(warnings[0]).toContain("the tests may need 5 cm3, but");
});

test("a flame test takes no tube, a little of the sample and a clean wire", () => {
  const { tubes, samples, extras, besides, waste, warnings } = plan([{ flame: true }], {
    letters: ["P"],
    given: "both",
  });
  expect(tubes).toEqual([]);
  expect(samples[0].needed).toBe("0.1 g of solid");
  expect(extras.map(({ what }) => what)).toEqual(
    expect.arrayContaining(["flame-test wire", "watch glass", "burner with heat mat and lighter"]),
  );
  expect(besides.map(({ what }) => what)).toEqual(["dilute hydrochloric acid, for the wire"]);
  expect(waste.map(({ tubes, into }) => [tubes, into])).toEqual([[["P a watch glass"], "waste beaker"]]);
  expect(warnings).toEqual([]);
});

test("an amount the paper does not give is planned and said", () => {
  const { tubes, warnings } = plan([{ add: "NaOH(aq)", drops: 5 }]);
  expect(tubes[0].marks.map(({ cm3 }) => cm3)).toEqual([1, 1.25]);
  expect(warnings).toEqual(["Part a: the paper gives no amount of the sample; 1 cm3 is planned."]);
});

test("a solution of a sample that is given as a solid has to be made", () => {
  expect(plan([{ take: "1 cm3" }], { letters: ["P"], given: "solid" }).warnings).toEqual([
    "Part a: it takes 1 cm3 of P, which is given as a solid. Dissolve some first.",
  ]);
});

test("a filtrate goes on in a tube of its own, a residue starts again from nothing", () => {
  const steps = (keep: string) => [
    { take: "1 cm3" },
    { add: "NaOH(aq)", volume: "1 cm3" },
    { filter: keep },
    { add: "HNO3(aq)", volume: "1 cm3" },
  ];
  const marks = (keep: string) => plan(steps(keep)).tubes.map((tube) => [tube.label, tube.marks.map(({ cm3 }) => cm3)]);
  expect(marks("filtrate")).toEqual([
    ["P a", [1, 2]],
    ["P a filtrate", [2, 3]],
  ]);
  expect(marks("residue")).toEqual([
    ["P a", [1, 2]],
    ["P a residue", [1]],
  ]);
  expect(plan(steps("residue")).extras.find(({ what }) => what === "funnel with filter paper")?.count).toBe(1);
});

test("aluminium foil is counted in pieces and hot alkali with it is cautioned", () => {
  const steps = [{ take: "1 cm3" }, { add: "NaOH(aq)", volume: "1 cm3" }, { add: "Al(s)", pieces: 2 }, { warm: true }];
  const { reagents, cautions, tubes } = plan(steps, { letters: ["P", "Q"] });
  // 2 x 2 pieces; x 1.5 = 6
  expect(reagents.find(({ id }) => id === "Al(s)")).toMatchObject({ pieces: 6, neededCm3: 0, setOutCm3: 0 });
  expect(cautions.some((text) => text.startsWith("Hot alkali with aluminium froths up"))).toBe(true);
  // The foil's own hazard says the same and is not said twice.
  expect(cautions.some((text) => text.startsWith("Aluminium foil"))).toBe(false);
  expect(tubes[0].marks.map(({ cm3 }) => cm3)).toEqual([1, 2]);
});

test("an amount that does not suit the reagent is said, and none is set out", () => {
  const { warnings, reagents } = plan([{ take: "1 cm3" }, { add: "Al(s)", drops: 2 }]);
  expect(warnings).toEqual([
    "Part a: found drops or a volume of aluminium foil, expected a number of pieces. None is set out.",
  ]);
  expect(reagents[0]).toMatchObject({ neededCm3: 0, setOutCm3: 0 });
});

describe("strength", () => {
  const steps = (at?: string) => [
    { take: "1 cm3" },
    { add: "NaOH(aq)", drops: 5, ...(at && { at }) },
    { add: "NaOH(aq)", until: "in excess", ...(at && { at }) },
  ];
  const strong: Given = { letters: ["P"], molPerDm3: 0.5, cations: ["Al^3+", "Zn^2+"] };
  test("an excess too small for a strong sample: 4 x 1 x 0.5 / 0.4 = 5 cm3 against 4.25 cm3 (bench notes)", () => {
    const { warnings } = plan(steps("0.4 mol/dm3"), strong);
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toContain("4.25 cm3 of aqueous sodium hydroxide at 0.4 mol/dm3 is no excess");
    expect(warnings[0]).toContain("would take 5 cm3");
  });
  test("1 mol/dm3 alkali is enough for it: 2 cm3", () => {
    expect(plan(steps(), strong).warnings).toEqual([]);
  });
  test("a stronger reagent than usual says so", () => {
    const { reagents, cautions } = plan(steps("2 mol/dm3"));
    expect(reagents[0].concentration).toBe("2 mol/dm3");
    expect(reagents[0].cautions.join(" ")).toContain("At 2 mol/dm3 it is stronger than the usual 1 mol/dm3");
    expect(cautions.some((text) => text.includes("stronger than the usual 1 mol/dm3"))).toBe(true);
  });
});
