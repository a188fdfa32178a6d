/** Statements that so many samples hold a named ion, turned into what each sample may hold: in cases, some of them taken away again. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Constraint } from "./rules.ts";
import { spend, type Work } from "./work.ts";

/** options[s]: salts (indices) sample s may hold. */
export type Options = readonly (readonly number[])[];

export interface Case {
  /** How often the ways within these options count: 1 or -1. */
  times: number;
  options: Options;
}

/**
 * Cases whose ways together are the ways that obey what is said of named ions; those without any way are left out.
 * @throws TooMuchWork
 */
export function casesOf(
  salts: PredictionTable["salts"],
  options: Options,
  about: readonly Constraint[],
  work: Work,
): Case[] {
  let cases: Case[] = [{ times: 1, options }];
  for (const one of about) {
    if (one.says !== "contains") continue;
    const { ion, which, samples, least, most } = one;
    const heldBy = (options: Options, holders: readonly number[]) =>
      options.map((list, s) =>
        samples.includes(s) ? list.filter((salt) => salts[salt][ion].includes(which) === holders.includes(s)) : list,
      );
    const sets = samples
      .reduce<number[][]>((all, s) => all.flatMap((set) => [set, [...set, s]]), [[]])
      .filter(({ length }) => length >= least && length <= most);
    spend(work, cases.length * sets.length * samples.length);
    cases = cases
      .flatMap(({ times, options }): Case[] =>
        least === 1 && most === samples.length
          ? // In all ways but those in which none holds it.
            [
              { times, options },
              { times: -times, options: heldBy(options, []) },
            ]
          : sets.map((holders) => ({ times, options: heldBy(options, holders) })),
      )
      .filter(({ options }) => options.every(({ length }) => length > 0));
  }
  return cases;
}
