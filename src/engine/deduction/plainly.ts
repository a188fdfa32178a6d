/** Which of the readings a salt may show are ordinary ones: not those it shows only at the border. */
import type { PredictionSet } from "../bench/prediction-table.ts";

type Borders = PredictionSet["atBorder"];

/** byPlace[row][cell]: the mask of a set's border there. Asked thousands of times for one conclusion, and the list is long. */
const byPlace = new WeakMap<Borders, number[][]>();

function masksOf(borders: Borders): number[][] {
  const known = byPlace.get(borders);
  if (known) return known;
  const masks: number[][] = [];
  for (const [row, cell, mask] of borders) {
    masks[row] ??= [];
    masks[row][cell] = mask;
  }
  byPlace.set(borders, masks);
  return masks;
}

/** Bit mask of the readings that need nothing out of the ordinary; 0 where the salt has no prediction. */
export function plainly({ accepts, atBorder }: PredictionSet, row: number, cell: number): number {
  return accepts[row][cell] & ~(masksOf(atBorder)[row]?.[cell] ?? 0);
}
