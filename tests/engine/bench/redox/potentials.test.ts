import { describe, expect, test } from "vitest";
import { halfEquations } from "../../../../src/engine/bench/redox/half-equation.ts";
import { reactions } from "../../../../src/engine/constants/log-k/index.ts";
import { couples, potentialSources } from "../../../../src/engine/constants/potentials.ts";
import { pairGates } from "../../../../src/engine/constants/redox-gates.ts";
import { imbalance, parseEquation } from "../../../../src/engine/formula/equation.ts";

/** R T ln 10 / F at 25 C, V. */
const SLOPE = 0.05916;
const PKW = 13.997;

describe.each(halfEquations)("$couple.id", ({ couple, electrons, oxidised, reduced, shownOxidised, shownReduced }) => {
  test("balances in atoms and charge, with its electrons, as tabulated and as shown", () => {
    for (const text of [couple.half, couple.written ?? couple.half]) {
      const equation = parseEquation(text);
      expect(imbalance(equation)).toEqual({ elements: {}, charge: 0 });
      expect(equation.left.find(({ formula }) => formula.text === "e-")?.coefficient).toBe(electrons);
    }
  });

  test("changes the components the same way as tabulated and as shown", () => {
    const change = (left: typeof oxidised, right: typeof oxidised) => {
      const sum: Record<string, number> = {};
      for (const [side, sign] of [[left, -1] as const, [right, 1] as const]) {
        for (const { components, coefficient } of side) {
          for (const [id, n] of Object.entries(components)) sum[id] = (sum[id] ?? 0) + sign * n * coefficient;
        }
      }
      return Object.fromEntries(Object.entries(sum).filter(([, n]) => n !== 0));
    };
    expect(change(shownOxidised, shownReduced)).toEqual(change(oxidised, reduced));
  });

  test("has a source, and a reason where it is derived", () => {
    expect(potentialSources[couple.source]).toBeDefined();
    expect(couple.source !== "derived" || couple.why !== undefined).toBe(true);
  });
});

test("ids are unique and the gates name only couples of the table", () => {
  const ids = couples.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const { oxidants, reductants } of pairGates) {
    for (const id of [...oxidants, ...reductants]) expect(ids).toContain(id);
  }
});

const volts = (id: string) => couples.find((one) => one.id === id)?.volts ?? Number.NaN;
const logKOf = (start: string) =>
  reactions.find(({ reaction }) => reaction.startsWith(start) || reaction.includes(`= ${start}`))?.logK ?? Number.NaN;

/**
 * log K of the half-equation with H+ in minteq.v4.dat as distributed with PHREEQC (US Geological Survey), electrons, and the OH- the
 * table writes on the right instead of H+ on the left.
 */
const MINTEQ: [id: string, logK: number, electrons: number, hydroxide: number][] = [
  ["MnO4-/Mn^2+", 127.794, 5, 0],
  ["MnO2/Mn^2+", 41.38, 2, 0],
  ["Fe^3+/Fe^2+", 13.032, 1, 0],
  ["Cu^2+/Cu+", 2.69, 1, 0],
  ["air/H2O", 83.0894, 4, 0],
  ["Cr2O7^2-/Cr^3+", 2 * (67.376 + 9.5688) - 14.56, 6, 0],
  ["NO3-/NO2-", 28.57, 2, 2],
  ["NO3-/NH3", 119.077 - 9.244, 8, 9],
];

test.each(MINTEQ)("%s agrees with the equilibrium constant of minteq.v4.dat", (id, logK, electrons, hydroxide) => {
  const expected = (SLOPE * (logK - PKW * hydroxide)) / electrons;
  // Tables of potentials differ by a hundredth of a volt; dichromate by 0.014 V.
  expect(Math.abs(volts(id) - expected)).toBeLessThan(0.015);
});

/** Acid and alkaline form of one couple, and pK of what turns one into the other: E(alkaline) = E(acid) + slope / n * sum of log K. */
test("acid and alkaline forms of a couple agree with each other", () => {
  const pKaPeroxide = 11.65;
  // Two digits where one table has both figures; one where the forms come from different tables or a rounded acid constant (0.05 V).
  expect(volts("HO2-/OH-")).toBeCloseTo(volts("H2O2/H2O") + (SLOPE / 2) * (pKaPeroxide - 3 * PKW), 1);
  expect(volts("O2/HO2-")).toBeCloseTo(volts("O2/H2O2") + (SLOPE / 2) * (-pKaPeroxide - PKW), 1);
  expect(volts("air/OH-")).toBeCloseTo(volts("air/H2O") - SLOPE * PKW, 2);
  expect(volts("H2O/H2")).toBeCloseTo(volts("H+/H2") - SLOPE * PKW, 2);
  const ironLogK = logKOf("Fe(OH)3(s, amorphous)") - logKOf("Fe(OH)2(s)");
  // -0.56 V of the handbook belongs to a less stable iron(III) hydroxide than that of the rows.
  expect(Math.abs(volts("Fe(OH)3/Fe(OH)2") - (volts("Fe^3+/Fe^2+") + SLOPE * (ironLogK - PKW)))).toBeLessThan(0.08);
  const manganese = volts("MnO2/Mn^2+") - (SLOPE / 2) * (logKOf("Mn(OH)2(s)") + 2 * PKW);
  expect(Math.abs(volts("MnO2/Mn(OH)2") - manganese)).toBeLessThan(0.03);
});

test("derived potentials follow from what they are derived from", () => {
  const bisulfite = logKOf("HSO3-") - logKOf("H2SO3");
  expect(volts("SO4^2-/HSO3-")).toBeCloseTo(volts("SO4^2-/H2SO3") + (SLOPE / 2) * bisulfite, 2);
  expect(volts("SO4^2-/SO3^2-")).toBeCloseTo(volts("SO4^2-/H2SO3") - (SLOPE / 2) * (logKOf("H2SO3") + 2 * PKW), 1);
  expect(volts("NO2-/NH3")).toBeCloseTo((8 * volts("NO3-/NH3") - 2 * volts("NO3-/NO2-")) / 6, 2);
  expect(volts("Cu^2+/[Cu(S2O3)2]^3-")).toBeCloseTo(volts("Cu^2+/Cu+") + SLOPE * logKOf("[Cu(S2O3)2]^3-"), 2);
  expect(volts("Fe4[Fe(CN)6]3/Fe^2+")).toBeCloseTo(volts("Fe^3+/Fe^2+") + (SLOPE / 4) * logKOf("Fe4[Fe(CN)6]3(s)"), 2);
});

/** Gibbs energies of formation at 25 C, kJ/mol: NBS tables of chemical thermodynamic properties (1982), from memory. */
const GIBBS = { "S2O3^2-": -522.5, "SO4^2-": -744.53, H2O: -237.13, "HS-": 12.08, SO2: -300.19 };
const FARADAY_KJ = 96.485;

test("the thiosulfate couples follow from Gibbs energies of formation", () => {
  const thiosulfate = GIBBS["S2O3^2-"] + 5 * GIBBS.H2O - 2 * GIBBS["SO4^2-"];
  expect(volts("SO4^2-/S2O3^2-")).toBeCloseTo(-thiosulfate / 8 / FARADAY_KJ, 2);
  expect(volts("S2O3^2-/S")).toBeCloseTo(-(3 * GIBBS.H2O - GIBBS["S2O3^2-"]) / 4 / FARADAY_KJ, 2);
  expect(volts("SO2/S2O3^2-")).toBeCloseTo(-(GIBBS["S2O3^2-"] + GIBBS.H2O - 2 * GIBBS.SO2) / 4 / FARADAY_KJ, 2);
  const sulfide = -(2 * GIBBS["HS-"] + 3 * GIBBS.H2O - GIBBS["S2O3^2-"]) / 8 / FARADAY_KJ;
  expect(volts("S2O3^2-/Ag2S")).toBeCloseTo(sulfide - (SLOPE / 8) * 2 * logKOf("Ag2S(s)"), 2);
});
