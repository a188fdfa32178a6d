/** Equations against the mixtures they are about: no acid in alkali, no alkali in acid, no free ion where a complex holds the metal. */
import { describe, expect, test } from "vitest";
import type { Amounts } from "../../../src/engine/bench/amounts.ts";
import { carryOutTest } from "../../../src/engine/bench/carry-out-test.ts";
import { netIonicEquation } from "../../../src/engine/bench/net-ionic.ts";
import { observe } from "../../../src/engine/bench/observe.ts";
import type { BenchEvent } from "../../../src/engine/bench/prediction.ts";
import { nothingTaken } from "../../../src/engine/bench/sample.ts";
import { emptyTube } from "../../../src/engine/bench/tube.ts";
import { ANIONS, CATIONS } from "../../../src/engine/constants/ions.ts";
import { TEMPERATURE } from "../../../src/engine/constants/kinetic-gates.ts";
import { STANDARD_TESTS } from "../../../src/engine/constants/standard-tests.ts";
import { imbalance, parseEquation } from "../../../src/engine/formula/equation.ts";
import { procedure } from "../../../src/engine/practical.ts";
import { cm3, drops, excess, saltWith, solve, take } from "./show.ts";

interface Told {
  event: BenchEvent;
  /** All that was brought together, and the mixture at the end, mol. */
  before: Amounts;
  after: Amounts;
  pH: number;
}

/** The events of tests that follow one another in a tube, each with its mixture. */
function told(ions: Record<string, number>, tests: readonly unknown[][]): Told[] {
  const [part] = procedure.parse([{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }]);
  const tube = emptyTube();
  const portion = nothingTaken({ ions, molPerDm3: 0.1 });
  const together: Amounts = new Map();
  return part.tests.flatMap((one) => {
    const trace = carryOutTest(one, tube, portion, together, solve, { warm: TEMPERATURE.warm.value, air: true });
    if (trace.unknown) return [];
    const { events } = observe(trace, netIonicEquation);
    return events
      .filter(({ kind, where }) => kind !== "heat" && where === undefined)
      .map((event) => ({ event, before: trace.together, after: trace.end, pH: trace.endPH }));
  });
}

const THIOSULFATE = "Na2S2O3(aq)";
const TESTS: Record<string, unknown[][]> = {
  ...Object.fromEntries(STANDARD_TESTS.map(({ id, tests }) => [id, tests.map((steps) => [...steps])])),
  "silver nitrate, then thiosulfate": [[take, cm3("AgNO3(aq)")], [cm3(THIOSULFATE, 3)]],
  "silver nitrate, boiled": [[take, cm3("AgNO3(aq)"), { boil: "1 min" }]],
  "sodium sulfite, then acidified manganate(VII)": [[take, cm3("Na2SO3(aq)")], [drops("acidified KMnO4(aq)")]],
  "acidified peroxide, then alkali": [[take, drops("acidified H2O2(aq)")], [excess("NaOH(aq)")]],
  "alkali and peroxide, warmed, then acid": [
    [take, cm3("NaOH(aq)", 2), cm3("H2O2(aq)"), { warm: true }],
    [cm3("H2SO4(aq)", 4)],
  ],
  "thiosulfate, then ammonia": [[take, cm3(THIOSULFATE)], [excess("NH3(aq)")]],
  "chromate, then acid": [[take, cm3("K2CrO4(aq)")], [cm3("H2SO4(aq)")]],
  "carbonate, boiled": [[take, cm3("Na2CO3(aq)")], [{ boil: "1 min" }]],
};

const ALKALINE = 9;
const ACIDIC = 5;
/** So much of a reagent was brought that it may stand in an equation, mol. */
const BROUGHT = 1e-6;

describe.each(Object.entries(TESTS))("%s", (_, tests) => {
  test.each([...CATIONS, ...ANIONS])("%s", (ion) => {
    for (const { event, before, after, pH } of told(saltWith(ion), tests)) {
      const equation = parseEquation(event.equation ?? "");
      const { left, right } = equation;
      expect(imbalance(equation), event.equation).toEqual({ elements: {}, charge: 0 });
      const [used, made] = [left, right].map((side) => side.map(({ formula }) => formula.text.replace("(aq)", "")));
      const brought = (id: string) => (before.get(id) ?? 0) > BROUGHT;
      const at = `${event.equation} at pH ${pH.toFixed(1)}`;
      if (pH > ALKALINE)
        expect([made.includes("H+"), used.includes("H+") && !brought("H+")], at).toEqual([false, false]);
      if (pH < ACIDIC)
        expect([made.includes("OH-"), used.includes("OH-") && !brought("OH-")], at).toEqual([false, false]);
      if (event.kind === "precipitate dissolves")
        expect(
          made.filter((id) => boundElsewhere(id, after)),
          at,
        ).toEqual([]);
    }
  });
});

/**
 * True for a free metal ion of which more than half is held in complexes: with ammonia, thiosulfate, halide, hydroxide. Sulfate only pairs
 * with it ([Al(SO4)]+, [Fe(SO4)]+): textbooks write the free ion there, and so do the equations (net-ionic/forms.ts).
 */
function boundElsewhere(id: string, after: Amounts): boolean {
  if (!(CATIONS as readonly string[]).includes(id) || id === "NH4+") return false;
  const metal = id.replace(/\^?\d*\+$/, "");
  const dissolved = [...after].filter(([other]) => !/\(s/.test(other));
  const inComplex = dissolved.filter(([other]) => new RegExp(`^\\[${metal}\\(?(?!SO4)[A-Z]`).test(other));
  const held = inComplex.reduce((sum, [, mol]) => sum + mol, 0);
  return held > (after.get(id) ?? 0);
}

/**
 * Equations as textbooks print them, from memory: photography (fixing) for the silver halides; Vogel and school texts on manganate(VII) in
 * acid, on nitrite, on hydrogencarbonates and on hard water.
 */
const TEXTBOOK: [ion: string, tests: unknown[][], equation: string][] = [
  ["Cl-", [[take, cm3("AgNO3(aq)")], [cm3(THIOSULFATE, 3)]], "AgCl(s) + 2 S2O3^2-(aq) -> [Ag(S2O3)2]^3-(aq) + Cl-(aq)"],
  ["Br-", [[take, cm3("AgNO3(aq)")], [cm3(THIOSULFATE, 3)]], "AgBr(s) + 2 S2O3^2-(aq) -> [Ag(S2O3)2]^3-(aq) + Br-(aq)"],
  ["Ag+", [[take, cm3("MgSO4(aq)", 2)], [{ boil: "1 min" }]], "Ag2SO4(s) -> 2 Ag+(aq) + SO4^2-(aq)"],
  [
    "SO3^2-",
    [[take, drops("acidified KMnO4(aq)")]],
    "2 MnO4-(aq) + 5 SO3^2-(aq) + 6 H+(aq) -> 2 Mn^2+(aq) + 5 SO4^2-(aq) + 3 H2O(l)",
  ],
  ["I-", [[take, drops("acidified H2O2(aq)")]], "H2O2(aq) + 2 I-(aq) + 2 H+(aq) -> I2(aq) + 2 H2O(l)"],
  ["HCO3-", [[take, cm3("H2SO4(aq)")]], "HCO3-(aq) + H+(aq) -> CO2(g) + H2O(l)"],
  ["SO3^2-", [[take, cm3("Cl2(aq)")]], "Cl2(aq) + SO3^2-(aq) + H2O(l) -> 2 Cl-(aq) + SO4^2-(aq) + 2 H+(aq)"],
  ["Fe^2+", [[take, drops("acidified H2O2(aq)")]], "H2O2(aq) + 2 Fe^2+(aq) + 2 H+(aq) -> 2 Fe^3+(aq) + 2 H2O(l)"],
];

test.each(TEXTBOOK)("%s, %j: %s", (ion, tests, equation) => {
  expect(told(saltWith(ion), tests).map(({ event }) => event.equation)).toContain(equation);
});

// Textbooks, from memory: acidified peroxide with iodide goes brown, plainly without bubbles; iodine is no oxidant for a neutral nitrite.
test.each([
  ["I-", [[take, drops("acidified H2O2(aq)")]]],
  ["NO2-", [[take, drops("I2(aq)")]]],
] as [string, unknown[][]][])("%s, %j: no gas", (ion, tests) => {
  const all = told(saltWith(ion), tests).map(({ event }) => event);
  expect(all.filter(({ kind }) => kind === "gas leaves")).toEqual([]);
  if (ion === "NO2-") expect(all.filter(({ kind }) => kind === "redox")).toEqual([]);
});
