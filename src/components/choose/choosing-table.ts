/** The table of predictions as choosing needs it: nothing is recorded or worded there, so sights are numbers only. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";

export const choosingTable = (table: PredictionTable): PredictionTable => ({
  ...table,
  facts: [],
  cells: table.cells.map(({ id, samples, agrees, unsafeOn }) => ({
    id,
    samples,
    agrees,
    ...(unsafeOn && { unsafeOn }),
    readings: [],
    words: [],
    comesOff: [],
  })),
  sets: table.sets.map((set) => ({ ...set, atBorder: [], facts: [], cannotBe: [] })),
});
