/**
 * False results of common tests. The amounts are those of an independent prototype of the same equilibrium (nearly the same constants,
 * another program), so they check the procedure and the bookkeeping, not the constants; 15 % leaves room for the constants that differ.
 * The statements beside them are those of school texts on qualitative analysis (common practice, from memory).
 */
import { describe, expect, test } from "vitest";
import { interference, type Misled } from "../../../src/engine/bench/interference.ts";
import { look } from "../../../src/engine/bench/sight.ts";
import { emptyTube, pour, settle } from "../../../src/engine/bench/tube.ts";
import { procedure, statement } from "../../../src/engine/practical.ts";
import { cm3, solve, take, test as tryGas, warm } from "./show.ts";

/** The false results among salts of these ions at `molPerDm3`, as [line, kind, salts]. */
function falseResults(ions: { cations: string[]; anions: string[] }, tests: unknown[][], molPerDm3 = 0.1) {
  const parts = procedure.parse([{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }]);
  const samples = [{ label: "P", given: "solution" as const, concentration: { molPerDm3 }, salt: "NaNO3" }];
  return interference({ samples, parts, paper: statement.parse(ions) }, solve);
}

const sodium = (...anions: string[]) => ({ cations: ["Na+"], anions });
const silver = cm3("AgNO3(aq)");

/** The salts misled by one kind of disturbance in the only or the named line. */
function misled(found: ReturnType<typeof falseResults>, kind: string, cell = "a"): Misled[] {
  return found.find((one) => one.kind === kind && one.cell === cell)?.salts ?? [];
}

/** Checks an amount against the prototype's. */
const about = (amount: number | undefined, prototype: number) => {
  expect(amount).toBeGreaterThan(prototype * 0.85);
  expect(amount).toBeLessThan(prototype * 1.15);
};

describe("hydrochloric acid before silver nitrate", () => {
  const found = falseResults(sodium("NO3-", "SO4^2-", "Cl-"), [[take, cm3("HCl(aq)", 0.25), silver]]);

  test("looks like a real chloride", () => {
    const salts = misled(found, "chloride or sulfate of a reagent");
    expect(salts.map(({ salt, how, phase }) => [salt, how, phase])).toEqual([
      ["NaNO3", "surely", "AgCl(s)"],
      ["Na2SO4", "surely", "AgCl(s)"],
    ]);
    about(salts[0].gramsPerDm3, 3.18);
  });
  test("nitric acid does not", () => {
    const clean = falseResults(sodium("NO3-", "SO4^2-"), [[take, cm3("HNO3(aq)", 0.25), silver]]);
    expect(clean.map(({ kind }) => kind)).toEqual(["tap water"]);
  });
});

test("sulfuric acid before a barium salt makes every salt a sulfate", () => {
  const found = falseResults(sodium("NO3-", "SO4^2-"), [[take, cm3("H2SO4(aq)", 0.25), cm3("Ba(NO3)2(aq)")]]);
  expect(misled(found, "chloride or sulfate of a reagent")).toMatchObject([{ salt: "NaNO3", phase: "BaSO4(s)" }]);
});

describe("lead with hydrochloric acid and barium chloride", () => {
  const ions = { cations: ["Na+", "Pb^2+"], anions: ["NO3-"] };
  const kind = "chloride or sulfate of a reagent";

  test("is taken for sulfate, whether the acid stands in the same line or before it", () => {
    const together = falseResults(ions, [[take, cm3("HCl(aq)"), cm3("BaCl2(aq)")]]);
    const apart = falseResults(ions, [[take, cm3("HCl(aq)")], [cm3("BaCl2(aq)")]]);
    for (const salts of [misled(together, kind), misled(apart, kind, "a(ii)")])
      expect(salts).toMatchObject([{ salt: "Pb(NO3)2", how: "surely", phase: "PbCl2(s)" }]);
  });
  test("with as much left at the end as the prototype finds: 7.2 g/dm3", () => {
    const tube = emptyTube();
    pour(tube, { "Pb^2+": 0.1, "NO3-": 0.2 }, 1);
    pour(tube, { "H+": 1, "Cl-": 1 }, 1);
    pour(tube, { "Ba^2+": 0.1, "Cl-": 0.2 }, 1);
    about(look(settle(tube, solve)).solids.find(({ id }) => id === "PbCl2(s)")?.gramsPerDm3, 7.2);
  });
  test("not with nitric acid and barium nitrate", () => {
    expect(falseResults(ions, [[take, cm3("HNO3(aq)"), cm3("Ba(NO3)2(aq)")]])).toEqual([]);
  });
});

// By counting: 0.1 mmol of PbSO4 (303 g/mol) is 30 mg, in at least the 1 cm3 of sample and at most the 2 cm3 with the acid in it.
test.each([
  ["Ba(NO3)2(aq)", "sulfate"],
  ["AgNO3(aq)", "a halide"],
])("lead with sulfuric acid before %s is taken for %s", (reagent, wrongly) => {
  const found = falseResults({ cations: ["Pb^2+"], anions: ["NO3-"] }, [[take, cm3("H2SO4(aq)"), cm3(reagent)]]);
  expect(found.map(({ concluded }) => concluded)).toEqual([wrongly]);
  const [lead] = misled(found, "chloride or sulfate of a reagent");
  expect(lead).toMatchObject({ salt: "Pb(NO3)2", how: "surely", phase: "PbSO4(s)" });
  expect(lead.gramsPerDm3).toBeGreaterThan(15);
  expect(lead.gramsPerDm3).toBeLessThan(30);
});

describe("ammonium before the foil test", () => {
  const ions = { cations: ["Na+", "NH4+"], anions: ["Cl-", "NO3-"] };
  const foil = [{ add: "Al(s)", pieces: 1 }, warm, tryGas("damp red litmus")];
  const kind = "ammonium not boiled off";

  test("is taken for nitrate", () => {
    // 0.15 mol/dm3 in 1 cm3 with 2 cm3 of alkali: 0.05 mol/dm3 in the tube, as in the prototype at 60 C.
    const [one, ...more] = misled(falseResults(ions, [[take, cm3("NaOH(aq)", 2), ...foil]], 0.15), kind);
    expect(one).toMatchObject({ salt: "NH4Cl", how: "surely", phase: "NH3(g)" });
    expect(more).toEqual([]);
    about(one.atm, 3.98e-3);
  });
  test("a minute's boiling is not enough, five minutes are", () => {
    const boiled = (boil: string) =>
      misled(falseResults(ions, [[take, cm3("NaOH(aq)", 2), { boil }], foil]), kind, "a(ii)");
    expect(boiled("1 min")).toHaveLength(1);
    expect(boiled("5 min")).toEqual([]);
  });
});

describe("without acid", () => {
  const anions = ["CO3^2-", "SO3^2-", "OH-", "SO4^2-", "NO3-"];
  const kind = "no acid, or too little";

  test("silver nitrate gives a solid with carbonate and hydroxide, a faint one with sulfite", () => {
    const salts = misled(falseResults(sodium(...anions), [[take, silver]]), kind);
    expect(salts.map(({ salt, how }) => [salt, how])).toEqual([
      ["Na2CO3", "surely"],
      ["Na2SO3", "perhaps"],
      ["NaOH", "surely"],
    ]);
    const prototype = [3.4, 0.16, 2.9];
    for (const [index, { gramsPerDm3 }] of salts.entries()) about(gramsPerDm3, prototype[index]);
  });
  test("barium chloride gives a solid with carbonate and sulfite that only acid tells from sulfate", () => {
    const salts = misled(falseResults(sodium(...anions), [[take, cm3("BaCl2(aq)")]]), kind);
    expect(salts.map(({ salt, how }) => [salt, how])).toEqual([
      ["Na2CO3", "surely"],
      ["Na2SO3", "surely"],
    ]);
    about(salts[0].gramsPerDm3, 9.8);
    about(salts[1].gramsPerDm3, 10.9);
  });
  test("where acid follows in the same tube, nothing is false", () => {
    expect(falseResults(sodium(...anions), [[take, cm3("BaCl2(aq)")], [cm3("HCl(aq)")]])).toEqual([]);
  });
  test("silver sulfite outlives 1 cm3 of dilute nitric acid, not 3 cm3", () => {
    const acid = (volume: number) =>
      misled(falseResults(sodium("SO3^2-"), [[take, cm3("HNO3(aq)", volume), silver]]), kind);
    about(acid(1)[0].gramsPerDm3, 1.35);
    expect(acid(3)).toEqual([]);
  });
});

describe("silver sulfate", () => {
  const strong = (molPerDm3: number, at: string) =>
    misled(falseResults(sodium("SO4^2-"), [[take, { ...silver, at }]], molPerDm3), "silver sulfate");

  test("never comes out with 0.05 mol/dm3 silver nitrate", () => {
    for (const molPerDm3 of [0.5, 1, 2]) expect(strong(molPerDm3, "0.05 mol/dm3")).toEqual([]);
  });
  test("comes out with 0.1 mol/dm3 silver nitrate from about 0.37 mol/dm3 of sulfate", () => {
    expect(strong(0.37 * 0.85, "0.1 mol/dm3")).toEqual([]);
    expect(strong(0.37 * 1.15, "0.1 mol/dm3")).toMatchObject([{ salt: "Na2SO4", phase: "Ag2SO4(s)" }]);
  });
});

describe("tap water in the silver test", () => {
  test("gives every salt without a halide a haze that some would see", () => {
    const ions = { cations: ["Na+", "Mg^2+"], anions: ["Cl-", "Br-", "NO3-"] };
    const salts = misled(falseResults(ions, [[take, cm3("HNO3(aq)"), silver]]), "tap water");
    expect(salts.map(({ salt, how, phase }) => [salt, how, phase])).toEqual([
      ["NaNO3", "perhaps", "AgCl(s)"],
      ["Mg(NO3)2", "perhaps", "AgCl(s)"],
    ]);
    about(salts[0].gramsPerDm3, 0.04);
  });
  test("does so too when a solid is dissolved in it", () => {
    const found = interference(
      {
        samples: [{ label: "P", given: "solid" }],
        paper: statement.parse(sodium("NO3-")),
        parts: procedure.parse([
          { label: "a", title: "test", tests: [{ steps: [{ take: "0.1 g" }, cm3("H2O(l)", 4), silver] }] },
        ]),
      },
      solve,
    );
    expect(misled(found, "tap water")).toMatchObject([{ salt: "NaNO3", phase: "AgCl(s)" }]);
  });
});

describe("alkali with 0.1 mol % carbonate", () => {
  const ions = { cations: ["Na+", "Mg^2+", "Ca^2+", "Ba^2+"], anions: ["NO3-"] };
  const clouded = (alkali: string) => misled(falseResults(ions, [[take, cm3(alkali)]]), "old alkali");

  test("sodium hydroxide clouds barium faintly", () => {
    const salts = clouded("NaOH(aq)");
    expect(salts).toMatchObject([{ salt: "Ba(NO3)2", how: "perhaps", phase: "BaCO3(s)" }]);
    about(salts[0].gramsPerDm3, 0.1);
  });
  test("ammonia clouds calcium and barium", () => {
    const salts = clouded("NH3(aq)");
    expect(salts.map(({ salt }) => salt)).toEqual(["Ca(NO3)2", "Ba(NO3)2"]);
    about(salts[0].gramsPerDm3, 0.1);
    about(salts[1].gramsPerDm3, 0.2);
  });
});

test("ammonia after silver nitrate leaves the hydroxide of aluminium and chromium where silver chloride has gone", () => {
  const ions = { cations: ["Na+", "Al^3+", "Cr^3+", "Cu^2+", "Zn^2+"], anions: ["Cl-", "I-", "NO3-"] };
  const tests = [[take, cm3("HNO3(aq)", 0.5), cm3("AgNO3(aq)", 0.5)], [cm3("NH3(aq)", 4)]];
  const salts = misled(falseResults(ions, tests), "a hydroxide in the way", "a(ii)");
  // Copper and zinc go into solution with ammonia; silver iodide stays whatever the cation.
  expect(salts.map(({ salt, how }) => [salt, how])).toEqual([
    ["AlCl3", "surely"],
    ["CrCl3", "surely"],
  ]);
  expect(salts[0].phase).toContain("Al(OH)3");
});

test("every finding says what is wrongly concluded and what to do", () => {
  for (const { concluded, remedy } of falseResults(sodium("CO3^2-", "NO3-"), [[take, silver]])) {
    expect(concluded).toMatch(/halide/);
    expect(remedy).toMatch(/\.$/);
  }
});

// Textbooks of qualitative analysis, from memory: foil in alkali reduces nitrite too, and sulfur dioxide clouds limewater too.
test("nitrite with foil in alkali is taken for nitrate, nitrate itself is not false", () => {
  const foil = [take, cm3("NaOH(aq)"), { add: "Al(s)", pieces: 1 }, warm, tryGas("damp red litmus")];
  const found = falseResults(sodium("NO2-", "NO3-", "Cl-"), [foil]);
  expect(misled(found, "nitrite")).toMatchObject([{ salt: "NaNO2", how: "surely", phase: "NH3(g)" }]);
  expect(found).toMatchObject([{ concluded: "nitrate" }]);
});
test("sulfite and thiosulfate with acid and limewater are taken for carbonate", () => {
  for (const gas of [tryGas("limewater"), { leadThrough: "limewater" }]) {
    const found = falseResults(sodium("SO3^2-", "S2O3^2-", "CO3^2-", "Cl-"), [[take, cm3("HCl(aq)"), warm, gas]]);
    expect(misled(found, "sulfur dioxide").map(({ salt }) => salt)).toContain("Na2SO3");
    expect(found.map(({ kind, concluded }) => [kind, concluded])).toEqual([["sulfur dioxide", "carbonate"]]);
  }
});
