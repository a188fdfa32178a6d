/** Conclude: the sentence behind a mark of the evidence. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

/** Before the sentence: "Zn^2+ bei b(ii): widerspricht." */
export const mark = (ion: string, cell: string, word: string) => `${ion} bei ${cell}: ${word}.`;
export const notRecorded = (cell: string, sample: string) => `${cell} für ${sample} ist nicht protokolliert.`;
export const noSalt = (ion: string) => `Kein Salz mit ${ion} kann eine solche Probe sein, was auch immer zu sehen ist.`;
export const notPredicted = (ion: string) => `Was ein Salz mit ${ion} hier zeigt, ist nicht vorhergesagt.`;
export const seen = (sight: string) => `Gesehen: ${sight}. `;
/** @param sure not where it takes a salt that shows it only at the border, or one that is not predicted */
export const allShow = (sure: boolean) =>
  sure
    ? "Das zeigt jedes Salz, das die Aufgabe zulässt, deshalb sagt es nichts."
    : "Das kann jedes Salz zeigen, das die Aufgabe zulässt, deshalb sagt es nichts.";
const KIND = { cation: "Kation", anion: "Anion" };
export const eachKindShows = (kind: "cation" | "anion", sure: boolean) =>
  `Zu jedem ${KIND[kind]} gibt es ein zugelassenes Salz, das dies ${sure ? "zeigt" : "zeigen kann"}; deshalb schließt es kein ${KIND[kind]} aus.`;
/** @param would sights, each with the salt it is seen with where they differ */
export function wouldHaveSeen(ion: string, would: readonly { sight: string; as?: string }[], more: boolean): string {
  const sights = would.map(({ sight, as }) => (as === undefined ? sight : `${sight} als ${as}`));
  return `Mit ${ion} hättest du gesehen: ${list(sights, OR)}${more ? ", oder mit anderen Partnern noch etwas anderes" : ""}.`;
}
export const usualIs = (ion: string, usual: string) =>
  `Mit ${ion} sieht man gewöhnlich: ${usual}. Dies hier sieht man nur, wo eine Flasche schwächer oder stärker ist als üblich, oder an der Grenze dessen, was unsere Zahlen hergeben.`;

export const oneShows = (ion: string, formula: string) => `Das einzige Salz mit ${ion}, ${formula}, zeigt das.`;
export const everyShows = (ion: string, count: number) => `Alle ${count} Salze mit ${ion} zeigen das.`;
/** Clauses of a sentence: who shows it, who may, who does not. */
export const someShow = (count: number, of: number, ion: string) => `${count} der ${of} Salze mit ${ion} zeigen das`;
export const theseShow = (formulas: readonly string[]) =>
  `${list(formulas)} ${formulas.length === 1 ? "zeigt" : "zeigen"} das`;
/** @param rest salts of the ion besides those that show it; `count` of them */
function others(count: number, rest: number, ion: string): string {
  if (count === rest) return rest === 1 ? `das andere Salz mit ${ion}` : `die anderen ${rest} Salze mit ${ion}`;
  return count === 1 ? `ein anderes mit ${ion}` : `${count} andere mit ${ion}`;
}
export const mayAtBorder = (count: number, rest: number, ion: string) =>
  `${others(count, rest, ion)} ${count === 1 ? "kann" : "können"} es an der Grenze zeigen`;
export const doNot = (count: number, rest: number, ion: string) => `${others(count, rest, ion)} nicht`;
