/** W19 to W40: whether a solid forms, and at which concentration or pH it begins to. */
import { given } from "./example.ts";
import { type Bench, type Mixture, molality, overSaturation, type Solution, textbookBench, where } from "./mixture.ts";
import { ammonia, dm3, hydroxide, KB, log, type Questions } from "./textbook.ts";

/** Magnesium or calcium with hydroxide, and ammonia with its proton. */
const magnesium = (ksp: number) => ({ "Mg(OH)2(s, active)": hydroxide(ksp, 2), "NH4+": ammonia(KB) });
const calcium = (ksp: number) => ({ "Ca(OH)2(s)": hydroxide(ksp, 2), "NH4+": ammonia(KB) });

/** Ion product over solubility product of what is poured together. */
const ratio = (logK: Readonly<Record<string, number>>, solid: string, ...of: Solution[]): number =>
  overSaturation(textbookBench(logK).mix({ of }), solid);

/** The mixture in which a solid just begins to form, while one of its amounts is changed between two, given as logarithms. */
const justForming = (
  bench: Bench,
  solid: string,
  mixture: (amount: number) => Mixture,
  logs: readonly [number, number],
) =>
  where(
    (x) => bench.mix(mixture(10 ** x)),
    (result) => overSaturation(result, solid),
    1,
    logs,
  );

/** pH at which the hydroxide of 0.10 mol/dm3 of a metal ion begins to form as nitric acid grows less. */
function pHOfForming(logK: number, solid: string, ion: string, charge: number): number {
  const mixture = (acid: number) => ({ of: [dm3({ [ion]: 0.1, "NO3-": 0.1 * charge + acid, "H+": acid })] });
  return justForming(textbookBench({ [solid]: logK }), solid, mixture, [-9, 0]).pH;
}

/** 0.010 mol/dm3 of each halide, to which silver is added until a further halide begins to form. */
function silverUntil(starts: string, after: readonly string[], [from, to]: readonly [number, number]) {
  const bench = textbookBench({
    "AgCl(s)": log(given("W38", "Ksp")),
    "AgBr(s)": log(given("W37", "Ksp")),
    "AgI(s)": log(given("W36", "Ksp AgI")),
  });
  const mixture = (silver: number): Mixture => ({
    of: [dm3({ "Na+": 0.03, "Cl-": 0.01, "Br-": 0.01, "I-": 0.01, "Ag+": silver, "NO3-": silver })],
    forming: after,
  });
  return justForming(bench, starts, mixture, [log(from), log(to)]);
}
const untilIodide = () => silverUntil("AgI(s)", [], [1e-17, 1e-3]);
const untilBromide = () => silverUntil("AgBr(s)", ["AgI(s)"], [5e-3, 1.5e-2]);
const untilChloride = () => silverUntil("AgCl(s)", ["AgI(s)", "AgBr(s)"], [1.5e-2, 2.5e-2]);

const MAGNESIUM_NITRATE: Solution = [1, { "Mg^2+": 0.1, "NO3-": 0.2 }];
const CALCIUM_NITRATE: Solution = [1, { "Ca^2+": 0.1, "NO3-": 0.2 }];
const SODIUM_HYDROXIDE: Solution = [1, { "Na+": 1, "OH-": 1 }];
const SODIUM_SULFATE: Solution = [1, { "Na+": 0.2, "SO4^2-": 0.1 }];

export const PRECIPITATION: Questions = {
  W19: () => ratio(magnesium(given("W19", "Ksp")), "Mg(OH)2(s, active)", MAGNESIUM_NITRATE, [1, { NH3: 1 }]),
  W20: () =>
    ratio(magnesium(given("W20", "Ksp")), "Mg(OH)2(s, active)", MAGNESIUM_NITRATE, [
      1,
      { NH3: 1, "NH4+": 1, "Cl-": 1 },
    ]),
  W21: () =>
    ratio(magnesium(given("W20", "Ksp")), "Mg(OH)2(s, active)", MAGNESIUM_NITRATE, [
      1,
      { NH3: 1, "NH4+": 2, "Cl-": 2 },
    ]),
  W22: () => ratio(calcium(given("W22", "Ksp")), "Ca(OH)2(s)", CALCIUM_NITRATE, [1, { NH3: 1 }]),
  W23: () => ratio(calcium(given("W23", "Ksp")), "Ca(OH)2(s)", CALCIUM_NITRATE, SODIUM_HYDROXIDE),
  W24: () =>
    molality(
      justForming(
        textbookBench(calcium(given("W24", "Ksp"))),
        "Ca(OH)2(s)",
        (ca) => ({ of: [dm3({ "Na+": 0.5, "OH-": 0.5, "Ca^2+": ca, "NO3-": 2 * ca })] }),
        [-7, -2],
      ),
      "Ca^2+",
    ),
  W25: () =>
    ratio(
      { "Ba(OH)2*8H2O(s)": hydroxide(given("W25", "Ksp Ba(OH)2.8H2O"), 2) },
      "Ba(OH)2*8H2O(s)",
      [1, { "Ba^2+": 0.1, "NO3-": 0.2 }],
      SODIUM_HYDROXIDE,
    ),
  W26: () => pHOfForming(hydroxide(given("W26", "Ksp Fe(OH)3"), 3), "Fe(OH)3(s, amorphous)", "Fe^3+", 3),
  W27: () => pHOfForming(hydroxide(given("W27", "Ksp"), 2), "Fe(OH)2(s)", "Fe^2+", 2),
  W28: () => pHOfForming(given("W28", "log K Cu(OH)2 + 2H+"), "Cu(OH)2(s)", "Cu^2+", 2),
  W29: () => pHOfForming(given("W29", "log K"), "Zn(OH)2(s, amorphous)", "Zn^2+", 2),
  W30: () => pHOfForming(given("W30", "log K Al(OH)3(am)+3H+"), "Al(OH)3(s, amorphous)", "Al^3+", 3),
  W31: () => pHOfForming(given("W31", "log K Pb(OH)2"), "Pb(OH)2(s, aged)", "Pb^2+", 2),
  W32: () =>
    molality(
      justForming(
        textbookBench({ "AgCl(s)": log(given("W32", "Ksp")) }),
        "AgCl(s)",
        (cl) => ({ of: [dm3({ "Ag+": 0.025, "NO3-": 0.025, "Na+": cl, "Cl-": cl })] }),
        [-10, -3],
      ),
      "Cl-",
    ),
  W33: () =>
    molality(
      justForming(
        textbookBench({ "PbCl2(s)": log(given("W33", "Ksp")) }),
        "PbCl2(s)",
        (cl) => ({ of: [dm3({ "Pb^2+": 0.05, "NO3-": 0.1, "Na+": cl, "Cl-": cl })] }),
        [-4, 0],
      ),
      "Cl-",
    ),
  W34: () => ratio({ "CaSO4*2H2O(s)": log(given("W34", "Ksp")) }, "CaSO4*2H2O(s)", CALCIUM_NITRATE, SODIUM_SULFATE),
  W35: () =>
    ratio(
      { "Ag2SO4(s)": log(given("W35", "Ksp Ag2SO4")) },
      "Ag2SO4(s)",
      [1, { "Ag+": 0.05, "NO3-": 0.05 }],
      SODIUM_SULFATE,
    ),
  W36: () => molality(untilIodide(), "Ag+"),
  W37: () => molality(untilBromide(), "Ag+"),
  W38: () => molality(untilChloride(), "Ag+"),
  W39: () => molality(untilChloride(), "I-"),
  W40: () => (molality(untilChloride(), "Br-") / 0.01) * 100,
};
