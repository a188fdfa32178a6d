/** What stands at a place of the record, in the words of its list. */
import type { TableCell } from "../../engine/bench/prediction-table.ts";
import { SOMETHING_ELSE } from "../../engine/deduction/something-else.ts";

/** Said of any test, besides its own sights: no observation is ever worded like one of these. */
export const NOT_DONE = "not done";
export const ELSE = "something else";

/** @param reading as recorded; undefined when the test was not done */
export function inWords({ words }: Pick<TableCell, "words">, reading: number | undefined): string {
  if (reading === undefined) return NOT_DONE;
  return reading === SOMETHING_ELSE ? ELSE : words[reading];
}
