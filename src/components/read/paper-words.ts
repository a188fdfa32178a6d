/** What the paper says of its samples, in sentences. */

import { different } from "#words/paper-says.ts";
import * as say from "#words/read.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { rulesOf } from "../../engine/deduction/rules.ts";
import { ionName } from "../../engine/formula/ion-name.ts";
import type { GivenSample } from "../../engine/practical.ts";
import { capital } from "../capital.ts";

/** "Cu^2+ copper(II)": no comma between the two, for they stand in a list. */
const named = (ion: string) => `${ion} ${ionName(ion)}`;

/** "K: a solution, 0.1 mol/dm3" */
export function wordGiven({ label, given, concentration }: GivenSample): string {
  const strength = concentration && `${concentration.molPerDm3} mol/dm3`;
  return say.given(label, given, strength && concentration.about ? say.about(strength) : strength);
}

/** "Each sample holds one cation and one anion."; where samples differ, a sentence for each way. */
function wordHeld(samples: readonly GivenSample[]): string[] {
  const groups = new Map<string, string[]>();
  for (const { label, holds } of samples) {
    const what = say.held(holds?.cations ?? 1, holds?.anions ?? 1);
    groups.set(what, [...(groups.get(what) ?? []), label]);
  }
  return [...groups].map(([what, labels]) => {
    return groups.size === 1 && labels.length > 1 ? say.eachHolds(what) : say.theyHold(labels, what);
  });
}

/** Each statement as a sentence; formulas in mhchem notation. */
export function wordPaper(table: PredictionTable, samples: readonly GivenSample[]): string[] {
  const { paper } = table;
  return [
    ...wordHeld(samples),
    say.cationIsOne(paper.cations.map(named)),
    say.anionIsOne(paper.anions.map(named)),
    ...rulesOf(table).map(({ words, about: [{ ion, ...of }] }) =>
      of.says === "in all"
        ? say.allHold(different(of.count, ion === "cations" ? "cation" : "anion"))
        : `${capital(words)}.`,
    ),
  ];
}
