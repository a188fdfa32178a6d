/** Sights that come while a tube waits or passes through, recorded as textbooks have them: the salt must still be possible. */
import { describe, expect, test } from "vitest";
import { VISIBILITY } from "../../../src/engine/constants/visibility.ts";
import type { Observation } from "../../../src/engine/practical.ts";
import { concluded } from "./concluded.ts";
import { boilOf, cm3, drops, equationsOf, excess, test as gas, show, take, warm } from "./show.ts";

const plain = (colour: NonNullable<Exclude<Observation["precipitate"], false>>["colour"]): Observation => ({
  precipitate: { colour, amount: "plain" },
});
const ALKALI = [[take, drops("NaOH(aq)")], [excess("NaOH(aq)")]];
const BOILED = [[take, cm3("NaOH(aq)", 2)], [boilOf(1)]];
const FOIL = [
  [take, cm3("NaOH(aq)", 2)],
  [{ add: "Al(s)", pieces: 1 }, warm, gas("damp red litmus")],
];
const AMMONIA = { formula: "NH3", evidence: "damp red litmus turns blue" } as const;
const DEPOSIT = { effervescence: true, gas: AMMONIA } as const;
const SILVER = [[take, drops("Na2S2O3(aq)")], [warm]];

describe("a textbook's record keeps the salt it is of", () => {
  test.each<[string, string, string[], string[], unknown[][], Observation[]]>([
    // Q029 of the published rows: iron(II) "turns brown at the surface on standing in air".
    [
      "browned iron(II) hydroxide",
      "FeSO4",
      ["Fe^2+", "Mg^2+"],
      ["SO4^2-"],
      ALKALI,
      [plain("dirty green"), plain("brown")],
    ],
    // Published rows on manganese(II) with sodium hydroxide: "off-white precipitate stays, browning in air".
    [
      "browned manganese(II) hydroxide",
      "MnSO4",
      ["Mn^2+", "Mg^2+"],
      ["SO4^2-"],
      ALKALI,
      [plain("off-white"), plain("brown")],
    ],
    // Q061: "blue precipitate turning pink (faster on warming)"; it does not dissolve (from memory).
    [
      "cobalt(II) hydroxide, pink in excess",
      "Co(NO3)2",
      ["Co^2+", "Ni^2+"],
      ["NO3-"],
      ALKALI,
      [plain("blue"), plain("pink")],
    ],
    [
      "cobalt(II) hydroxide, pink when boiled",
      "Co(NO3)2",
      ["Co^2+", "Ni^2+"],
      ["NO3-"],
      BOILED,
      [plain("blue"), plain("pink")],
    ],
    // Common practice, no source: a carbonate that has fallen is warmed and looks as it did; only boiling blackens it.
    [
      "copper(II) carbonate, warmed",
      "CuSO4",
      ["Cu^2+", "Ni^2+"],
      ["SO4^2-"],
      [[take, drops("Na2CO3(aq)")], [warm]],
      [{ effervescence: true, ...plain("blue-green") }, { fate: "remains" }],
    ],
    [
      "cobalt(II) hydroxide, left when boiled",
      "Co(NO3)2",
      ["Co^2+", "Ni^2+"],
      ["NO3-"],
      BOILED,
      [plain("blue"), { fate: "remains" }],
    ],
    // Vogel, from memory: silver thiosulfate falls white and blackens, faster when warm.
    [
      "silver thiosulfate, white then black",
      "AgNO3",
      ["Ag+", "Pb^2+"],
      ["NO3-"],
      SILVER,
      [plain("white"), plain("black")],
    ],
    // Textbooks, from memory: acid makes thiosulfate milky, then pale yellow with sulfur.
    ...(["white", "pale yellow", "yellow"] as const).map(
      (colour): [string, string, string[], string[], unknown[][], Observation[]] => [
        `sulfur, ${colour}`,
        "Na2S2O3",
        ["Na+"],
        ["S2O3^2-", "SO3^2-"],
        [[take, cm3("HCl(aq)")]],
        [plain(colour)],
      ],
    ),
    // School texts, from memory: acidified peroxide takes iron(II) from pale green to yellow or yellow-brown, and nothing falls in acid.
    ...(["yellow", "pale yellow", "yellow-brown"] as const).map(
      (solution): [string, string, string[], string[], unknown[][], Observation[]] => [
        `iron(III) from iron(II), ${solution}`,
        "FeSO4",
        ["Fe^2+", "Na+"],
        ["SO4^2-"],
        [[take, cm3("acidified H2O2(aq)")]],
        [{ precipitate: false, solution }],
      ],
    ),
    [
      "iron(II) and chlorine water",
      "FeSO4",
      ["Fe^2+", "Na+"],
      ["SO4^2-"],
      [[take, cm3("Cl2(aq)")]],
      [{ precipitate: false, solution: "yellow" }],
    ],
    // Textbooks, from memory: chlorine frees bromine, a yellow to orange solution.
    ...(["yellow", "orange"] as const).map(
      (solution): [string, string, string[], string[], unknown[][], Observation[]] => [
        `bromine, ${solution}`,
        "NaBr",
        ["Na+"],
        ["Br-", "Cl-"],
        [[take, cm3("Cl2(aq)")]],
        [{ solution }],
      ],
    ),
    // Displacement series, from memory: foil throws lead, silver and copper out.
    [
      "lead on foil",
      "Pb(NO3)2",
      ["Pb^2+", "Na+"],
      ["NO3-"],
      FOIL,
      [{ fate: "dissolves" }, { ...DEPOSIT, ...plain("grey") }],
    ],
    ["silver on foil", "AgNO3", ["Ag+", "Na+"], ["NO3-"], FOIL, [plain("brown"), { ...DEPOSIT, ...plain("black") }]],
    [
      "copper on foil",
      "Cu(NO3)2",
      ["Cu^2+", "Na+"],
      ["NO3-"],
      FOIL,
      [plain("light blue"), { ...DEPOSIT, ...plain("red-brown") }],
    ],
    // Boards' notes, from memory: the brown silver oxide goes again at once in a little more ammonia; many see none.
    ["silver oxide missed", "AgNO3", ["Ag+", "Pb^2+"], ["NO3-"], [[take, drops("NH3(aq)")]], [{ none: true }]],
    // Textbooks, from memory: the flame of potassium is called lilac, violet or purple.
    ["potassium in a purple flame", "KCl", ["K+", "Na+"], ["Cl-"], [[{ flame: true }]], [{ flame: "purple" }]],
  ])("%s", (_, salt, cations, anions, tests, seen) => {
    const id = (at: number) => (tests.length === 1 ? "a" : `a(${["i", "ii"][at]})`);
    const record = Object.fromEntries(seen.map((one, at) => [id(at), one]));
    expect(concluded({ cations, anions, parts: [tests] }, record)).toContain(salt);
  });
});

// Textbooks, from memory: thiosulfate takes the blue from copper(II) solutions, to a copper(I) complex.
test("copper(II) with thiosulfate is paler or colourless, as its equation says", () => {
  const shown = show({ "Cu^2+": 1, "SO4^2-": 1 }, [take, cm3("Na2S2O3(aq)")]);
  expect(equationsOf(shown).some((equation) => equation.includes("S4O6^2-"))).toBe(true);
  const colours = shown[0].readings.map(({ solution }) => solution);
  expect(colours).toContain("pale blue");
  expect(colours).toContain("colourless");
});

// Boards' notes: the first thing sodium hydroxide shows with iron(III) is the precipitate, from acid solution too.
test("iron(III) hydroxide is slow only where iron(II) was oxidised", () => {
  const [seen] = show({ "Fe^3+": 1, "NO3-": 3 }, [take, { add: "NaOH(aq)", drops: 3 }]);
  expect(seen.readings).toEqual([plain("red-brown")]);
});

test("every limit says where it comes from", () => {
  for (const { source } of Object.values(VISIBILITY))
    expect(source).toMatch(/our choice|memory|common practice|tube|stoich|reckoned|log K/);
});
