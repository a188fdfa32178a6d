/** What decided a practical. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

export const HEADING = "Was es entschieden hat";

const NUMBERS = "keine eine zwei drei vier fünf sechs sieben acht neun zehn".split(" ");
const number = (count: number) => NUMBERS[count] ?? String(count);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const NOT_EVERYTHING = "Diese Versuche entscheiden nicht alles: Was offenbleibt, ist oben genannt.";
/** "b(ii) und c(ii) für R" */
export const testsFor = (cells: readonly string[], sample: string) => `${list(cells)} für ${sample}`;
/**
 * "Von den 22 Beobachtungen in diesem Protokoll genügen fünf: b(ii) und c(ii) für R; a(iii) für T."
 * @param places the tests that are enough, by sample, as above
 * @param several others would be enough as well
 */
export function enough(all: number, few: number, places: readonly string[], several: boolean, statement?: string) {
  const are = `${few === 1 ? "genügt" : "genügen"} ${number(few)}`;
  const paper = statement ? ` Das Übrige steckt in dem, was die Aufgabe sagt: ${statement}.` : "";
  const others = several ? " Andere täten es auch, weniger nicht." : " Weniger genügen nicht.";
  return `Von den ${all} Beobachtungen in diesem Protokoll ${are}: ${places.join("; ")}.${paper}${others}`;
}

export const NO_OTHER = "Die Aufgabe lässt keine andere Antwort zu.";
/** How far the nearest other answers are, so many of them, in observations misread. */
export function nearest(count: number, misread: number): string {
  const other = count === 1 ? "Eine andere Antwort" : `${capital(number(count))} andere Antworten`;
  if (misread === 0) return `${other} ${count === 1 ? "ergäbe" : "ergäben"} dasselbe Protokoll.`;
  if (misread === 1) return `${other} ${count === 1 ? "ist" : "sind"} eine falsch gesehene Beobachtung entfernt.`;
  return `Erst mit ${number(misread)} falsch gesehenen Beobachtungen kommt man zu einer anderen Antwort.`;
}
export const borders = (places: readonly { cell: string; sample: string }[]) =>
  `Zeigt ${list(
    places.map(({ cell, sample }) => `${cell} für ${sample}`),
    OR,
  )} etwas anderes, was dort ebenfalls zu sehen sein kann, etwa weil eine Flasche schwächer oder stärker ist als üblich, bleibt etwas offen.`;

export const mayBe = (sample: string, formulas: readonly string[]) => `kann ${sample} ${list(formulas, OR)} sein`;
export const mayBeOneOf = (sample: string, count: number) => `kann ${sample} eines von ${count} Salzen sein`;
/** "Ohne c(ii) kann R ZnCl2 oder Zn(NO3)2 sein." */
export const leaveOut = (cell: string, open: readonly string[]) => `Ohne ${cell} ${list(open)}.`;
