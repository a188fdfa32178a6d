/** Which reading of a table's cell an observation is that somebody wrote down. */
import type { Observation } from "../practical.ts";
import { mayBe, sameSight } from "./agreement.ts";
import type { TableCell } from "./prediction-table.ts";
import { refuseMore } from "./too-many-readings.ts";

/**
 * Finds the reading for an observation. One that names no reading exactly is added to the cell as a reading of its own, which agrees with
 * every reading it may have been: the cell is changed in place.
 * @param words the observation in words
 * @throws TooManyReadings where the cell has no room
 */
export function readingFor(cell: TableCell, seen: Observation, words: string): number {
  const exact = cell.readings.findIndex((reading) => JSON.stringify(reading) === JSON.stringify(seen));
  if (exact >= 0) return exact;
  const possible = cell.readings.flatMap((reading, index) => (mayBe(seen, reading) ? [index] : []));
  const same = possible.filter((index) => sameSight(seen, cell.readings[index]));
  const mask = possible.reduce((all, index) => all | (1 << index), 0);
  // Another name for one reading only: nothing is lost by that reading's own name, unless that is a name for more.
  if (possible.length === 1 && same.length === 1 && cell.agrees[possible[0]] === mask) return possible[0];
  refuseMore(cell);
  cell.readings.push(seen);
  cell.words.push(possible.length > 1 ? `${words} (nothing else noted)` : words);
  const own = cell.readings.length - 1;
  cell.agrees.push(mask | (1 << own));
  return own;
}
