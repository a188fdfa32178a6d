/** Conclude: what to repeat where a record fits nothing. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

export const TOO_MUCH =
  "Es ist so vieles protokolliert und über die Proben gesagt, dass sich hier nicht berechnen lässt, was zuerst zu wiederholen ist.";
export const CONTRADICTS = "Die Aufgabe widerspricht sich selbst:";
export const NO_MENDING = "Das kann keine Beobachtung heilen.";
/** "a(i) für R" */
export const placeOf = (cell: string, sample: string) => `${cell} für ${sample}`;
export const lookAgain = (places: readonly string[]) => `Sieh bei ${list(places)} noch einmal hin:`;
export const LOOK_AGAIN_ABOUT =
  "Für kein Salz, das die Aufgabe zulässt, ist etwas anderes vorhergesagt als das, was dort in der Liste steht. Zeigt ein sauberes Reagenzglas wieder dasselbe, sag es deiner Lehrkraft: Die Probe enthält vielleicht ein Ion, das die Aufgabe nicht nennt.";
export const FIRST = "Zuerst wiederholen.";
export const firstAbout = (several: boolean) =>
  `Alles Übrige passt zusammen, wenn dies beiseitebleibt${several ? "; was am leichtesten falsch gesehen wird, steht vorn" : ""}:`;
export const otherSets = (count: number) =>
  count === 1
    ? "Eine andere Auswahl von ebenso wenigen Beobachtungen"
    : `${count} andere von ebenso wenigen Beobachtungen`;
export const MORE = "Und noch mehr: Bei so vielen wiederhole die Versuche von Anfang an.";
/** Sights to look for; where there are several tests, each with its own. */
export function lookFor(tests: readonly { sights: readonly string[]; place: string }[]): string {
  const each = tests.map(({ sights, place }) => `${list(sights, OR)}${tests.length > 1 ? ` bei ${place}` : ""}`);
  return `Zu sehen sein müsste ${each.join("; ")}`;
}
/** After what to look for, what would then be left. */
export const THEN = "Dann:";
export const mayBe = (sample: string, formulas: readonly string[]) => `${sample} kann ${list(formulas, OR)} sein`;
export const mayBeOneOf = (sample: string, count: number) => `${sample} kann eines von ${count} Salzen sein`;
