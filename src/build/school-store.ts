/** The salts of the school store's list that some sample of a paper can be. */

import { contentOf } from "../engine/bench/contents.ts";
import type { PredictionTable } from "../engine/bench/prediction-table.ts";
import { solidForm } from "../engine/bench/weighed-as.ts";
import { salts as bottles } from "../engine/constants/salts.ts";

/** Indices into the table's salts, ascending. */
export function storeFor({ sets, salts }: PredictionTable): number[] {
  const hasBottle = (salt: number) => {
    const formula = solidForm(contentOf(salts[salt].cations, salts[salt].anions));
    return bottles.some((row) => row.formula === formula);
  };
  return [...new Set(sets.flatMap((set) => set.salts))].filter(hasBottle).sort((a, b) => a - b);
}
