/** What the record itself needs of the table of predictions: its lines, and the samples they are asked of. The rest comes with the conclusion. */
import type { PredictionTable, TableCell } from "../../engine/bench/prediction-table.ts";

export type SheetLine = Pick<TableCell, "id" | "samples" | "words">;

export interface RecordSheet {
  cells: SheetLine[];
  samples: { label: string }[];
}

export function recordSheet({ cells, samples }: PredictionTable): RecordSheet {
  return {
    cells: cells.map(({ id, samples, words }) => ({ id, samples, words })),
    samples: samples.map(({ label }) => ({ label })),
  };
}
