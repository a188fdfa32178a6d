/**
 * A set of unknowns drawn by a number: whoever enters the same number for the same practical gets the same set.
 *
 * The number is made into a fraction by mulberry32 (Tommy Ettinger, public domain, 2017; from memory), which mixes neighbouring numbers well.
 */

/** Numbers run from 1 to this one, so that one can be read out in class. */
export const GREATEST_SEED = 999_999;

/** @param seed a whole number from 1 to GREATEST_SEED; throws a RangeError for another, or when there is nothing to draw from */
export function drawnSet<T>(sets: readonly T[], seed: number): T {
  if (!isSeed(seed)) throw new RangeError(`seed: found ${seed}, expected a whole number from 1 to ${GREATEST_SEED}`);
  if (sets.length === 0) throw new RangeError("sets: found none, expected at least one to draw from");
  return sets[Math.floor(mulberry32(seed) * sets.length)];
}

export const isSeed = (seed: number): boolean => Number.isInteger(seed) && seed >= 1 && seed <= GREATEST_SEED;

/** From 0 up to, but not, 1. */
function mulberry32(seed: number): number {
  const state = (seed + 0x6d2b79f5) | 0;
  let mixed = Math.imul(state ^ (state >>> 15), state | 1);
  mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
  return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
}
