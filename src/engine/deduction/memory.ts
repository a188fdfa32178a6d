/**
 * What must be remembered of one kind of ion while salts are given to the samples one after the other: which ions were used, which are
 * bound by a statement about a group of samples, and how many samples of a group held an ion. Ions that every sample treats alike are
 * interchangeable: of states that differ only by exchanging such ions one is kept. States are made when they are first asked for.
 */
import type { Constraint } from "./rules.ts";
import { spend, type Work } from "./work.ts";

export interface Move {
  /** The ions taken are of this family. */
  family: number;
  /** State before the next sample. */
  next: number;
  /** How many choices of the family can be taken to the same effect. */
  ways: number;
}

export interface Memory {
  /** What can be taken for sample s from a state. State 0 is the only one before the first sample. */
  moves(s: number, state: number): Move[];
  /** How many states there are before sample s. */
  states(s: number): number;
}

/** Ions of one kind that something holds together, by index, ascending. */
export type Holding = readonly number[];

/** The choices of each sample, for one kind of ion. */
export interface Choices {
  /** All different holdings. */
  holdings: Holding[];
  /** family[h]: equal for holdings that every sample treats alike; holdings of several ions are each of their own. */
  family: number[];
  /** open[s]: which holdings sample s can have, by index. */
  open: number[][];
  /** The ions, by index. */
  names: readonly string[];
}

/** An ion's condition has one bit for "used" and one for each group. */
const MOST_GROUPS = 15;

type Group = Extract<Constraint, { says: "share" | "differ" | "same" }>;

/** What a sample's turn does to the conditions: masks over an ion's bits. */
interface Layer {
  /** Set for each ion taken. */
  taken: number;
  /** One mask for each group of which some ion taken must have the bit, and only those keep it. */
  bound: number[];
  /** One mask for each group whose ions must be taken, all and no other. */
  exact: number[];
  /** Bits that no ion taken may have. */
  barred: number;
  /** Bits that mean nothing any more after this turn. */
  closed: number;
}

function layersOf(samples: number, groups: readonly Group[], counting: boolean): Layer[] {
  return Array.from({ length: samples }, (_, s) => {
    const layer: Layer = { taken: counting ? 1 : 0, bound: [], exact: [], barred: 0, closed: 0 };
    groups.forEach(({ says, samples }, g) => {
      const bit = 2 << g;
      if (!samples.some((other) => other > s)) layer.closed |= bit;
      if (!samples.includes(s)) return;
      const first = !samples.some((other) => other < s);
      if (first || says === "differ") layer.taken |= bit;
      if (says === "differ") layer.barred |= bit;
      else if (!first) (says === "share" ? layer.bound : layer.exact).push(bit);
    });
    return layer;
  });
}

/**
 * The memory for one kind of ion. States from which a number can no longer come right are left out, so each state after the last sample
 * obeys all constraints.
 * @param about the constraints on this kind of ion only
 * @param work what making states is taken from
 * @throws RangeError when the paper makes more than 15 statements about groups for one kind of ion
 */
export function memoryOf({ holdings, family, open, names }: Choices, about: readonly Constraint[], work: Work): Memory {
  const ions = names.length;
  const groups = about.filter((one): one is Group => ["share", "differ", "same"].includes(one.says));
  const tallies = about.flatMap((one) => (one.says === "contains" ? [{ ...one, ion: names.indexOf(one.which) }] : []));
  const inAll = about.flatMap((one) => (one.says === "in all" ? [one.count] : []))[0];
  if (groups.length > MOST_GROUPS) {
    throw new RangeError(`Paper: found ${groups.length} statements on ${about[0].ion} of groups, expected at most 15.`);
  }
  const layers = layersOf(open.length, groups, inAll !== undefined);
  /** The most ions the samples after each one can add. */
  const toCome = open.map((_, s) =>
    open.slice(s + 1).reduce((sum, own) => sum + Math.max(0, ...own.map((h) => holdings[h].length)), 0),
  );
  const before = keptInOrder(ions, holdings, family);
  /** A state: the condition of each ion, then the count of each tally. */
  const states: Uint16Array[][] = [[new Uint16Array(ions + tallies.length)], ...open.map(() => [])];
  const numbers = open.map(() => new Map<string, number>());
  const moves: Move[][][] = open.map(() => []);

  const after = (s: number, state: Uint16Array, taken: Holding): number => {
    spend(work, state.length);
    const layer = layers[s];
    const next = state.slice();
    for (const bit of layer.bound) {
      for (let ion = 0; ion < ions; ion++) if (!taken.includes(ion)) next[ion] &= ~bit;
    }
    for (const ion of taken) next[ion] |= layer.taken;
    let different = 0;
    for (let i = 0; i < ions; i++) {
      const condition = next[i] & ~layer.closed;
      different += condition & 1;
      let at = i;
      for (let prior = before[i]; prior >= 0 && next[prior] < condition; prior = before[prior]) {
        next[at] = next[prior];
        at = prior;
      }
      next[at] = condition;
    }
    if (inAll !== undefined && (different > inAll || different + toCome[s] < inAll)) return -1;
    for (const [t, { samples, ion, least, most }] of tallies.entries()) {
      if (!samples.includes(s)) continue;
      if (taken.includes(ion)) next[ions + t]++;
      const rest = samples.filter((other) => other > s).length;
      if (next[ions + t] > most || next[ions + t] + rest < least) return -1;
      if (rest === 0) next[ions + t] = 0;
    }
    const key = String.fromCharCode(...next);
    const known = numbers[s].get(key);
    if (known !== undefined) return known;
    numbers[s].set(key, states[s + 1].length);
    return states[s + 1].push(next) - 1;
  };

  const movesOf = (s: number, number: number): Move[] => {
    const known = moves[s][number];
    if (known) return known;
    const state = states[s][number];
    const kinds = new Map<number, Move>();
    for (const h of open[s]) {
      const taken = holdings[h];
      if (!mayTake(layers[s], state, taken, ions)) continue;
      const kind = family[h] * 2 ** 16 + state[taken[0]];
      const alike = kinds.get(kind);
      if (alike) alike.ways++;
      else kinds.set(kind, { family: family[h], next: after(s, state, taken), ways: 1 });
    }
    moves[s][number] = [...kinds.values()].filter(({ next }) => next >= 0);
    return moves[s][number];
  };
  /** So many samples have all their moves made, and with them the states they lead to. */
  let whole = 0;
  return {
    moves: movesOf,
    states(s) {
      for (; whole < s; whole++) for (let state = 0; state < states[whole].length; state++) movesOf(whole, state);
      return states[s].length;
    },
  };
}

function mayTake({ bound, exact, barred }: Layer, state: Uint16Array, taken: Holding, ions: number): boolean {
  if (barred && taken.some((ion) => state[ion] & barred)) return false;
  if (bound.some((bit) => !taken.some((ion) => state[ion] & bit))) return false;
  return exact.every((bit) => {
    for (let ion = 0; ion < ions; ion++) if (((state[ion] & bit) !== 0) !== taken.includes(ion)) return false;
    return true;
  });
}

/** For each ion the one before it in its family, or -1: their conditions are kept in falling order, so that exchanged ions make one state. */
function keptInOrder(ions: number, holdings: readonly Holding[], family: readonly number[]): Int32Array {
  const before = new Int32Array(ions).fill(-1);
  const last = new Map<number, number>();
  holdings.forEach((holding, h) => {
    if (holding.length !== 1) return;
    const [ion] = holding;
    before[ion] = last.get(family[h]) ?? -1;
    last.set(family[h], ion);
  });
  return before;
}
