/** Conclude: what a reader's changes to the walkthrough's record come to, shown and spoken. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

export const HEADING = "Was sich geändert hat";
export const placeOf = (cell: string, sample: string) => `${cell} für ${sample}`;
/** What stood there and what stands there. */
export const WAS = "vorher:";
export const NOW = "; jetzt:";
export const moreMarked = (count: number) => `${count} weitere, jede im Protokoll markiert.`;
export const HEADS = { sample: "Probe", was: "Anleitung", now: "Jetzt", why: "Warum" };
export const notDecided = (samples: readonly string[]) =>
  `Nicht entschieden, bevor das Protokoll wieder stimmt: ${list(samples)}.`;
export const AS_IT_WAS = "Die Auswertung bleibt, wie sie war.";
export const asBefore = (samples: readonly string[]) => `Wie vorher: ${list(samples)}.`;

/** What a sample may hold, in a cell of the table. */
export const oneOf = (count: number) => `eines von ${count} Salzen`;
export const these = (formulas: readonly string[]) => list(formulas, OR);
export const UNDECIDED = "nicht entschieden";
export const NO_SALT = "kein Salz";

/** Why, in sentences. */
export const wouldShow = (cell: string, formula: string, sight: string) =>
  `Bei ${cell} würde ${formula} zeigen: ${sight}.`;
export const NO_OTHER_FITS = "Kein anderes Salz passt zu allen ihren Versuchen.";
export const othersFitAlone = (statement: string) =>
  `Andere Salze passen zu ihren Versuchen, aber nicht zu dem, was die Aufgabe sagt: ${statement}.`;
export const isOut = (ion: string, why: string) => `${ion} ist ausgeschlossen: ${why}.`;
export const moreOut = (count: number) =>
  count === 1 ? "Ein weiteres Ion ist ausgeschlossen." : `${count} weitere Ionen sind ausgeschlossen.`;
/** What kept ions out and no longer does: tests, a statement of the paper, or the other samples. */
export type Keeper = { tests: readonly string[] } | { statement: string } | undefined;
/** @param ions by formula, or so many that they are only counted */
export function openAgain(ions: readonly string[] | number, by: Keeper): string {
  const several = typeof ions === "number" || ions.length > 1;
  const who = typeof ions === "number" ? `${ions} Ionen` : list(ions);
  return `${who} ${several ? "sind" : "ist"} möglich: ${noLonger(by, several ? "sie" : "es")} nicht mehr aus.`;
}
function noLonger(by: Keeper, them: string): string {
  if (!by) return `Die anderen Proben schließen ${them}`;
  if ("statement" in by) return `Die Aufgabe (${by.statement}) schließt ${them}`;
  return `${list(by.tests)} ${by.tests.length > 1 ? "schließen" : "schließt"} ${them}`;
}

/** Spoken in half a sentence. */
export const STAYS = "die Auswertung bleibt, wie sie war";
export const STILL_FITS_NOTHING =
  "das Protokoll passt noch zu keinen Salzen: Auswerten sagt, was zuerst zu wiederholen ist";
/** After the first sample's verdict, of the others; `wait` where they wait for it. */
export const others = (samples: readonly string[], wait: boolean) =>
  `; ${list(samples)} ${(wait ? ["wartet", "warten"] : ["ändert sich auch", "ändern sich auch"])[Math.min(samples.length, 2) - 1]}`;
/** A sentence as it goes on within another. */
export const within = (sentence: string) => sentence.replace(/^(?:Nach|Kein|Die) /, (word) => word.toLowerCase());
/** The word before a salt's name, which the formula follows: "K enthält Zinksulfat, ZnSO4: ...". */
export const HOLDS = "enthält";
