/**
 * How near another answer comes to a set of unknowns: the assignments counted by the observations they clash with, as a code is judged by
 * the least distance between two of its words. Exact: counted by dynamic programming over the samples, and only what is near enough is
 * followed, however much the paper allows.
 */
import type { Paths } from "./paths.ts";
import type { Work } from "./work.ts";

export interface NearestOther {
  /**
   * The fewest observations that separate the set from any other assignment the paper allows. 0: another fits as well, so the tests do
   * not decide it. Infinite: the paper allows no other.
   */
  observations: number;
  /** How many other assignments come so near; above 2^53 the nearest number a machine holds. */
  assignments: number;
}

/** Distance looked at first: most sets have another one observation away. */
const FIRST = 1;

/**
 * @param rows rows[s][salt]: how many observations of sample s the salt clashes with. The set clashes with none.
 * @returns undefined when the work allowed does not reach
 */
export function nearestOther(paths: Paths, rows: readonly (readonly number[])[], work: Work): NearestOther | undefined {
  const widest = rows.reduce((sum, row) => sum + row.reduce((most, own) => Math.max(most, own), 0), 0);
  for (let within = FIRST; ; within = within * 2 + 1) {
    const ways = waysWithin(paths, rows, within, work);
    if (!ways) return undefined;
    // One of those that clash with nothing is the set itself.
    ways[0]--;
    const observations = ways.findIndex((count) => count > 0);
    if (observations >= 0) return { observations, assignments: ways[observations] };
    if (within >= widest) return { observations: Number.POSITIVE_INFINITY, assignments: 0 };
  }
}

/** ways[k]: assignments that clash with just k observations, for k up to `within`; undefined when the work allowed does not reach. */
export function waysWithin(
  paths: Paths,
  rows: readonly (readonly number[])[],
  within: number,
  work: Work,
): number[] | undefined {
  const none = () => new Array<number>(within + 1).fill(0);
  const begun = none();
  begun[0] = 1;
  let reached = new Map([[0, begun]]);
  for (const [s, row] of rows.entries()) {
    const next: typeof reached = new Map();
    for (const [state, ways] of reached) {
      const steps = paths.from(s, state);
      work.left -= steps.length;
      if (work.left < 0) return undefined;
      for (const { salt, state: to } of steps) {
        const clashes = row[salt];
        if (clashes > within) continue;
        let sum = next.get(to);
        if (!sum) {
          sum = none();
          next.set(to, sum);
        }
        for (let k = clashes; k <= within; k++) sum[k] += ways[k - clashes];
      }
    }
    reached = next;
  }
  const all = none();
  for (const ways of reached.values()) for (const [k, count] of ways.entries()) all[k] += count;
  return all;
}
