/** What the paper says of its samples, in sentences. */

import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { rulesOf } from "../../engine/deduction/rules.ts";
import { ionName } from "../../engine/formula/ion-name.ts";
import type { GivenSample } from "../../engine/practical.ts";
import { capital } from "../capital.ts";
import { list } from "../sentence.ts";

const FORM = { solid: "a solid", solution: "a solution", both: "a solid and a solution" };
/** "Cu^2+ copper(II)": no comma between the two, for they stand in a list. */
const named = (ion: string) => `${ion} ${ionName(ion)}`;

/** "K: a solution, 0.1 mol/dm3" */
export function wordGiven({ label, given, concentration }: GivenSample): string {
  return `${label}: ${FORM[given]}${concentration ? `, ${concentration.molPerDm3} mol/dm3` : ""}`;
}

const counted = (count: number, kind: string): string =>
  count === 1 ? `one ${kind}` : `${count === 2 ? "two" : count} ${kind}s`;

/** "Each sample holds one cation and one anion."; where samples differ, a sentence for each way. */
function wordHeld(samples: readonly GivenSample[]): string[] {
  const groups = new Map<string, string[]>();
  for (const { label, holds } of samples) {
    const what = `${counted(holds?.cations ?? 1, "cation")} and ${counted(holds?.anions ?? 1, "anion")}`;
    groups.set(what, [...(groups.get(what) ?? []), label]);
  }
  return [...groups].map(([what, labels]) => {
    if (labels.length === 1) return `${labels[0]} holds ${what}.`;
    return groups.size === 1 ? `Each sample holds ${what}.` : `${list(labels)} each hold ${what}.`;
  });
}

/** Each statement as a sentence; formulas in mhchem notation. */
export function wordPaper(table: PredictionTable, samples: readonly GivenSample[]): string[] {
  const { paper } = table;
  return [
    ...wordHeld(samples),
    `The cation is one of ${list(paper.cations.map(named), "or")}.`,
    `The anion is one of ${list(paper.anions.map(named), "or")}.`,
    ...rulesOf(table).map(({ words, about }) =>
      about[0].says === "in all" ? `All samples together hold ${words.replace(/ in all$/, "")}.` : `${capital(words)}.`,
    ),
  ];
}
