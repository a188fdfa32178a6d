/** Net ionic equations: all of a large sweep balance, and the well-known ones read as any textbook prints them. */
import { describe, expect, test } from "vitest";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { ANIONS, CATIONS } from "../../../src/engine/constants/ions.ts";
import { imbalance, parseEquation } from "../../../src/engine/formula/equation.ts";
import { cm3, drops, equationsOf, excess, saltWith, show, take, test as tryGas, warm } from "./show.ts";

const SWEEP: Record<string, unknown[][]> = {
  "sodium hydroxide, then excess, then warmed": [
    [take, drops("NaOH(aq)")],
    [excess("NaOH(aq)")],
    [warm, tryGas("damp red litmus")],
  ],
  "ammonia, then excess": [[take, drops("NH3(aq)")], [excess("NH3(aq)")]],
  "sodium carbonate, then excess": [[take, drops("Na2CO3(aq)")], [excess("Na2CO3(aq)")]],
  "potassium iodide, then excess": [[take, drops("KI(aq)")], [excess("KI(aq)")]],
  "hydrochloric acid, then warmed": [
    [take, cm3("HCl(aq)"), tryGas("limewater")],
    [warm, tryGas("acidified manganate(VII) paper")],
  ],
  "nitric acid, silver nitrate, ammonia": [[take, cm3("HNO3(aq)")], [cm3("AgNO3(aq)")], [excess("NH3(aq)")]],
  "silver nitrate alone, ammonia": [[take, drops("AgNO3(aq)")], [excess("NH3(aq)")]],
  "barium chloride, then acid": [[take, cm3("BaCl2(aq)")], [cm3("HCl(aq)", 2)]],
  "sulfuric acid": [[take, cm3("H2SO4(aq)")]],
  "sodium hydroxide and foil, warmed": [
    [take, cm3("NaOH(aq)", 2), { add: "Al(s)", pieces: 1 }, warm, tryGas("damp red litmus")],
  ],
  "sodium hydroxide, boiled": [[take, cm3("NaOH(aq)", 2), { boil: "1 min" }]],
};

describe.each(Object.entries(SWEEP))("%s", (_, tests) => {
  test.each([...CATIONS, ...ANIONS])("%s: every event has an equation that balances", (ion) => {
    const events = show(saltWith(ion), ...tests).flatMap((shown) => shown.events);
    for (const { kind, equation, phase } of events) {
      if (kind === "redox") continue;
      const read = parseEquation(equation ?? "");
      expect(imbalance(read), equation).toEqual({ elements: {}, charge: 0 });
      // It is about the phase it stands beside, and every term says its state.
      const terms = [...read.left, ...read.right].map(({ formula }) => formula);
      expect(terms.map(({ elements }) => elements)).toContainEqual(
        parseEquation(`${phase} = ${phase}`).left[0].formula.elements,
      );
      expect(terms.filter(({ state }) => state === undefined)).toEqual([]);
    }
  });
});

test("the sweep is not an empty one", () => {
  const all = Object.values(SWEEP).flatMap((tests) =>
    ["Zn^2+", "Ag+", "Pb^2+", "Fe^3+"].flatMap((ion) =>
      // Carbonate with an acidic cation is looked at above, one salt at a time.
      ion === "Fe^3+" && JSON.stringify(tests).includes("Na2CO3") ? [] : equationsOf(show(saltWith(ion), ...tests)),
    ),
  );
  expect(new Set(all).size).toBeGreaterThan(20);
});

/** As school textbooks of inorganic chemistry print them, from memory; hydroxido complexes with all their hydroxide. */
const NAOH = "NaOH(aq)";
const NH3 = "NH3(aq)";
const TEXTBOOK: [ion: string, steps: unknown[][], equation: string][] = [
  ["Mg^2+", [[take, drops(NAOH)]], "Mg^2+(aq) + 2 OH-(aq) -> Mg(OH)2(s)"],
  ["Al^3+", [[take, drops(NAOH)]], "Al^3+(aq) + 3 OH-(aq) -> Al(OH)3(s)"],
  ["Al^3+", [[take, drops(NAOH)], [excess(NAOH)]], "Al(OH)3(s) + OH-(aq) -> [Al(OH)4]-(aq)"],
  ["Zn^2+", [[take, drops(NAOH)]], "Zn^2+(aq) + 2 OH-(aq) -> Zn(OH)2(s)"],
  ["Zn^2+", [[take, drops(NAOH)], [excess(NAOH)]], "Zn(OH)2(s) + 2 OH-(aq) -> [Zn(OH)4]^2-(aq)"],
  ["Pb^2+", [[take, drops(NAOH)]], "Pb^2+(aq) + 2 OH-(aq) -> Pb(OH)2(s)"],
  ["Cr^3+", [[take, drops(NAOH)]], "Cr^3+(aq) + 3 OH-(aq) -> Cr(OH)3(s)"],
  ["Cr^3+", [[take, drops(NAOH)], [excess(NAOH)]], "Cr(OH)3(s) + OH-(aq) -> [Cr(OH)4]-(aq)"],
  ["Fe^2+", [[take, drops(NAOH)]], "Fe^2+(aq) + 2 OH-(aq) -> Fe(OH)2(s)"],
  ["Fe^3+", [[take, drops(NAOH)]], "Fe^3+(aq) + 3 OH-(aq) -> Fe(OH)3(s)"],
  ["Cu^2+", [[take, drops(NAOH)]], "Cu^2+(aq) + 2 OH-(aq) -> Cu(OH)2(s)"],
  ["Cu^2+", [[take, cm3(NAOH), { boil: "1 min" }]], "Cu^2+(aq) + 2 OH-(aq) -> CuO(s) + H2O(l)"],
  ["Mn^2+", [[take, drops(NAOH)]], "Mn^2+(aq) + 2 OH-(aq) -> Mn(OH)2(s)"],
  ["Ag+", [[take, drops(NAOH)]], "2 Ag+(aq) + 2 OH-(aq) -> Ag2O(s) + H2O(l)"],
  ["NH4+", [[take, cm3(NAOH), warm, tryGas("damp red litmus")]], "NH4+(aq) + OH-(aq) -> NH3(g) + H2O(l)"],
  ["Al^3+", [[take, drops(NH3)]], "Al^3+(aq) + 3 NH3(aq) + 3 H2O(l) -> Al(OH)3(s) + 3 NH4+(aq)"],
  ["Fe^3+", [[take, drops(NH3)]], "Fe^3+(aq) + 3 NH3(aq) + 3 H2O(l) -> Fe(OH)3(s) + 3 NH4+(aq)"],
  ["Ag+", [[take, drops(NH3)], [excess(NH3)]], "Ag2O(s) + 4 NH3(aq) + H2O(l) -> 2 [Ag(NH3)2]+(aq) + 2 OH-(aq)"],
  ["Ca^2+", [[take, drops("Na2CO3(aq)")]], "Ca^2+(aq) + CO3^2-(aq) -> CaCO3(s)"],
  ["Pb^2+", [[take, drops("KI(aq)")]], "Pb^2+(aq) + 2 I-(aq) -> PbI2(s)"],
  ["Pb^2+", [[take, cm3("H2SO4(aq)")]], "Pb^2+(aq) + SO4^2-(aq) -> PbSO4(s)"],
  ["Ag+", [[take, cm3("HCl(aq)")]], "Ag+(aq) + Cl-(aq) -> AgCl(s)"],
  ["CO3^2-", [[take, cm3("HCl(aq)"), tryGas("limewater")]], "CO3^2-(aq) + 2 H+(aq) -> CO2(g) + H2O(l)"],
  ["SO3^2-", [[take, cm3("HCl(aq)"), warm, tryGas("damp blue litmus")]], "SO3^2-(aq) + 2 H+(aq) -> SO2(g) + H2O(l)"],
  ["SO4^2-", [[take, cm3("BaCl2(aq)")]], "Ba^2+(aq) + SO4^2-(aq) -> BaSO4(s)"],
  ["CO3^2-", [[take, cm3("BaCl2(aq)")]], "Ba^2+(aq) + CO3^2-(aq) -> BaCO3(s)"],
  ["CO3^2-", [[take, cm3("BaCl2(aq)")], [cm3("HCl(aq)", 2)]], "BaCO3(s) + 2 H+(aq) -> CO2(g) + Ba^2+(aq) + H2O(l)"],
  ["Cl-", [[take, cm3("HNO3(aq)"), cm3("AgNO3(aq)")]], "Ag+(aq) + Cl-(aq) -> AgCl(s)"],
  ["Br-", [[take, cm3("HNO3(aq)"), cm3("AgNO3(aq)")]], "Ag+(aq) + Br-(aq) -> AgBr(s)"],
  ["I-", [[take, cm3("HNO3(aq)"), cm3("AgNO3(aq)")]], "Ag+(aq) + I-(aq) -> AgI(s)"],
  ["Cl-", [[take, drops("AgNO3(aq)")], [excess(NH3)]], "AgCl(s) + 2 NH3(aq) -> [Ag(NH3)2]+(aq) + Cl-(aq)"],
];

test.each(TEXTBOOK)("%s, %j: %s", (ion, steps, equation) => {
  expect(equationsOf(show(saltWith(ion), ...steps).slice(-1))).toContain(equation);
});

// 2 Cu^2+ + 4 I- -> 2 CuI + I2 (from memory): half the iodide goes into the solid, also where copper(II) is in excess.
test("copper(II) gives copper(I) iodide with a few drops of iodide as with much of it", () => {
  const { ions } = saltOf("Cu^2+", "SO4^2-");
  const [few] = show(ions, [take, drops("KI(aq)")]);
  const [much] = show(ions, [take, cm3("KI(aq)", 4)]);
  expect(much.readings[0]).toMatchObject({ precipitate: { colour: "off-white" }, solution: "brown" });
  for (const { events } of [few, much]) expect(events.map(({ phase }) => phase)).toContain("CuI(s)");
});
