/**
 * The sets of unknowns that can be made up from a store: a salt for every sample so that what the paper says holds. No salt is given out
 * twice, unless the paper says that the samples are the same; samples that could change places make no new set by doing so. None is given
 * out where a test of the paper would be unsafe on it.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Paths, Step } from "./paths.ts";
import type { Constraint, Rule } from "./rules.ts";
import type { Work } from "./work.ts";

/** Salts (indices), one for each sample. */
export type UnknownSet = number[];

export interface SetsFound {
  sets: UnknownSet[];
  /** These are all there are. */
  complete: boolean;
}

/** No test that is done on sample s is unsafe on the salt. */
export const isSafe = ({ samples, cells }: PredictionTable, s: number, salt: number): boolean =>
  !cells.some((cell) => cell.unsafeOn?.includes(salt) && cell.samples.includes(samples[s].label));

/**
 * All sets, or when there are more than `most`, so many at most from all over the store. Within a set, samples that could change places
 * hold their salts in the order of the table.
 * @param store salts (indices) to choose from
 */
export function setsOfUnknowns(
  table: PredictionTable,
  rules: readonly Rule[],
  paths: Paths,
  store: readonly number[],
  most: number,
  work: Work,
): SetsFound {
  const place = spreadOrder(table, store);
  const group = interchangeable(table, rules);
  const sames = rules.flatMap(({ about }) => about.flatMap((one) => (one.says === "same" ? [one.samples] : [])));
  const areSame = (a: number, b: number) => sames.some((samples) => samples.includes(a) && samples.includes(b));
  const fits = (set: UnknownSet, salt: number): boolean => {
    const s = set.length;
    const before = set.findLast((_, other) => group[other] === group[s]);
    if (before !== undefined && place[salt] < place[before]) return false;
    return set.every((other, at) => other !== salt || areSame(at, s));
  };
  const fromStore = stepsWithin(paths, place, work, (s, salt) => isSafe(table, s, salt));
  /** Sets that begin in this way, at most `quota`; evenly: each way to go on gets an equal part of what is left of it. */
  const begun = (state: number, set: UnknownSet, quota: number, evenly: boolean, found: UnknownSet[]): void => {
    if (set.length === paths.length) {
      found.push(set);
      return;
    }
    const open = fromStore(set.length, state).filter(({ salt }) => fits(set, salt));
    // What comes last in the order has the fewest sets after it and may not use up its part; the rest goes to those before.
    if (evenly) open.reverse();
    const before = found.length;
    for (const [index, { salt, state: next }] of open.entries()) {
      const left = quota - (found.length - before);
      if (left <= 0 || work.left < 0) return;
      begun(next, [...set, salt], evenly ? Math.ceil(left / (open.length - index)) : left, evenly, found);
    }
  };
  const ordered = (sets: UnknownSet[]) => sets.map((set) => inOrder(set, group));
  const first: UnknownSet[] = [];
  begun(0, [], most + 1, false, first);
  if (first.length <= most && work.left >= 0) return { sets: ordered(first), complete: true };
  const some: UnknownSet[] = [];
  begun(0, [], most, true, some);
  // Where the work was used up at once, what was found before is better than nothing.
  return { sets: ordered(some.length > 0 ? some : first.slice(0, most)), complete: false };
}

/** The steps that give a salt of the store that is safe there, in the store's order. */
function stepsWithin(
  paths: Paths,
  place: readonly number[],
  work: Work,
  safe: (s: number, salt: number) => boolean,
): Paths["from"] {
  const known = Array.from({ length: paths.length }, () => new Map<number, readonly Step[]>());
  return (s, state) => {
    const own = known[s].get(state) ?? [];
    work.left -= own.length;
    if (known[s].has(state)) return own;
    const all = paths.from(s, state);
    work.left -= all.length;
    const within = all
      .filter(({ salt }) => salt in place && safe(s, salt))
      .sort((a, b) => place[a.salt] - place[b.salt]);
    known[s].set(state, within);
    return within;
  };
}

/**
 * place[salt]: an order in which neighbours have neither cation nor anion in common, so that a part of it is a fair one. No entry for a salt
 * that is not in the store.
 */
function spreadOrder({ salts }: PredictionTable, store: readonly number[]): number[] {
  const cations = [...new Set(salts.map((salt) => salt.cations.join()))];
  const anions = [...new Set(salts.map((salt) => salt.anions.join()))];
  const at = (salt: number) => cations.indexOf(salts[salt].cations.join());
  const diagonal = (salt: number) => (anions.indexOf(salts[salt].anions.join()) + at(salt)) % anions.length;
  const order = [...new Set(store)].sort((a, b) => diagonal(a) - diagonal(b) || at(a) - at(b) || a - b);
  const place: number[] = [];
  for (const [index, salt] of order.entries()) place[salt] = index;
  return place;
}

/** The first sample with which each could change places without any test or statement being another; often itself. */
export function interchangeable({ samples, cells }: PredictionTable, rules: readonly Rule[]): number[] {
  const about = rules.flatMap((rule) => rule.about);
  const written = (of: (sample: number) => number) => {
    const renamed = (one: Constraint) =>
      one.says === "in all" ? one : { ...one, samples: one.samples.map(of).sort((a, b) => a - b) };
    return about
      .map((one) => JSON.stringify(renamed(one)))
      .sort()
      .join();
  };
  const asSaid = written((sample) => sample);
  const alike = (a: number, b: number) =>
    samples[a].set === samples[b].set &&
    cells.every((cell) => cell.samples.includes(samples[a].label) === cell.samples.includes(samples[b].label)) &&
    written((sample) => (sample === a ? b : sample === b ? a : sample)) === asSaid;
  return samples.map((_, s) => samples.findIndex((_, before) => before === s || (before < s && alike(before, s))));
}

/** The set with the salts of interchangeable samples in the order of the table. */
function inOrder(set: UnknownSet, group: readonly number[]): UnknownSet {
  const waiting = set.map((_, s) => set.filter((_, other) => group[other] === group[s]).sort((a, b) => a - b));
  const turn = (s: number) => group.slice(0, s).filter((one) => one === group[s]).length;
  return set.map((_, s) => waiting[s][turn(s)]);
}

/**
 * How many ways there are to fill groups of interchangeable places from lists of salts, no salt twice: sets of unknowns counted without
 * writing them down, where the paper ties no samples together. Exact up to 2^53.
 */
export function countSets(groups: readonly { places: number; salts: readonly number[] }[]): number {
  let ways = new Map([[groups.map(() => 0).join(), 1]]);
  for (const salt of new Set(groups.flatMap(({ salts }) => salts))) {
    const next = new Map(ways);
    for (const [key, count] of ways) {
      const filled = key.split(",").map(Number);
      groups.forEach(({ places, salts }, g) => {
        if (filled[g] === places || !salts.includes(salt)) return;
        const more = filled.with(g, filled[g] + 1).join();
        next.set(more, (next.get(more) ?? 0) + count);
      });
    }
    ways = next;
  }
  return ways.get(groups.map(({ places }) => places).join()) ?? 0;
}
