/** Amounts as hands measure them: drops, spare, and what a bottle is filled to. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";

/** Volume of `drops` drops, cm3, at 20 drops to 1 cm3. */
export const volumeOfDrops = (drops: number): number => tidy(drops * BENCH_PRACTICE.drop.value);

/**
 * Least volume of alkali, cm3, that takes `sampleCm3` of an aluminium salt through its hydroxide into the aluminate (4 OH- for each
 * Al^3+). Concentrations in mol/dm3. A planned excess below it makes an amphoteric hydroxide look insoluble.
 *
 * @example alkaliForAluminium(1, 0.1, 1) // 0.4
 */
export const alkaliForAluminium = (sampleCm3: number, sample: number, alkali: number): number =>
  tidy((BENCH_PRACTICE.alkaliForAluminium.value * sampleCm3 * sample) / alkali);

/** `needed` with a spare part of it on top, in the same unit. `spare` is a fraction: 0.3 is 30 %. */
export const withSpare = (needed: number, spare: number = BENCH_PRACTICE.spare.value): number =>
  tidy(needed * (1 + spare));

/**
 * What to set out of a reagent, cm3, when the tests use `neededCm3`: half as much again, up to the next 0.5 cm3, never below 2 cm3.
 *
 * @example setOutOfReagent(3.5) // 5.5, from 5.25
 */
export const setOutOfReagent = (neededCm3: number): number =>
  Math.max(BENCH_PRACTICE.setOutLeast.value, upTo(withSpare(neededCm3), BENCH_PRACTICE.setOutStep.value));

/** What to set out of a sample so that a third stays back, up to the next step (0.5 cm3 of a solution, 0.1 g of a solid). */
export const setOutOfSample = (needed: number, of: "solution" | "solid"): number =>
  upTo(
    tidy(needed / (1 - BENCH_PRACTICE.keptBack.value)),
    BENCH_PRACTICE[of === "solution" ? "setOutStep" : "sampleMassStep"].value,
  );

const upTo = (amount: number, step: number): number => tidy(Math.ceil(tidy(amount / step)) * step);

/** Takes the rounding of binary fractions away (3 x 0.05 = 0.15), far below what a dropper can tell. */
export function tidy(amount: number): number {
  return Math.round(amount * 1e6) / 1e6;
}

/** An amount as it is printed: at most two decimals, no trailing zeros. */
export const printed = (amount: number): string => String(Math.round(amount * 100) / 100);

/** A limit as it is printed: to a tenth and never above itself. */
export const printedDown = (limit: number): string => String(Math.floor(tidy(limit * 10)) / 10);
