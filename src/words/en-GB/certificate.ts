/** What decided a practical. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

export const HEADING = "What decided it";

const NUMBERS = "no one two three four five six seven eight nine ten".split(" ");
const number = (count: number) => NUMBERS[count] ?? String(count);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const NOT_EVERYTHING = "These tests do not decide everything: what stays open is named above.";
/** "b(ii) and c(ii) for R" */
export const testsFor = (cells: readonly string[], sample: string) => `${list(cells)} for ${sample}`;
/**
 * "Of the 22 observations in this record five are enough: b(ii) and c(ii) for R, a(iii) for T."
 * @param places the tests that are enough, by sample, as above
 * @param several others would be enough as well
 */
export function enough(all: number, few: number, places: readonly string[], several: boolean, statement?: string) {
  const are = few === 1 ? "one is enough" : `${number(few)} are enough`;
  const paper = statement ? ` The rest is in what the paper says: ${statement}.` : "";
  const others = several ? " Others would do as well; no fewer would." : " No fewer would do.";
  return `Of the ${all} observations in this record ${are}: ${places.join("; ")}.${paper}${others}`;
}

export const NO_OTHER = "The paper allows no other answer.";
/** How far the nearest other answers are, so many of them, in observations misread. */
export function nearest(count: number, misread: number): string {
  const other = count === 1 ? "One other answer" : `${capital(number(count))} other answers`;
  if (misread === 0) return `${other} would give the same record.`;
  if (misread === 1) return `${other} ${count === 1 ? "is" : "are"} one misread observation away.`;
  return `It takes ${number(misread)} misread observations to reach another answer.`;
}
export const borders = (places: readonly { cell: string; sample: string }[]) =>
  `With another sight that ${list(
    places.map(({ cell, sample }) => `${cell} for ${sample}`),
    OR,
  )} may show, as where a bottle is weaker or stronger than usual, something stays open.`;

export const mayBe = (sample: string, formulas: readonly string[]) => `${sample} may be ${list(formulas, OR)}`;
export const mayBeOneOf = (sample: string, count: number) => `${sample} may be one of ${count} salts`;
/** "Leave out c(ii), and R may be ZnCl2 or Zn(NO3)2." */
export const leaveOut = (cell: string, open: readonly string[]) => `Leave out ${cell}, and ${list(open)}.`;
