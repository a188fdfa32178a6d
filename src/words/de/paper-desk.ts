/** Why a paper of one's own could not be worked out, and what the worker says of its parts. */

export const NOT_STARTED = "Die Berechnung ließ sich in diesem Browser nicht starten.";
export const TOO_LONG =
  "Die Berechnung dauerte zu lange und wurde abgebrochen. Kreuze weniger Ionen an, oder gib weniger Versuche ein; was du eingegeben hast, ist aufgehoben.";
export const FAILED =
  "Die Berechnung ist gescheitert. Was du eingegeben hast, ist aufgehoben; lade die Seite neu, um es noch einmal zu versuchen.";
export const UNREADABLE =
  "Die Antwort der Berechnung lässt sich nicht lesen. Lade die Seite neu; was du eingegeben hast, ist aufgehoben.";
export const tooManySalts = (many: number, most: number) =>
  `Diese Listen von Ionen lassen ${many} Möglichkeiten, was eine Probe enthalten könnte; mehr als ${most} werden nicht ausgerechnet. Kreuze die Ionen an, die deine Aufgabe nennt.`;
export const tooManySights = (test: string) =>
  `Versuch ${test} könnte mehr Verschiedenes zeigen, als eine Zeile des Protokolls Platz hat. Kreuze weniger Ionen an, oder gib einigen seiner Schritte eine eigene Zeile.`;
export const noEquilibrium = (why: string) =>
  `Das ließ sich nicht ausrechnen: ${why}. Prüfe die Konzentrationen und Volumen.`;
/** A step that reads well and cannot be done. */
export const impossible = (found: string, advice: string) => `gefunden ${found}; ${advice}`;
/** In the place of a caution that has been said. */
export const asBeside = (part: string) => `Wie neben Teil ${part}.`;
