/**
 * What must be remembered of one kind of ion while salts are given to the samples one after the other: which ions were used, and
 * which are bound by a statement about a group of samples. Ions that every sample treats alike are interchangeable: of states that
 * differ only by exchanging such ions one is kept. States are made when they are first reached.
 */
import type { Rule } from "./rules.ts";

export interface Move {
  /** The ion taken is of this family. */
  family: number;
  /** State before the next sample. */
  next: number;
  /** How many ions of the family can be taken to the same effect. */
  ways: number;
}

/** What can be taken for sample s from a state. State 0 is the only one before the first sample. */
export type Memory = (s: number, state: number) => Move[];

/** An ion's condition has one bit for "used" and one for each group. */
const MOST_GROUPS = 15;

/**
 * family[ion]: equal for ions that every sample treats alike.
 * @param rows rows[s][ion]: text that tells what sample s can hold with this ion; empty when nothing.
 */
export function familiesOf(rows: string[][]): number[] {
  const keys = rows[0].map((_, ion) => rows.map((row) => row[ion]).join("|"));
  return keys.map((key) => keys.indexOf(key));
}

/**
 * The memory for one kind of ion. States from which the number of different ions can no longer come right are left out, so each
 * state after the last sample obeys all rules.
 * @param rules the rules about this kind of ion only.
 * @throws RangeError when the paper makes more than 15 statements about groups for one kind of ion.
 */
export function memoryOf(rows: string[][], family: number[], rules: Rule[]): Memory {
  const count = rules.find(({ says }) => says === "in all")?.count;
  const groups = rules.filter(({ says }) => says !== "in all");
  if (groups.length > MOST_GROUPS) {
    throw new RangeError(
      `Paper: found ${groups.length} statements on ${groups[0].ion}s of groups, expected at most 15.`,
    );
  }
  const layers = rows.map((row, s) => {
    // Bits of an ion's condition: 1 when used, 2 << g when taken in group g. A group's bit is cleared after its last sample.
    let taken = count ? 1 : 0;
    let bound = 0;
    let barred = 0;
    let closed = 0;
    groups.forEach(({ says, samples }, g) => {
      const bit = 2 << g;
      if (samples.includes(s)) {
        taken |= bit;
        if (says === "differ") barred |= bit;
        else if (samples.some((other) => other < s)) bound |= bit;
      }
      if (!samples.some((other) => other > s)) closed |= bit;
    });
    return { row, taken, bound, barred, closed, moves: [] as Move[][] };
  });
  /** The ion before this one in its family, by which conditions are kept in order. */
  const before = family.map((one, ion) => family.slice(0, ion).lastIndexOf(one));
  const states: Uint16Array[][] = [[new Uint16Array(rows[0].length)], ...rows.map(() => [])];
  const numbers = rows.map(() => new Map<string, number>());

  const after = (s: number, state: Uint16Array, ion: number): number => {
    const { taken, closed } = layers[s];
    const next = state.slice();
    next[ion] |= taken;
    let different = 0;
    for (let i = 0; i < next.length; i++) {
      const condition = next[i] & ~closed;
      different += condition & 1;
      let at = i;
      for (let prior = before[i]; prior >= 0 && next[prior] < condition; prior = before[prior]) {
        next[at] = next[prior];
        at = prior;
      }
      next[at] = condition;
    }
    if (count && (different > count || different + rows.length - 1 - s < count)) return -1;
    const key = String.fromCharCode(...next);
    const known = numbers[s].get(key);
    if (known !== undefined) return known;
    numbers[s].set(key, states[s + 1].length);
    return states[s + 1].push(next) - 1;
  };

  return (s, number) => {
    const { row, bound, barred, moves } = layers[s];
    if (moves[number]) return moves[number];
    const state = states[s][number];
    const kinds = new Map<number, Move>();
    state.forEach((condition, ion) => {
      if (row[ion] === "" || (condition & bound) !== bound || condition & barred) return;
      const kind = family[ion] * 2 ** 16 + condition;
      const alike = kinds.get(kind);
      if (alike) alike.ways++;
      else kinds.set(kind, { family: family[ion], next: after(s, state, ion), ways: 1 });
    });
    moves[number] = [...kinds.values()].filter(({ next }) => next >= 0);
    return moves[number];
  };
}
