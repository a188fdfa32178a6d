/** How large the type of a bench card can be on one side of A4, estimated from what stands on it: a browser test prints every card. */

/** Height between the margins of A4, mm. */
const SIDE = 265;
/** At full size, mm: title and caution; a line in the columns, a row of the table besides its lines, a heading with its space. */
const HEAD = 36;
const LINE = 3.7;
const ROW = 1.1;
const HEADING = 7;
/** A row of the rack without marks, and each mark. */
const RACK_ROW = 9;
const MARK = 3.2;
/** Letters in a line of a column, and in one of the last column of the table. */
const LETTERS = 54;
const NARROW = 33;
/** What does not fill both columns evenly, lines broken early: nothing is set to the last millimetre. */
const EVENLY = 1.08;

/** Sizes there are, per cent: classes of sheets.css. Below the last a card is too small to read at arm's length. */
const SCALES = [140, 125, 112, 100, 90, 80] as const;

export interface CardContent {
  /** Marks under the labels of each row of the rack: the most in it. */
  rackRows: readonly number[];
  /** Texts of the columns, by section. */
  sections: readonly (readonly string[])[];
  /** Last column of the table. */
  table: readonly string[];
}

const linesIn = (texts: readonly string[], letters: number): number =>
  texts.reduce((sum, text) => sum + Math.ceil(text.length / letters), 0);

/** Height of the card at such a size, mm. */
function heightAt(scale: number, { rackRows, sections, table }: CardContent): number {
  const rack = rackRows.reduce((sum, marks) => sum + RACK_ROW + marks * MARK, 0);
  const lines = linesIn(sections.flat(), LETTERS / scale) + linesIn(table, NARROW / scale);
  const columns = (lines * LINE + table.length * ROW + (sections.length + 1) * HEADING) / 2;
  return scale * (HEAD + rack + columns * EVENLY);
}

/** The largest size at which the card stays on one side, per cent. */
export const scaleOf = (content: CardContent): (typeof SCALES)[number] =>
  SCALES.find((scale) => heightAt(scale / 100, content) <= SIDE) ?? SCALES[SCALES.length - 1];
