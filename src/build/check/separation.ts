import type { ContentFault } from "../../authoring/faults.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { undecided } from "../../engine/deduction/deduce.ts";
import type { Practical } from "../../engine/practical.ts";
import { answerOf, entryNamed } from "../answer.ts";
import type { Walkthrough } from "../walkthrough.ts";
import type { MakeFault } from "./make-fault.ts";

/** Samples the tests leave open without the page saying so, and openness claimed where there is none. */
export function undecidedSamples(
  practical: Practical,
  { table, record }: Walkthrough,
  fault: MakeFault,
): ContentFault[] {
  const left = undecided(table, record);
  return practical.samples.flatMap((sample, index) => {
    const answer = answerOf(table, sample)?.formula;
    const others = left[sample.label].map((salt) => table.salts[salt].formula).filter((formula) => formula !== answer);
    const said = (practical.undecided?.[sample.label] ?? []).map(
      (formula) => entryNamed(table, formula)?.formula ?? formula,
    );
    const silent = others.filter((formula) => !said.includes(formula));
    const wrong = said.filter((formula) => !others.includes(formula));
    const faults: ContentFault[] = [];
    if (silent.length > 0) {
      faults.push(
        fault(["samples", index], {
          what: `sample ${sample.label}: the tests do not decide it`,
          stated: `${sample.salt} is the answer`,
          found: `${silent.join(", ")} would give the same record`,
          advice: `add a test that tells them apart${hint(table, practical.record[sample.label] ?? {}, sample.label, answer, silent)}, or list them under undecided`,
        }),
      );
    }
    if (wrong.length > 0) {
      faults.push(
        fault(["undecided", sample.label], {
          what: `sample ${sample.label}: not as open as stated`,
          stated: `${wrong.join(", ")} stays possible`,
          found: "the record rules it out",
          advice: "take it off the list",
        }),
      );
    }
    return faults;
  });
}

/** A test of the procedure that tells the answer from the others but was left out of the record, when there is one. */
function hint(
  table: PredictionTable,
  recorded: Readonly<Record<string, unknown>>,
  label: string,
  answer: string | undefined,
  others: readonly string[],
): string {
  const at = table.samples.find((each) => each.label === label);
  if (!at) return "";
  const set = table.sets[at.set];
  const row = (formula: string | undefined) =>
    set.accepts[set.salts.findIndex((salt) => table.salts[salt].formula === formula)];
  const mine = row(answer);
  const cell = table.cells.find(
    ({ id, samples }, c) =>
      samples.includes(label) &&
      recorded[id] === undefined &&
      mine?.[c] &&
      others.every((other) => row(other)?.[c] && (row(other)[c] & mine[c]) === 0),
  );
  return cell ? ` (${cell.id} does, but the record leaves it out)` : "";
}
