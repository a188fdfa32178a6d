/** Which of the readings a salt may show are ordinary ones: not those it shows only at the border. */
import type { PredictionSet } from "../bench/prediction-table.ts";

/** Bit mask of the readings that need nothing out of the ordinary; 0 where the salt has no prediction. */
export function plainly({ accepts, atBorder }: PredictionSet, row: number, cell: number): number {
  const border = atBorder.find(([r, c]) => r === row && c === cell);
  return accepts[row][cell] & ~(border?.[2] ?? 0);
}
