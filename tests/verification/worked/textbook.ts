/** Constants as the worked examples print them, turned to the way our rows are written. */
import { given } from "./example.ts";
import type { Mixture, Solution } from "./mixture.ts";

/** What the questions of the examples come to, by id, each in its own unit. */
export type Questions = Readonly<Record<string, () => number>>;

export const log = Math.log10;

/** pKw of the examples, unless one prints its own. */
export const PKW = 14;

/** Ksp of a hydroxide as a row has it: dissolving in acid, n OH- written as n water less n H+. */
export const hydroxide = (ksp: number, n: number): number => log(ksp) + n * PKW;

/** Kb of ammonia as its row has it: taking up a proton. */
export const ammonia = (kb: number): number => log(kb) + PKW;

/** Kb of ammonia where an example speaks of its pH without printing it again. */
export const KB = given("W13", "Kb");

/** One dm3 of a solution. */
export const dm3 = (molPerDm3: Readonly<Record<string, number>>): Solution => [1000, molPerDm3];

export const WATER = dm3({});

/** 0.010 mol/dm3 of the nitrate of a doubly charged metal ion in ammonia. */
export const inAmmonia =
  (ion: string) =>
  (nh3: number): Mixture => ({ of: [dm3({ [ion]: 0.01, "NO3-": 0.02, NH3: nh3 })] });
