/** What the paper says of its samples, in sentences. */

import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { rulesOf } from "../../engine/deduction/rules.ts";
import { ionName } from "../../engine/formula/ion-name.ts";
import type { Sample } from "../../engine/practical.ts";
import { capital } from "../capital.ts";
import { list } from "../sentence.ts";

const FORM = { solid: "a solid", solution: "a solution", both: "a solid and a solution" };
/** "Cu^2+ copper(II)": no comma between the two, for they stand in a list. */
const named = (ion: string) => `${ion} ${ionName(ion)}`;

/** "K: a solution, 0.1 mol/dm3" */
export function wordGiven({ label, given, concentration }: Sample): string {
  return `${label}: ${FORM[given]}${concentration ? `, ${concentration.molPerDm3} mol/dm3` : ""}`;
}

/** Each statement as a sentence; formulas in mhchem notation. */
export function wordPaper(table: PredictionTable): string[] {
  const { paper, samples } = table;
  const each = samples.length === 1 ? `${samples[0].label} holds` : "Each sample holds";
  return [
    `${each} one cation and one anion.`,
    `The cation is one of ${list(paper.cations.map(named), "or")}.`,
    `The anion is one of ${list(paper.anions.map(named), "or")}.`,
    ...rulesOf(table).map(({ words, about }) =>
      about[0].says === "in all" ? `All samples together hold ${words.replace(/ in all$/, "")}.` : `${capital(words)}.`,
    ),
  ];
}
