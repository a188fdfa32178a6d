/** What stands at a place of the record, in the words of its list. */

import { ELSE, NOT_DONE } from "#words/record.ts";
import type { TableCell } from "../../engine/bench/prediction-table.ts";
import { SOMETHING_ELSE } from "../../engine/deduction/something-else.ts";

/** @param reading as recorded; undefined when the test was not done */
export function inWords({ words }: Pick<TableCell, "words">, reading: number | undefined): string {
  if (reading === undefined) return NOT_DONE;
  return reading === SOMETHING_ELSE ? ELSE : words[reading];
}
