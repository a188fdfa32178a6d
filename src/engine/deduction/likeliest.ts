/** Which of the readings a salt may show is told to the reader: not one it shows only at the border. */
import type { PredictionSet } from "../bench/prediction-table.ts";

/** Bit mask of the readings that need nothing out of the ordinary; 0 where the salt has no prediction. */
export function plainly({ accepts, atBorder }: PredictionSet, row: number, cell: number): number {
  const border = atBorder.find(([r, c]) => r === row && c === cell);
  return accepts[row][cell] & ~(border?.[2] ?? 0);
}

/** Index of the reading a salt is said to show; -1 where it has no prediction. */
export function likeliest(set: PredictionSet, row: number, cell: number): number {
  const mask = plainly(set, row, cell);
  return mask === 0 ? -1 : 31 - Math.clz32(mask & -mask);
}
