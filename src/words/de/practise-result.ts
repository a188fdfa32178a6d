/** The marked practice: the marks of the conclusion and their reasons, where the own record leads, what to practise next. */
import type { CreditFor } from "../../engine/wording/credit.ts";
import { list, OR } from "./language.ts";

type Kind = "cations" | "anions";

/** Beside the number of the set. */
export const set = (seed: number) => `Satz ${seed}`;
/** How hard a set is; nothing is said of one that the tests do not decide. */
export const STANDINGS = { easy: "leicht", middling: "mittel", hard: "schwer" };
export const UNKNOWNS_WERE = "Die Unbekannten waren";
export const CONCLUSION = "Auswertung";
export const LINES = "Dein Protokoll, Zeile für Zeile";
export const LEADS = "Wohin dein eigenes Protokoll führt";
export const NEXT = "Was du als Nächstes übst";
export const SAVE = "Als Datei sichern";
export const PRINT = "Drucken";
export const CLEAR = "Löschen und einen anderen Satz ziehen";
export const TO_WALKTHROUGH = "Zur Anleitung";
export const earned = (marks: number, of: number) => `${marks} von ${of}`;
export const MODEL = "Muster:";
export const notSeenThere = (words: string) => `Dort nicht zu sehen: ${words}.`;

/** Where the own record leads. */
export const ENOUGH =
  "Aus deinem Protokoll allein folgen mit den Angaben der Aufgabe die Unbekannten: Es reicht zum Auswerten.";
export const FOLLOWS = "Aus deinem Protokoll, so wie es gelesen wurde, folgt:";
export const SAY_WRONG = "In diesen Zeilen steht etwas, das im Reagenzglas nicht zu sehen war:";
/** Of a line: what was written, what the tube showed. */
export const YOU_WROTE = "du hast geschrieben";
export const IT_SHOWED = "zu sehen war";
export const andMore = (count: number) => `Und ${count} weitere: Sie sind oben bewertet.`;
export const NOTHING_WRONG = "Keine Zeile sagt etwas Falsches; was fehlt, lässt es offen.";
export const TOO_MUCH =
  "Dein Protokoll lässt so viel offen, und die Aufgabe sagt so viel über die Proben, dass sich hier nicht verfolgen lässt, was daraus folgt.";
export const fitsNone = (sample: string) => `Zu ${sample} passt kein Salz, das die Aufgabe zulässt.`;
export const fitsAlone = (sample: string) =>
  `Zu ${sample} passen für sich genommen Salze, aber nicht zusammen mit den anderen Proben und den Angaben der Aufgabe.`;
export const holds = (sample: string, salt: string, formula: string) => `${sample} enthält ${salt}, ${formula}.`;
/** @param more salts besides those named */
export const open = (sample: string, salts: readonly string[], more: number) =>
  `${sample} ist noch offen: ${more > 0 ? `${salts.join(", ")} oder ${more} weitere` : list(salts, OR)}.`;

/** The marks of the conclusion: what is marked, what was answered, why the mark is earned or not. */
export const ION = { cations: "Kation", anions: "Anion" };
export const proofOf = (kind: Kind) => `Beweis für das ${ION[kind]}`;
export const NOTHING = "nichts";
export const LEFT_OPEN = "offen gelassen";
export const both = (ions: readonly string[]) => ions.join(" und ");
export const testsLeave = (ions: readonly string[]) => `Diese Versuche lassen ${list(ions, OR)} übrig.`;
export const notProved = (ions: readonly string[], right: readonly string[]) =>
  `Diese Versuche beweisen es nicht: ${list(ions, OR)} ergäbe dasselbe Protokoll. Es war ${both(right)}.`;
export const RIGHT = "Richtig.";
export const itWas = (ions: readonly string[]) => `Es war ${both(ions)}.`;
export const ONLY_WITH_ION = "Nur mit dem richtigen Ion.";
export const NOTHING_ELSE_LEFT = "Die Aufgabe und die anderen Proben lassen nichts anderes übrig.";
export const NO_TEST = "Kein Versuch ist genannt.";
/** @param more ions besides those named */
export const couldAlsoBe = (ions: readonly string[], more: number) =>
  `Mit diesen allein könnte es auch ${list(ions, OR)}${more > 0 ? ` oder ${more === 1 ? "ein weiteres" : `${more} weitere`}` : ""} sein.`;
export const idle = (tests: readonly string[]) =>
  `Sie beweisen es, aber ${list(tests)} tragen nichts bei: Nenne nur, was entscheidet.`;
export const PROVED = "Nichts anderes ergäbe diese Beobachtungen.";

/** What to do about marks that were lost. */
export const ADVICE: Readonly<Record<CreditFor | "conclusion" | "empty", string>> = {
  none: 'Schreibe "keine sichtbare Veränderung", wo nichts geschieht: Eine leere Zeile bringt nichts, und "keine Reaktion" ist ein Schluss.',
  precipitate: "Schreibe bei jedem Feststoff, der entsteht, das Wort Niederschlag und seine Farbe.",
  fate: "Wenn ein Reagenz im Überschuss oder zu einem Feststoff kommt, schreibe, was aus dem Feststoff wird: Er löst sich, löst sich teilweise oder bleibt.",
  solution: "Wenn ein Feststoff verschwunden ist, nenne die Farbe der Lösung: farblos, nicht klar.",
  effervescence: "Achte sofort auf Bläschen, wenn Säure dazukommt, und schreibe Gasentwicklung.",
  "gas test":
    "Ein Gas bringt seinen Punkt durch seinen Nachweis: Nenne Papier, Span oder Kalkwasser und was damit geschah. Auch dass nichts geschah, ist eine Beobachtung.",
  "gas name": "Nenne nach dem Nachweis eines Gases das Gas.",
  indicator: "Schreibe die Farbe des Indikators auf.",
  residue: "Schreibe nach dem Erhitzen, ob etwas zurückbleibt.",
  hot: "Sieh dir einen erhitzten Rückstand an, solange er heiß ist, und schreibe seine Farbe auf.",
  cold: "Sieh dir einen erhitzten Rückstand noch einmal an, wenn er kalt ist.",
  fumes: "Achte beim Erhitzen eines Feststoffs auf farbige Dämpfe darüber.",
  sublimate: "Achte beim Erhitzen eines Feststoffs darauf, ob sich am kühlen Glas etwas Festes absetzt.",
  droplets: "Achte beim Erhitzen eines Feststoffs auf Tropfen am kühlen Glas.",
  flame: "Nenne die Farbe der Flamme mit den üblichen Wörtern: hellviolett, ziegelrot, hellgrün.",
  conclusion: "Frage bei jedem Ion, welche anderen die Aufgabe zulässt, und nenne die Versuche, die sie ausschließen.",
  empty: "Schreibe für jedes Reagenzglas etwas: Wo nichts geschieht, ist das die Beobachtung.",
};
export const advice = (words: string, times: number) => `${words} (${times === 1 ? "ein Punkt" : `${times}-mal`})`;
