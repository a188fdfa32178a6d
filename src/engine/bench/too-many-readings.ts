/** How much one line of a table of predictions holds. */
import type { TableCell } from "./prediction-table.ts";

/** Readings a cell may hold: one bit each in a mask. */
const MOST_READINGS = 31;

/** On one line of the record there is more to tell apart than a table holds. */
export class TooManyReadings extends RangeError {
  override name = "TooManyReadings";
  /** Id of the line. */
  readonly cell: string;

  constructor(cell: string) {
    super(`more than ${MOST_READINGS} different sights on line ${cell} of the record`);
    this.cell = cell;
  }
}

/** True when the cell has room for another reading. */
export const hasRoom = ({ readings }: TableCell): boolean => readings.length < MOST_READINGS;

/** Throws TooManyReadings when the cell has no room for another reading. */
export function refuseMore(cell: TableCell): void {
  if (!hasRoom(cell)) throw new TooManyReadings(cell.id);
}
