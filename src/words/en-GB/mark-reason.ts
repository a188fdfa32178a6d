/** Conclude: the sentence behind a mark of the evidence. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

/** Before the sentence: "Zn^2+ at b(ii): clashes." */
export const mark = (ion: string, cell: string, word: string) => `${ion} at ${cell}: ${word}.`;
export const notRecorded = (cell: string, sample: string) => `${cell} for ${sample} is not in the record.`;
export const noSalt = (ion: string) => `No salt of ${ion} can be such a sample, whatever is seen here.`;
export const notPredicted = (ion: string) => `What a salt of ${ion} shows here is not predicted.`;
export const seen = (sight: string) => `Seen: ${sight}. `;
const shows = (sure: boolean) => (sure ? "shows" : "may show");
/** @param sure not where it takes a salt that shows it only at the border, or one that is not predicted */
export const allShow = (sure: boolean) => `Every salt the paper allows ${shows(sure)} that, so it says nothing.`;
export const eachKindShows = (kind: "cation" | "anion", sure: boolean) =>
  `With each ${kind} some allowed salt ${shows(sure)} that, so it rules no ${kind} out.`;
/** @param would sights, each with the salt it is seen with where they differ */
export function wouldHaveSeen(ion: string, would: readonly { sight: string; as?: string }[], more: boolean): string {
  const sights = would.map(({ sight, as }) => (as === undefined ? sight : `${sight} as ${as}`));
  return `With ${ion} you would have seen: ${list(sights, OR)}${more ? ", or something else again with other partners" : ""}.`;
}
export const usualIs = (ion: string, usual: string) =>
  `With ${ion} the usual sight is: ${usual}. This one is seen only where a bottle is weaker or stronger than usual, or at the limit of what our figures can tell.`;

export const oneShows = (ion: string, formula: string) => `The one salt with ${ion}, ${formula}, shows that.`;
export const everyShows = (ion: string, count: number) => `All ${count} salts with ${ion} show that.`;
/** Clauses of a sentence: who shows it, who may, who does not. */
export const someShow = (count: number, of: number, ion: string) => `${count} of the ${of} salts with ${ion} show that`;
export const theseShow = (formulas: readonly string[]) =>
  `${list(formulas)} ${formulas.length === 1 ? "shows" : "show"} that`;
/** @param rest salts of the ion besides those that show it; `count` of them */
function others(count: number, rest: number, ion: string): string {
  if (count === rest) return rest === 1 ? `the other salt with ${ion}` : `the other ${rest} salts with ${ion}`;
  return `${count} ${count === 1 ? "other" : "others"} with ${ion}`;
}
export const mayAtBorder = (count: number, rest: number, ion: string) =>
  `${others(count, rest, ion)} may show it at the border`;
export const doNot = (count: number, rest: number, ion: string) =>
  `${others(count, rest, ion)} ${count === 1 ? "does" : "do"} not`;
