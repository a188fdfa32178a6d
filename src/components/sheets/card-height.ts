/** How small the type of a bench card must be for one side of A4, estimated from what stands on it: a browser test prints every card. */

/** Height between the margins of A4, and what title and caution take of it, mm. */
const SIDE = 265;
const HEAD = 34;
/** At full size: a line in the columns, a heading with its space, letters in a line of a column; a row of the rack without and with marks. */
const LINE = 3.7;
const HEADING = 7;
const LETTERS = 58;
const RACK_ROW = 9;
const MARK = 3;

export interface CardContent {
  /** Marks under the labels of each row of the rack: the most in it. */
  rackRows: readonly number[];
  /** Texts of the columns, by section. */
  sections: readonly (readonly string[])[];
}

/** "", "dense" or "densest": a class of sheets.css. */
export function densityOf({ rackRows, sections }: CardContent): "" | "dense" | "densest" {
  const rack = rackRows.reduce((sum, marks) => sum + RACK_ROW + marks * MARK, 0);
  const lines = sections.flat().reduce((sum, text) => sum + Math.ceil(text.length / LETTERS), 0);
  const columns = (lines * LINE + sections.length * HEADING) / 2;
  const height = HEAD + rack + columns;
  // What does not fill both columns evenly takes up to a section's length more, so nothing is set to the last millimetre.
  if (height < SIDE * 0.85) return "";
  return height < SIDE * 1.1 ? "dense" : "densest";
}
