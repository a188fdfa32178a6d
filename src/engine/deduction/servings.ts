/**
 * Serving the samples with the ions of one kind, one ion after the other: each ion goes to a set of samples, possibly to none, and every
 * sample gets one. Dynamic programming over the ions; a state is how many samples of each kin are served and how many ions went to any.
 */
import { type Count, type CountedSet, choose } from "./counted-sets.ts";
import type { Constraint } from "./rules.ts";
import { spend, type Work } from "./work.ts";

/** Samples that are treated alike. */
export interface Kin {
  /** Indices. */
  samples: number[];
  /** For each statement, whether it is about them. */
  within: boolean[];
}

/** An ion goes to so many samples of each kin. */
interface Portion {
  of: number[];
  /** How many of these samples each statement is about. */
  held: number[];
  /** How many levels it lifts. */
  up: number;
  /** The states from which it can be given out, where each leads, and in how many ways. */
  from: Int32Array;
  to: Int32Array;
  ways: Float64Array;
}

/** A multiplication in an array, in steps of the other ways of counting. */
const LIGHT = 1 / 64;

/**
 * @param ions the ions to serve
 * @param about the statements about them
 * @param work what this, and every set served, takes its steps from
 * @returns adds to a sum the ways of serving all samples, where each place (kin by kin, ion by ion) offers so many salts
 */
export function servings(
  kin: readonly Kin[],
  ions: readonly string[],
  about: readonly Constraint[],
  work: Work,
): (set: CountedSet, sum: Count) => void {
  const count = about.flatMap((one) => (one.says === "in all" ? [one.count] : []))[0];
  /** How many ions went to any sample so far: of no account where nothing is said of it. */
  const levels = count === undefined ? 1 : count + 1;
  const states = levels * kin.reduce((product, { samples }) => product * (samples.length + 1), 1);
  spend(work, (states / levels) ** 2);
  const portions = portionsOf(kin, levels, count === undefined ? 0 : 1);
  const allowed = ions.map((ion) => portions.filter((portion) => obeys(portion, ion, about)));
  const moves = allowed.flat().reduce((sum, { from }) => sum + from.length, 0);
  // served[y]: ways to come to each state before ion y is given out. toCome: ways to go on to the end.
  const served = Array.from({ length: ions.length + 1 }, () => new Float64Array(states));
  let toCome = new Float64Array(states);
  let before = new Float64Array(states);
  const taken = new Float64Array(kin.length * ions.length);

  const weight = (of: readonly number[], y: number, places: Float64Array): number => {
    let product = 1;
    for (let k = 0; k < of.length; k++) product *= places[k * ions.length + y] ** of[k];
    return product;
  };

  return ({ times, timesWith, places }, sum) => {
    spend(work, 2 * levels * moves * LIGHT);
    served[0][0] = 1;
    for (let y = 0; y < ions.length; y++) {
      const [now, next] = [served[y], served[y + 1].fill(0)];
      for (const { of, up, from, to, ways } of allowed[y]) {
        const each = weight(of, y, places);
        if (each === 0) continue;
        for (let m = 0; m < from.length; m++) {
          const into = ways[m] * each;
          const end = from[m] + levels - up;
          for (let at = from[m], then = to[m] + up; at < end; at++, then++) next[then] += now[at] * into;
        }
      }
    }
    const all = served[ions.length][states - 1];
    if (all === 0) return;
    sum.assignments += times * all;
    sum.magnitude += Math.abs(times) * all;
    taken.fill(0);
    toCome.fill(0)[states - 1] = 1;
    for (let y = ions.length - 1; y >= 0; y--) {
      const [now, next] = [served[y], toCome];
      before.fill(0);
      for (const { of, up, from, to, ways } of allowed[y]) {
        const each = weight(of, y, places);
        if (each === 0) continue;
        let through = 0;
        for (let m = 0; m < from.length; m++) {
          const into = ways[m] * each;
          const end = from[m] + levels - up;
          for (let at = from[m], then = to[m] + up; at < end; at++, then++) {
            const on = next[then] * into;
            before[at] += on;
            through += now[at] * on;
          }
        }
        for (let k = 0; k < of.length; k++) taken[k * ions.length + y] += through * of[k];
      }
      [toCome, before] = [before, toCome];
    }
    // Samples of a kin, and the salts a place offers, share alike.
    for (let place = 0; place < taken.length; place++) {
      if (taken[place] === 0) continue;
      const each = taken[place] / (kin[Math.floor(place / ions.length)].samples.length * places[place]);
      for (let f = 0; f < timesWith.length; f++) sum.held[f][place] += timesWith[f] * each;
    }
  };
}

/** @param lift levels that an ion lifts when it goes to any sample */
function portionsOf(kin: readonly Kin[], levels: number, lift: number): Portion[] {
  const sizes = kin.map(({ samples }) => samples.length);
  const all = sizes.reduce<number[][]>(
    (lists, size) => lists.flatMap((list) => Array.from({ length: size + 1 }, (_, taken) => [...list, taken])),
    [[]],
  );
  const number = (of: readonly number[]) => levels * of.reduce((index, taken, k) => index * (sizes[k] + 1) + taken, 0);
  return all.map((of) => {
    const before = all.filter((served) => served.every((some, k) => some + of[k] <= sizes[k]));
    return {
      of,
      held: kin[0].within.map((_, at) => of.reduce((sum, taken, k) => sum + (kin[k].within[at] ? taken : 0), 0)),
      up: of.some((taken) => taken > 0) ? lift : 0,
      from: Int32Array.from(before, number),
      to: Int32Array.from(before, (served) => number(served) + number(of)),
      ways: Float64Array.from(before, (served) =>
        of.reduce((product, taken, k) => product * choose(sizes[k] - served[k], taken), 1),
      ),
    };
  });
}

/** Whether an ion may go to these samples, by what is said of its kind. */
function obeys({ held }: Portion, ion: string, about: readonly Constraint[]): boolean {
  return about.every((one, at) => {
    if (one.says === "in all") return true;
    if (one.says === "contains") return one.which !== ion || (held[at] >= one.least && held[at] <= one.most);
    return held[at] === 0 || held[at] === (one.says === "differ" ? 1 : one.samples.length);
  });
}
