/** Gases: from which pressure or volume a test shows them, and how boiling drives them out. */
import { describe, expect, test } from "vitest";
import { boil } from "../../../src/engine/bench/operations.ts";
import { effervescenceReadings, gasReadings } from "../../../src/engine/bench/read-gas.ts";
import type { GasTestSeen, TestTrace } from "../../../src/engine/bench/trace.ts";
import { emptyTube, pour, settle } from "../../../src/engine/bench/tube.ts";
import { VISIBILITY } from "../../../src/engine/constants/visibility.ts";
import { cm3, saltWith, show, solve, take, test as tryGas, warm } from "./show.ts";

const nothing: GasTestSeen = {
  test: "limewater",
  atm: { NH3: 0, SO2: 0, CO2: 0, Cl2: 0 },
  left: { CO2: 0, SO2: 0, H2: 0, O2: 0, NO: 0 },
};
const named = (seen: Partial<GasTestSeen>) =>
  gasReadings({ ...nothing, ...seen }).map((gas) => (gas ? gas.formula : false));

describe("limits", () => {
  // A factor of three about a limit is the doubtful range; the limits themselves stand in VISIBILITY with their sources.
  const NH3 = VISIBILITY.ammonia.value;
  test.each([
    [NH3 * 3.1, ["NH3"]],
    [NH3 * 1.5, ["NH3", false]],
    [NH3 * 0.5, [false, "NH3"]],
    [NH3 * 0.3, [false]],
    [0, [false]],
  ])("damp red litmus at %s atm of ammonia", (pressure, gases) => {
    expect(named({ test: "damp red litmus", atm: { ...nothing.atm, NH3: pressure, SO2: 1, CO2: 1 } })).toEqual(gases);
  });

  test("manganate(VII) paper and blue litmus see sulfur dioxide, not ammonia or carbon dioxide", () => {
    for (const paper of ["acidified manganate(VII) paper", "damp blue litmus"] as const) {
      expect(named({ test: paper, atm: { ...nothing.atm, NH3: 1, CO2: 1 } })).toEqual([false]);
      expect(named({ test: paper, atm: { ...nothing.atm, SO2: 1e-3 } })).toEqual(["SO2"]);
    }
  });

  const NO = VISIBILITY.nitrogenMonoxide.value;
  const Cl2 = VISIBILITY.chlorine.value;
  test.each<[times: number, NO2: unknown[], Cl2: unknown[]]>([
    [3.1, ["NO2"], ["Cl2"]],
    [1.5, ["NO2", false], ["Cl2", false]],
    [0.5, [false, "NO2"], [false, "Cl2"]],
    [0.3, [false], [false]],
  ])("damp blue litmus at %s times the limits of nitrogen dioxide and chlorine", (times, dioxide, chlorine) => {
    const test = "damp blue litmus";
    expect(named({ test, left: { ...nothing.left, NO: NO * times } })).toEqual(dioxide);
    expect(named({ test, atm: { ...nothing.atm, Cl2: Cl2 * times } })).toEqual(chlorine);
  });

  test("no opinion where no table says what nitrogen dioxide or chlorine does", () => {
    const dioxide = { left: { ...nothing.left, NO: 1 } };
    const chlorine = { atm: { ...nothing.atm, Cl2: 0.1 } };
    for (const paper of ["acidified manganate(VII) paper", "acidified dichromate(VI) paper"] as const)
      expect(named({ test: paper, ...dioxide })).toEqual([]);
    expect(named({ test: "rod with ammonia", ...dioxide })).toEqual([]);
    expect(named({ test: "rod with ammonia", ...chlorine })).toEqual([]);
    expect(named({ test: "rod with ammonia" })).toEqual([false]);
  });

  test("limewater: gas that left counts with what is drawn from above, and the greater names it", () => {
    expect(named({ left: { ...nothing.left, CO2: 2 } })).toEqual(["CO2"]);
    expect(named({ left: { ...nothing.left, CO2: 0.5 } })).toEqual(["CO2", false]);
    expect(named({ atm: { ...nothing.atm, SO2: 0.5 } })).toEqual(["SO2"]);
    expect(named({})).toEqual([false]);
  });

  test("splints: hydrogen pops, oxygen relights, neither does the other's work", () => {
    expect(named({ test: "lighted splint", left: { ...nothing.left, H2: 10 } })).toEqual(["H2"]);
    expect(named({ test: "lighted splint", left: { ...nothing.left, O2: 10 } })).toEqual([false]);
    expect(named({ test: "glowing splint", left: { ...nothing.left, O2: 10 } })).toEqual(["O2"]);
    expect(named({ test: "glowing splint", left: { ...nothing.left, H2: 10 } })).toEqual([false]);
    expect(named({ test: "glowing splint" })).toEqual([false]);
  });

  test.each([
    [0.5, 0, [true]],
    [0.1, 0, [false]],
    [0.5, 0.5, [false, true]], // it comes slowly as the tube warms
  ])("%s cm3 of gas, %s of it on heating: bubbles %j", (volume, heatedBubbles, seen) => {
    const trace = { bubbles: new Map([["CO2(g)", volume]]), heatedBubbles, hydrogen: false } as unknown as TestTrace;
    expect(effervescenceReadings(trace)).toEqual(seen);
  });
});

describe("in the tube", () => {
  const litmus = tryGas("damp red litmus");
  test("ammonium with alkali gives no gas in the cold that counts as given off, and gives it warm", () => {
    const [cold, hot] = show(saltWith("NH4+"), [take, cm3("NaOH(aq)")], [warm, litmus]);
    expect(cold.gases).toEqual([]);
    expect(hot.gases).toEqual(["NH3"]);
    expect(hot.readings).toEqual([{ gas: { formula: "NH3", evidence: "damp red litmus turns blue" } }]);
  });
  test("carbonate fizzes with acid; a hundredth of it does not", () => {
    expect(show(saltWith("CO3^2-"), [take, cm3("HCl(aq)")])[0].readings).toEqual([{ effervescence: true }]);
    const traces = Object.fromEntries(Object.entries(saltWith("CO3^2-")).map(([ion, n]) => [ion, n / 100]));
    expect(show(traces, [take, cm3("HCl(aq)")])[0].readings).toEqual([{ none: true }]);
  });
});

describe("halogens over a hot liquid", () => {
  const oxidant = cm3("acidified KMnO4(aq)");
  // Textbooks, from memory: hot acidified manganate(VII) frees bromine and iodine, of chloride at this strength nothing to speak of.
  test.each([
    ["Br-", ["Br2"]],
    ["I-", ["I2"]],
    ["Cl-", []],
  ])("acidified manganate(VII) warmed with %s gives off %j", (ion, gases) => {
    expect(show(saltWith(ion), [take, oxidant, warm])[0].gases).toEqual(gases);
  });

  test("what is displaced stays in a cold liquid", () => {
    expect(show(saltWith("Br-"), [take, cm3("Cl2(aq)")])[0].gases).toEqual([]);
    expect(show(saltWith("I-"), [take, cm3("Cl2(aq)")])[0].gases).toEqual([]);
  });

  test("chlorine counts over warm chlorine water with acid, and where a cold tube is tested for it", () => {
    const mixed = [take, cm3("Cl2(aq)", 2), cm3("H2SO4(aq)", 2)];
    expect(show(saltWith("Cl-"), [...mixed, warm])[0].gases).toEqual(["Cl2"]);
    expect(show(saltWith("Cl-"), [...mixed, tryGas("damp blue litmus")])[0].gases).toEqual(["Cl2"]);
  });
});

describe("boiling ammonia off", () => {
  /** Part of the ammonia left in 10 cm3 of 0.01 mol/dm3 after boiling for so many minutes. */
  function left(minutes: number, perDm3: Record<string, number> = { NH3: 0.01 }): number {
    const tube = emptyTube();
    pour(tube, perDm3, 10);
    settle(tube, solve);
    boil(tube, minutes, solve, () => {});
    return tube.contents.NH3 / 1e-4;
  }

  // Henry's constant at 100 C: log K = 0.5575 (tests/engine/equilibrium/activity.test.ts), 3.610 mol/(kg atm). Steam takes 1/0.018015 =
  // 55.51 mol of vapour a kg at 1 atm, ammonia in it p mol each: dn/n = (55.51/3.610) dW/W = 15.37 dW/W (Rayleigh). 0.3 cm3/min from
  // 10 cm3: after 0.1 min W/W0 = 0.997, n/n0 = 0.997^15.37 = 0.9548; after 1 min 0.97^15.37 = 0.6261.
  test("follows Rayleigh: by hand", () => {
    expect(left(0.1)).toBeCloseTo(0.955, 2);
    // Portions of 2 % are taken at the pressure they begin with, so a little too much goes: first order, 0.5 n (n-1) (0.02)^2 a portion.
    expect(Math.abs(left(1) - 0.626)).toBeLessThan(0.03);
    expect(left(1)).toBeLessThan(0.626);
  });

  test("takes more the longer it boils, and never all of it or more", () => {
    const parts = [0.1, 0.5, 1, 2, 5, 20].map((minutes) => left(minutes));
    expect(parts).toEqual([...parts].sort((a, b) => b - a));
    expect(parts.every((part) => part > 0 && part < 1)).toBe(true);
  });

  test("leaves it where acid holds it as ammonium", () => {
    expect(left(2, { NH3: 0.01, "H+": 0.02, "Cl-": 0.02 })).toBeCloseTo(1, 5);
  });
});

test("copper(II) hydroxide turns black when boiled, not when warmed", () => {
  const alkali = [take, cm3("NaOH(aq)")];
  const colour = (heat: unknown) => show(saltWith("Cu^2+"), [...alkali, heat])[0].readings[0].precipitate;
  expect(colour(warm)).toMatchObject({ colour: "light blue" });
  expect(colour({ boil: "1 min" })).toMatchObject({ colour: "black" });
});

test("an acidic ion and carbonate in one tube: gas leaves and the tube can go on", () => {
  // Textbook: no aluminium carbonate forms; the hydroxide comes down and carbon dioxide leaves (from memory).
  const [first] = show(saltWith("Al^3+"), [take, cm3("Na2CO3(aq)", 0.1)]);
  expect(first.readings[0]).toMatchObject({ precipitate: { colour: "white" } });
  expect(first.events.map(({ phase }) => phase)).toContain("CO2(g)");
});
