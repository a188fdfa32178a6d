/**
 * A smallest set that has an element in common with each of some sets. Exact: sets that share no element with the rest are solved apart;
 * within a group, branch and bound on the shortest set not yet met, with sets that share no element as the bound.
 */
import { spend, type Work } from "./work.ts";

/** Elements by number. */
export type Elements = readonly number[];

/**
 * A smallest hitting set in ascending order; empty when there is nothing to hit. Undefined when one of the sets is empty, or when none has
 * as few as `limit` elements.
 * @throws TooMuchWork
 */
export function smallestHittingSet(
  sets: readonly Elements[],
  work: Work,
  limit = Number.POSITIVE_INFINITY,
): number[] | undefined {
  if (sets.some(({ length }) => length === 0)) return undefined;
  const chosen: number[] = [];
  for (const group of connected(withoutSupersets(sets))) {
    const found = smallestFor(group, limit - chosen.length, work);
    if (!found) return undefined;
    chosen.push(...found);
  }
  return chosen.sort((a, b) => a - b);
}

/** What hits a set hits every set that holds all of it. The shortest first. */
function withoutSupersets(sets: readonly Elements[]): Elements[] {
  const kept: Elements[] = [];
  for (const set of sets.toSorted((a, b) => a.length - b.length)) {
    const has = new Set(set);
    if (!kept.some((smaller) => smaller.every((element) => has.has(element)))) kept.push(set);
  }
  return kept;
}

/** The sets in groups, such that sets of different groups have no element in common. */
function connected(sets: readonly Elements[]): Elements[][] {
  const groups: { elements: Set<number>; sets: Elements[] }[] = [];
  for (const set of sets) {
    const joined = { elements: new Set(set), sets: [set] };
    for (let g = groups.length - 1; g >= 0; g--) {
      if (!set.some((element) => groups[g].elements.has(element))) continue;
      const [group] = groups.splice(g, 1);
      for (const element of group.elements) joined.elements.add(element);
      joined.sets.push(...group.sets);
    }
    groups.push(joined);
  }
  return groups.map((group) => group.sets);
}

function smallestFor(sets: readonly Elements[], limit: number, work: Work): number[] | undefined {
  for (let size = apart(sets); size <= limit; size++) {
    const found = branch(sets, [], new Set(), size, work);
    if (found) return found;
  }
  return undefined;
}

/** Sets without a common element need an element each: so many at least. */
function apart(sets: readonly Elements[]): number {
  const taken = new Set<number>();
  let count = 0;
  for (const set of sets.toSorted((a, b) => a.length - b.length)) {
    if (set.some((element) => taken.has(element))) continue;
    for (const element of set) taken.add(element);
    count++;
  }
  return count;
}

/** @param barred elements tried before on this path: what they lead to has been looked at */
function branch(
  open: readonly Elements[],
  chosen: readonly number[],
  barred: ReadonlySet<number>,
  left: number,
  work: Work,
): number[] | undefined {
  spend(work, open.length);
  if (open.length === 0) return [...chosen];
  const usable = barred.size === 0 ? open : open.map((set) => set.filter((element) => !barred.has(element)));
  if (usable.some(({ length }) => length === 0) || apart(usable) > left) return undefined;
  const shortest = usable.reduce((a, b) => (b.length < a.length ? b : a));
  const tried = new Set(barred);
  for (const element of shortest) {
    const found = branch(
      usable.filter((set) => !set.includes(element)),
      [...chosen, element],
      tried,
      left - 1,
      work,
    );
    if (found) return found;
    tried.add(element);
  }
  return undefined;
}
