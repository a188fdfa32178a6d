/** Pairs of the paper's ions that cannot be such a sample, for each way samples are given. */
import { OR } from "#words/language.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { list } from "../sentence.ts";

export interface ImpossiblePairs {
  /** Letters of the samples concerned: "R, S or T". */
  samples: string;
  /** Pairs there are, and pairs that can be such a sample. */
  pairs: number;
  possible: number;
  /** Each reason with the salts it strikes out, mhchem. */
  reasons: { salts: string[]; reason: string }[];
}

export function impossiblePairs(table: PredictionTable): ImpossiblePairs[] {
  return table.sets.flatMap(({ salts, cannotBe }, set) => {
    if (cannotBe.length === 0) return [];
    const reasons = new Map<string, string[]>();
    for (const { salt, reason } of cannotBe) {
      reasons.set(reason, [...(reasons.get(reason) ?? []), table.salts[salt].formula]);
    }
    return [
      {
        samples: list(
          table.samples.filter((sample) => sample.set === set).map(({ label }) => label),
          OR,
        ),
        pairs: salts.length + cannotBe.length,
        possible: salts.length,
        reasons: [...reasons].map(([reason, struck]) => ({ salts: struck, reason })),
      },
    ];
  });
}
