/** What each sample may hold, as a table of ions against ions: those of a kind that every sample treats alike make one family. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Options } from "./named-ions.ts";
import type { Kind } from "./rules.ts";

export interface Offers {
  /** Samples with the same choices have the same number. */
  kin: number[];
  /** salts[s][pair]: how many salts of one cation and one anion of these families sample s may hold. */
  salts: Float64Array[];
  /** How many ions each family holds. */
  sizes: { cations: Float64Array; anions: Float64Array };
  /** Of a salt (index), the pair of its families. */
  pairOf(salt: number): number;
}

type Salts = PredictionTable["salts"];

/** @param options options[s]: salts (indices), each of one cation and one anion, that sample s may hold */
export function offersOf(salts: Salts, options: Options): Offers {
  const keys = options.map((list) => list.join());
  const [cation, anion] = [
    familiesOf(salts, options, "cations", "anions"),
    familiesOf(salts, options, "anions", "cations"),
  ];
  const [height, width] = [cation.sizes.length, anion.sizes.length];
  const pairOf = (salt: number) =>
    (cation.of.get(salts[salt].cations[0]) as number) * width + (anion.of.get(salts[salt].anions[0]) as number);
  return {
    kin: keys.map((key) => keys.indexOf(key)),
    salts: options.map((list) => {
      const pairs = new Float64Array(height * width);
      for (const salt of list) pairs[pairOf(salt)]++;
      // As many for each two ions of the families.
      return pairs.map((all, pair) => all / (cation.sizes[Math.floor(pair / width)] * anion.sizes[pair % width]));
    }),
    sizes: { cations: cation.sizes, anions: anion.sizes },
    pairOf,
  };
}

/** Ions are alike where each sample may hold as many salts of one as of the other with every ion of the other kind. */
function familiesOf(salts: Salts, options: Options, kind: Kind, other: Kind) {
  const rows = new Map<string, string[]>();
  options.forEach((list, s) => {
    for (const salt of list) {
      const [ion] = salts[salt][kind];
      const with_ = `${s} ${salts[salt][other][0]}`;
      const row = rows.get(ion);
      if (row) row.push(with_);
      else rows.set(ion, [with_]);
    }
  });
  const keys = [...rows].map(([ion, row]) => [ion, row.sort().join("|")]);
  const different = [...new Set(keys.map(([, key]) => key))];
  const of = new Map(keys.map(([ion, key]) => [ion, different.indexOf(key)]));
  const sizes = new Float64Array(different.length);
  for (const family of of.values()) sizes[family]++;
  return { of, sizes };
}
