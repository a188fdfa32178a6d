/** A record may say that none of the sights listed at a test was seen. */
import type { TableCell } from "../bench/prediction-table.ts";

/**
 * Stands in a `TableRecord` in place of a reading: something was seen that is none of the cell's readings. Not an index, so that no list of
 * readings can come to hold it, whatever is added to them.
 */
export const SOMETHING_ELSE = -1;

/**
 * Bit mask over the cell's readings: those a person who recorded `reading` may have had before them; none of them for something else.
 * @throws RangeError when the cell has no such reading
 */
export function mayHaveBeen({ id, agrees }: TableCell, reading: number, sample: string): number {
  const mask = reading === SOMETHING_ELSE ? 0 : agrees[reading];
  if (mask === undefined) {
    throw new RangeError(
      `Record of ${sample} at ${id}: found reading ${reading}, expected 0 to ${agrees.length - 1}, or ${SOMETHING_ELSE} for something else.`,
    );
  }
  return mask;
}
