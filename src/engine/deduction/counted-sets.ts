/** Sets of ions of one kind, where ions that every sample treats alike are only counted. */
import { spend, type Work } from "./work.ts";

export interface Family {
  /** Indices of the ions. */
  members: number[];
  /** What each of them offers at every place. */
  places: Float64Array;
}

/** All sets that hold so many ions of each family. */
export interface CountedSet {
  /** With its sign: how often each such set counts, times how many sets there are. */
  times: number;
  /** For each family, the same for the sets in which one given member stands. */
  timesWith: number[];
  /** What all ions of the set offer together at every place. */
  places: Float64Array;
}

/** What is summed over the sets. */
export interface Count {
  assignments: number;
  /** The same without signs: bounds what rounding could do. */
  magnitude: number;
  /** held[f][place]: assignments in which the place is taken by a given member of family f. */
  held: Float64Array[];
}

/** The number of ways to choose `k` of `n`. */
export function choose(n: number, k: number): number {
  let ways = k < 0 || k > n ? 0 : 1;
  for (let i = 1; i <= Math.min(k, n); i++) ways = (ways * (n - k + i)) / i;
  return ways;
}

/**
 * The sets whose signed sum counts what uses exactly `count` different ions; without a count the one set of all ions.
 * See ion-by-ion.ts for the method.
 */
export function* countedSets(
  families: readonly Family[],
  count: number | undefined,
  work: Work,
): Generator<CountedSet> {
  const ions = families.reduce((sum, { members }) => sum + members.length, 0);
  const size = families[0]?.places.length ?? 0;
  const chosen = families.map(() => 0);
  function* from(f: number, held: number, before: Float64Array): Generator<CountedSet> {
    if (f === families.length) {
      const sign = count === undefined ? 1 : choose(ions - held, count - held) * ((count - held) % 2 === 0 ? 1 : -1);
      const sets = families.map(({ members }, g) => choose(members.length, chosen[g]));
      const times = sets.reduce((product, one) => product * one, sign);
      if (times === 0) return;
      const timesWith = families.map(({ members }, g) => (times * chosen[g]) / members.length);
      yield { times, timesWith, places: before };
      return;
    }
    const { members, places } = families[f];
    spend(work, size);
    const [least, most] =
      count === undefined ? [members.length, members.length] : [0, Math.min(members.length, count - held)];
    for (let taken = least; taken <= most; taken++) {
      chosen[f] = taken;
      const now = taken === 0 ? before : before.map((offered, place) => offered + taken * places[place]);
      yield* from(f + 1, held + taken, now);
    }
  }
  yield* from(0, 0, new Float64Array(size));
}
