/** Smallest sets that have an element in common with each of some sets. Exact, by branching on the first set not yet met. */

/** Elements by number. */
export type Elements = readonly number[];

/**
 * All smallest hitting sets, each in ascending order, in the order in which branching meets them; at most `most`. The empty set when there is
 * nothing to hit; none when one of the sets is empty or no hitting set has at most `limit` elements.
 */
export function smallestHittingSets(sets: readonly Elements[], limit: number, most: number): number[][] {
  if (sets.some(({ length }) => length === 0)) return [];
  // Short sets first: fewer branches.
  const ordered = sets.toSorted((a, b) => a.length - b.length);
  for (let size = lowerBound(ordered); size <= limit; size++) {
    const found = new Map<string, number[]>();
    branch(ordered, [], new Set(), size, found, most);
    if (found.size > 0) return [...found.values()];
  }
  return [];
}

/** Sets without a common element need an element each. */
function lowerBound(sets: readonly Elements[]): number {
  const taken = new Set<number>();
  let apart = 0;
  for (const set of sets) {
    if (set.some((element) => taken.has(element))) continue;
    for (const element of set) taken.add(element);
    apart++;
  }
  return apart;
}

/** @param barred elements tried before on this path: sets with them have been found already */
function branch(
  sets: readonly Elements[],
  chosen: readonly number[],
  barred: ReadonlySet<number>,
  left: number,
  found: Map<string, number[]>,
  most: number,
): void {
  const open = sets.find((set) => !set.some((element) => chosen.includes(element)));
  if (!open) {
    const set = [...chosen].sort((a, b) => a - b);
    found.set(set.join(), set);
    return;
  }
  if (left === 0) return;
  const tried = new Set(barred);
  for (const element of open) {
    if (found.size >= most) return;
    if (barred.has(element)) continue;
    branch(sets, [...chosen, element], tried, left - 1, found, most);
    tried.add(element);
  }
}
