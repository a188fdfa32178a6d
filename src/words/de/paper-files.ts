/** A paper from a file, and as one or as a link: what is read, what is wrong with it, what is written. */

/** From a file. */
export const FILE = "Datei (.mdx):";
export const OR_ITS_TEXT = "Oder ihr Text, vom ersten --- bis zum zweiten";
export const THIS_TEXT = "dieser Text";
export const READING = "Wird gelesen …";
export const OPEN_TEXT = "Diesen Text öffnen";
export const NOT_LOADED = "Was die Datei liest, ließ sich nicht laden. Prüfe die Verbindung und lade die Seite neu.";
export const tooManyBytes = (bytes: number) => `Die Datei hat ${bytes} Byte; kein Versuch ist so lang.`;
export const tooLong = (letters: number, most: number) =>
  `Die Datei hat ${letters} Zeichen; ein Versuch hat höchstens ${most}.`;
export const IS_OPEN =
  "Die Aufgabe aus der Datei ist geöffnet. Eine Lösung darin ist weggelassen: Hier entscheidet das Protokoll.";
export const IS_OPEN_IN_PART = "Was sich von der Datei lesen ließ, ist geöffnet; was falsch ist, ist markiert.";
export const hasFaults = (count: number) =>
  `${count === 1 ? "Darin ist ein Fehler." : `Darin sind ${count} Fehler.`} Deine Aufgabe ist, wie sie war.`;
export const andMore = (count: number) => `Und ${count} weitere.`;
export const OPEN_WHAT_COULD = "Was sich lesen ließ, als neue Aufgabe öffnen";
export const line = (line: number, column: number) => `Zeile ${line}, Spalte ${column}`;
export const faultAt = (place: string, path: string, message: string) => `${place} (${path}): ${message}.`;
export const fault = (place: string, what: string, found: string, advice: string) =>
  `${place}: ${what}. Gefunden: ${found}. Zu tun: ${advice}.`;

/** As a link. */
export const CANNOT_LINK = "Dieser Browser kann keinen solchen Link machen. Sichere die Aufgabe als Datei.";
export const TOO_LONG_FOR_LINK = "Die Aufgabe ist zu lang für einen Link. Sichere sie als Datei.";
export const COPIED = "Der Link ist kopiert.";
export const COPY_BELOW = "Der Link steht unten: Kopiere ihn von dort.";

/** As a file. */
export const twoParts = (letter: string) =>
  `Zwei Teile ${letter ? `heißen ${letter}` : "haben keinen Buchstaben"}. Gib jedem seinen eigenen Buchstaben, dann sichere.`;
export const SAVED = "Die Datei ist gesichert. Ihr Text steht auch unten.";
export const TITLE = "Eine eigene Aufgabe";
export const SUMMARY =
  "Eine Aufgabe, eingegeben auf der Seite für eigene Aufgaben. Wer sie veröffentlicht, schreibt hier eine Zusammenfassung.";
/** Beside entries of the file. */
export const LEVEL_IS = "foundation, core oder stretch";
export const ORDER_IS = "ihr Platz im Kurs";
export const ANSWER_IS = "die Lösung: Schreibe hier das Salz hin, etwa ZnSO4*7H2O";
export const RECORD_IS = "was zu sehen war, wie es der Leitfaden für Autoren sagt";
export const WRITE_HERE = "Schreibe hier in eigenen Worten, woher die Proben kommen und was es herauszufinden gibt.";
