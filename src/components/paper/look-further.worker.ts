/** The standard tests that could settle what a record leaves open. Apart from the rest of the worker: many a reader never asks. */
import type { Predictor } from "../../engine/bench/predictor.ts";
import { furtherPredictions } from "../../engine/deduction/further-predictions.ts";
import { furtherList } from "../conclude/further-list.ts";
import type { CautionEntry, Further } from "./paper-work.types.ts";
import { plainTable, readWritten } from "./work-out.worker.ts";

/** @param left formulas of the salts each sample may still hold, by letter */
export function lookFurther(
  written: unknown,
  left: Readonly<Record<string, readonly string[]>>,
  cautions: readonly CautionEntry[],
  predictor: Predictor,
): Further {
  const { paper } = readWritten(written);
  if (!paper) return undefined;
  const wanted = new Set(Object.values(left).flat());
  const isWanted = ({ formula }: { formula: string }) => wanted.has(formula);
  // Of the paper's own table only the salts that are left: among them a test is looked for.
  const table = plainTable(paper, predictor, isWanted);
  const found = furtherPredictions(paper, table, predictor);
  return found && furtherList(found, cautions);
}
