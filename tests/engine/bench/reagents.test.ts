/** Reagents of the redox and confirmatory tests, as bottles and in a tube. Sources: school tables of tests, from memory, but where said. */
import { describe, expect, test } from "vitest";
import { reagentComponents, usableReagents } from "../../../src/engine/bench/operations.ts";
import { reagents } from "../../../src/engine/constants/reagents.ts";
import { STARCH } from "../../../src/engine/constants/starch.ts";
import { type Colour, sameColour } from "../../../src/engine/practical/same-colour.ts";
import { cm3, drops, equationsOf, excess, saltWith, show, take, test as tryGas, warm } from "./show.ts";

test("the bottles of a school bench are all usable", () => {
  const asked = [
    ...[
      "acidified KMnO4(aq)",
      "acidified K2Cr2O7(aq)",
      "H2O2(aq)",
      "acidified H2O2(aq)",
      "Cl2(aq)",
      "I2(aq)",
      "KSCN(aq)",
    ],
    ...["K4[Fe(CN)6](aq)", "K3[Fe(CN)6](aq)", "K2CrO4(aq)", "Na2CO3(aq)", "FeSO4(aq)", "Na2S2O3(aq)", "Na2SO3(aq)"],
    ...["MgSO4(aq)", "Ca(OH)2(aq)", "Zn(s)", "Al(s)", "starch solution", "H2O(l)"],
  ];
  expect(usableReagents).toEqual(expect.arrayContaining(asked));
  // Papers and indicators are looked at, not poured; anhydrous copper(II) sulfate is for drops of water on a tube.
  expect(usableReagents).not.toContain("litmus paper");
  expect(usableReagents).not.toContain("CuSO4(s)");
});

describe("what acidified bottles hold, mol/dm3", () => {
  test("manganate(VII) 0.02 in 0.5 sulfuric acid; another strength leaves the acid as it is", () => {
    expect(reagentComponents("acidified KMnO4(aq)")).toEqual({ "K+": 0.02, "MnO4-": 0.02, "H+": 1, "SO4^2-": 0.5 });
    expect(reagentComponents("acidified KMnO4(aq)", 0.01)).toMatchObject({ "MnO4-": 0.01, "H+": 1 });
  });

  test("dichromate(VI): Cr2O7^2- + H2O is 2 CrO4^2- + 2 H+", () => {
    const { "CrO4^2-": chromium, "H+": protons, H2O: water } = reagentComponents("acidified K2Cr2O7(aq)");
    expect([chromium, protons, water]).toEqual([0.1, 1.1, -0.05]);
  });

  test("a dissolved reagent has a strength", () => {
    const unknown = reagents.filter(({ kind, concentration, components }) => {
      return kind === "solution" && Object.keys(components).length > 0 && concentration === null;
    });
    expect(unknown).toEqual([]);
  });
});

describe("acidified manganate(VII), the drops lose their purple", () => {
  const few = [take, drops("acidified KMnO4(aq)")];
  test.each<[string, Colour]>([
    ["SO3^2-", "colourless"],
    ["I-", "brown"],
    ["Fe^2+", "pale yellow"],
    ["NO3-", "purple"],
    ["SO4^2-", "purple"],
    ["Cl-", "purple"],
  ])("%s: %s", (ion, colour) => {
    const [{ readings }] = show(saltWith(ion), few);
    for (const { none, solution } of readings)
      if (!none) expect(solution && sameColour(solution, colour), solution).toBe(true);
    // Drops that keep their colour are "no visible change" to many; drops that lose it never are.
    expect(readings.some(({ none }) => none)).toBe(colour === "purple");
  });

  test("nitrite: the first drops lose it; the engine lets nitrous acid fall apart at once, so the last ones may stay purple", () => {
    const [{ readings }] = show(saltWith("NO2-"), few);
    expect(readings[0]).toMatchObject({ solution: "colourless" });
  });

  test("in excess: purple at the end; of a reducing agent the loss on the way there may be recorded instead", () => {
    const until = [take, excess("acidified KMnO4(aq)")];
    const iron = show(saltWith("Fe^2+"), until)[0].readings.map(({ solution }) => solution as Colour);
    expect(iron.map((colour, n) => sameColour(colour, (["pale yellow", "purple"] as const)[n]))).toEqual([true, true]);
    expect(show(saltWith("NO3-"), until)[0].readings).toEqual([
      { solution: "purple" },
      { none: true, stays: "purple" },
    ]);
  });
});

describe("starch", () => {
  test("blue-black with iodine, gone when warm, back on cooling", () => {
    const set = [take, drops("starch solution"), { add: "Cl2(aq)", drops: 3 }];
    const [made, hot, cold] = show(saltWith("I-"), set, [warm], [{ cool: true }]);
    expect(made.readings).toEqual([{ solution: "blue-black" }]);
    expect(made.gates).toContain(STARCH.id);
    expect(hot.solution).toBe("brown");
    expect(cold.readings).toEqual([{ solution: "blue-black" }]);
  });

  test("nothing with iodide alone, or with bromine", () => {
    expect(show(saltWith("I-"), [take, drops("starch solution")])[0].readings).toEqual([{ none: true }]);
    const bromine = show(saltWith("Br-"), [take, drops("starch solution"), drops("Cl2(aq)")])[0];
    expect(bromine.solution).not.toBe("blue-black");
  });
});

describe("granulated zinc", () => {
  const fizz = [take, cm3("HCl(aq)", 2), { add: "Zn(s)", pieces: 2 }, tryGas("lighted splint")];
  test("fizzes in dilute acid, and the gas pops (Zn + 2 H+ -> Zn^2+ + H2)", () => {
    const [{ readings, gases }] = show(saltWith("Cl-"), fizz);
    expect(gases).toContain("H2");
    expect(readings[0]).toMatchObject({ effervescence: true, gas: { formula: "H2" } });
  });

  test("copper(II) and nitrate in acid leave the engine without an opinion", () => {
    expect(show(saltWith("Cu^2+"), [take, { add: "Zn(s)", pieces: 1 }])[0].readings).toEqual([]);
    expect(show(saltWith("NO3-"), fizz)[0].readings).toEqual([]);
  });
});

test("chlorine water holds the chloride of its hydrolysis, which silver ions find", () => {
  // Cl2 + H2O = HClO + H+ + Cl-, log K -3.4 (halogens.ts): about half of 0.05 mol/dm3. A white precipitate, textbooks, from memory.
  const [shown] = show(saltWith("Ag+"), [take, cm3("Cl2(aq)")]);
  expect(shown.readings).toMatchObject([{ precipitate: { colour: "white" } }]);
  expect(equationsOf([shown])).toEqual(["Ag+(aq) + Cl-(aq) -> AgCl(s)"]);
});
