/** W41 to W56: silver halides and hydroxides in ammonia, and hydroxides in alkali. */
import { given } from "./example.ts";
import { type Bench, inFreeAmmonia, molality, overSaturation, rowOf, textbookBench, where } from "./mixture.ts";
import { solubility } from "./solubility-and-ph.ts";
import { ammonia, dm3, hydroxide, inAmmonia, KB, log, type Questions } from "./textbook.ts";

type Result = ReturnType<Bench["mix"]>;
const freeHydroxide = (result: Result) => molality(result, "OH-");
const pH = (result: Result) => result.pH;

/** Silver that ammonia holds over a halide, mol/dm3; the examples leave out that ammonia takes up protons. */
const silverInAmmonia = (solid: string, ksp: number, kf: number, nh3 = 1): number =>
  solubility({ [solid]: log(ksp), "[Ag(NH3)2]+": log(kf) }, solid, "Ag+", dm3({ NH3: nh3 }));

/** mol/dm3 of a hydroxo complex over its hydroxide, in sodium hydroxide of the strength that brings a reading to a figure. */
function overHydroxide(
  bench: Bench,
  solid: string,
  complex: string,
  reading: (result: Result) => number,
  wanted: number,
): number {
  const alkali = (mol: number) => bench.mix({ of: [dm3({ "Na+": mol, "OH-": mol })], over: solid });
  return molality(where(alkali, reading, wanted, [1e-4, 5]), complex);
}

/** Zincate over its hydroxide at a concentration of free hydroxide. */
export const zincate = (bench: Bench, free: number): number =>
  overHydroxide(bench, "Zn(OH)2(s, amorphous)", "[Zn(OH)4]^2-", freeHydroxide, free);

/** Zinc that 1.0 mol/dm3 of free ammonia holds over its hydroxide; nitric acid keeps [OH-] at the figure of the question. */
export function zincInAmmonia(bench: Bench): number {
  const acidified = (acid: number) =>
    inFreeAmmonia(bench, (nh3) => ({
      of: [dm3({ NH3: nh3, "H+": acid, "NO3-": acid })],
      over: "Zn(OH)2(s, amorphous)",
    }));
  return bench.dissolved(where(acidified, freeHydroxide, 4.2e-3, [0, 0.5]), "Zn^2+");
}

const aluminate = (at: number): number => {
  const bench = textbookBench({
    "Al(OH)3(s, amorphous)": given("W53", "log K"),
    "[Al(OH)4]-": given("W53", "log beta"),
  });
  return overHydroxide(bench, "Al(OH)3(s, amorphous)", "[Al(OH)4]-", pH, at);
};

const ZINC = {
  "Zn(OH)2(s, amorphous)": given("W51", "log K Zn(OH)2(am)+2H+"),
  "[Zn(OH)4]^2-": given("W51", "log K Zn2+ +4H2O"),
  "OH-": -given("W51", "pKw"),
};
const COPPER = { "[Cu(NH3)4]^2+": log(given("W47", "Kf")) };

export const COMPLEXES: Questions = {
  W41: () => silverInAmmonia("AgCl(s)", given("W41", "Ksp"), given("W41", "Kf Ag(NH3)2+")),
  W42: () => silverInAmmonia("AgBr(s)", given("W42", "Ksp"), given("W42", "Kf")),
  W43: () => silverInAmmonia("AgI(s)", given("W43", "Ksp"), given("W43", "Kf")),
  // mmol in 3 cm3 of sample, silver nitrate and ammonia; the sodium nitrate of the mixture takes no part.
  W44: () => 3 * silverInAmmonia("AgCl(s)", given("W41", "Ksp"), given("W41", "Kf Ag(NH3)2+"), 1 / 3),
  W47: () => molality(inFreeAmmonia(textbookBench(COPPER), inAmmonia("Cu^2+")), "Cu^2+"),
  W48: () => {
    const bench = textbookBench({ ...COPPER, "Cu(OH)2(s)": hydroxide(given("W48", "Ksp"), 2), "NH4+": ammonia(KB) });
    return overSaturation(inFreeAmmonia(bench, inAmmonia("Cu^2+")), "Cu(OH)2(s)");
  },
  W49: () => {
    const bench = textbookBench({ "[Zn(NH3)4]^2+": given("W49", "log beta4") });
    return molality(inFreeAmmonia(bench, inAmmonia("Zn^2+")), "Zn^2+");
  },
  W50: () =>
    zincInAmmonia(
      textbookBench({
        "Zn(OH)2(s, amorphous)": given("W50", "log *Ks Zn(OH)2(am)"),
        "[Zn(NH3)4]^2+": given("W50", "log beta4"),
        "NH4+": ammonia(KB),
      }),
    ),
  W51: () => zincate(textbookBench(ZINC), 1),
  W52: () => zincate(textbookBench(ZINC), 0.4),
  W53: () => aluminate(12),
  W54: () => aluminate(given("W54", "pH")),
  W55: () => {
    const bench = textbookBench({
      "Pb(OH)2(s, aged)": given("W55", "log K"),
      "[Pb(OH)3]-": given("W55", "log beta3"),
    });
    return overHydroxide(bench, "Pb(OH)2(s, aged)", "[Pb(OH)3]-", freeHydroxide, 1);
  },
  // The example writes chromium(III) as Cr(OH)2+, our rows as Cr^3+: the shipped step between them cancels.
  W56: () => {
    const step = rowOf("[Cr(OH)2]+").logK;
    const bench = textbookBench({
      "[Cr(OH)2]+": step,
      "Cr(OH)3(s, amorphous)": given("W56", "log K am") - step,
      "[Cr(OH)4]-": given("W56", "log K Cr(OH)2+ + 2H2O") + step,
    });
    return overHydroxide(bench, "Cr(OH)3(s, amorphous)", "[Cr(OH)4]-", pH, 14);
  },
};
