/** What a test is for, in a few words: "tells apart which cation: 5 groups of 9". */
import type { Purpose } from "../../engine/deduction/conclusion.ts";
import { list } from "../sentence.ts";

/** Groups up to this size are named when a test sets them apart from all others. */
const NAMED = 2;

/** The different sets of ions of one kind that share a sight. */
function groupsOf(purpose: Purpose, kind: "cation" | "anion"): string[][] {
  const sets = new Map<string, string[]>();
  for (const group of purpose.groups) {
    const ions = group[`${kind}s`];
    sets.set(ions.join(), ions);
  }
  return [...sets.values()];
}

/** One phrase for each kind of ion the test tells apart; none when all allowed salts look the same. */
export function purposeWords(purpose: Purpose): string[] {
  return purpose.tellsApart.map((kind) => {
    const groups = groupsOf(purpose, kind);
    const all = new Set(groups.flat()).size;
    const [small] = groups.toSorted((a, b) => a.length - b.length);
    if (groups.length === 2 && small.length <= NAMED && small.length < all - 1) return `${list(small)} from all others`;
    return `which ${kind}: ${groups.length} groups of ${all} ions`;
  });
}
