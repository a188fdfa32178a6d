/** How much is added: drops, a volume, or "in excess". One rule for the bench and for its plan. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import type { Addition } from "../practical.ts";

/**
 * Volume of "in excess", cm3, for `sampleCm3` of sample solution taken (0 for a solid): BENCH_PRACTICE.excess, or three times a larger
 * sample.
 */
export const excessVolume = (sampleCm3: number): number =>
  Math.max(BENCH_PRACTICE.excess.value, BENCH_PRACTICE.excessTimesSample.value * sampleCm3);

/** Volume of an addition to `sampleCm3` of sample solution taken, cm3; 0 for pieces of a solid. */
export function volumeAdded(amount: Addition, sampleCm3: number): number {
  if ("drops" in amount) return amount.drops * BENCH_PRACTICE.drop.value;
  if ("volume" in amount) return amount.volume.cm3;
  return "pieces" in amount ? 0 : excessVolume(sampleCm3);
}
