/**
 * Every way of giving each sample a salt as a path of its own through the states of the paper's statements: for questions about single
 * sets of salts, where `trellisOf` folds together what is alike. Steps are made when first asked for.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Rule } from "./rules.ts";
import { trellisOf } from "./trellis.ts";

/** A salt (index) given to a sample, and the state it leads to. */
export interface Step {
  salt: number;
  state: number;
}

export interface Paths {
  /** Number of samples. */
  length: number;
  /** The steps sample `s` allows from a state. State 0 is the only one before the first sample; each state after the last obeys the paper. */
  from(s: number, state: number): readonly Step[];
}

export function pathsOf(table: PredictionTable, rules: readonly Rule[]): Paths {
  // Options of different marks are never folded together.
  const options = table.samples.map(({ set }) => table.sets[set].salts.map((salt) => ({ salt, mark: salt, cost: 0 })));
  // Whoever follows the paths counts the steps.
  const trellis = trellisOf(table, options, rules, { left: Number.POSITIVE_INFINITY });
  /** States before each sample, as the trellis names them, and their numbers. */
  const states = [[[0, 0]], ...options.map((): number[][] => [])];
  const numbers = states.map(() => new Map<string, number>());
  const steps = options.map((): Step[][] => []);
  const numberOf = (s: number, cation: number, anion: number): number => {
    const key = `${cation} ${anion}`;
    const known = numbers[s].get(key);
    if (known !== undefined) return known;
    numbers[s].set(key, states[s].length);
    return states[s].push([cation, anion]) - 1;
  };
  return {
    length: options.length,
    from(s, state) {
      const known = steps[s][state];
      if (known) return known;
      const made: Step[] = [];
      const [cation, anion] = states[s][state];
      trellis.step(s, cation, anion, (c, a, _ways, { marks }) => {
        const next = numberOf(s + 1, c, a);
        for (const { salt } of marks) made.push({ salt, state: next });
      });
      steps[s][state] = made;
      return made;
    },
  };
}
