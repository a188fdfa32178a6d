/** How large the type of a bench card can be on one side of A4, estimated from what stands on it: a browser test prints every card. */

/** Height between the margins of A4 less a little, for nothing is set to the last millimetre, mm. */
const SIDE = 267;
/** At full size, mm, fitted to the cards of the course: title and cautions; a line in the columns, a row of the table besides its lines, a heading with its space. */
const HEAD = 46;
const LINE = 3.7;
const ROW = 0.6;
const HEADING = 7.4;
/** A row of the rack without marks, and each mark. */
const RACK_ROW = 4;
const MARK = 3.6;
/** Letters in a line of a column at full size, and what the minute and the gaps take of one in the table. */
const LETTERS = 56;
const MINUTE = 8;

/** Sizes there are, per cent of 8 points: classes of sheets.css. Below the last a card is too small to read at arm's length. */
const SCALES = [140, 125, 112, 100, 90, 80] as const;

export interface CardContent {
  /** Marks under the labels of each row of the rack: the most in it. */
  rackRows: readonly number[];
  /** Texts of the columns, by section. */
  sections: readonly (readonly string[])[];
  /** Rows of the table: the second column, never broken, and the last. */
  table: readonly { tubes: string; what: string }[];
}

const linesIn = (texts: readonly string[], letters: number): number =>
  texts.reduce((sum, text) => sum + Math.ceil(text.length / letters), 0);

/** Height of the card at such a size, mm. */
function heightAt(scale: number, { rackRows, sections, table }: CardContent): number {
  const rack = rackRows.reduce((sum, marks) => sum + RACK_ROW + marks * MARK, 0);
  const letters = LETTERS / scale;
  const last = Math.max(MINUTE, letters - MINUTE - Math.max(0, ...table.map(({ tubes }) => tubes.length)));
  const words = table.map(({ what }) => what);
  const lines = linesIn(sections.flat(), letters) + linesIn(words, last);
  const columns = (lines * LINE + table.length * ROW + (sections.length + 1) * HEADING) / 2;
  return scale * (HEAD + rack + columns);
}

/** The largest size at which the card stays on one side, per cent. */
export const scaleOf = (content: CardContent): (typeof SCALES)[number] =>
  SCALES.find((scale) => heightAt(scale / 100, content) <= SIDE) ?? SCALES[SCALES.length - 1];
