/** A link to a practical for a class: the page on which a teacher makes it. */

export const pageTitle = (practical: string) => `Ein Link für die Klasse: ${practical}`;
export const pageAbout = (practical: string) =>
  `Für Lehrkräfte: Wähle, was eine Klasse von „${practical}“ sieht, und verschicke den Link oder zeige seinen QR-Code.`;
export const BACK_TO_WALKTHROUGH = "Zurück zur Anleitung";
export const LEAD =
  "Wähle, was deine Klasse sieht, wenn sie den Link öffnet. Nichts wird gesendet oder gespeichert: Alles steht im Link.";
export const NEEDS_SCRIPT =
  "Die Auswahl hier und der QR-Code brauchen JavaScript. Wie man den Link von Hand schreibt, sagt die Tabelle unten.";

/** What is chosen. */
export const OPENS = "Öffnet";
export const WALKTHROUGH = "die Anleitung";
export const PRACTICE = "blindes Üben, für alle dieselben Unbekannten";
export const BEGINS = "Beginnt";
export const EMPTY = "Das Protokoll ist leer";
export const HIDDEN = "Die Auswertung ist verborgen, bis danach gefragt wird";
export const NUMBER = "Nummer der Zusammenstellung";
export const ANOTHER = "Andere Nummer";
export const stillSet = (fault: string, seed: number) =>
  `${fault} Der Link unten ist noch der der Zusammenstellung ${seed}.`;
export const LINK = "Der Link";
export const COPY = "Kopieren";
export const COPIED = "Kopiert.";
export const NOT_COPIED = "Der Browser hat ihn nicht kopiert: Markiere den Link und kopiere ihn von Hand.";
export const qrCode = (link: string) => `QR-Code des Links ${link}`;
export const NO_QR_CODE =
  "Der QR-Code ließ sich nicht zeichnen: Prüfe die Verbindung und lade die Seite neu. Der Link oben geht auch ohne ihn.";

/** Where the page begins. */
export const AT_HEAD = "am Anfang";
export const carryOutPart = (label: string, title: string) => `Durchführen, Teil ${label}: ${title}`;
/** What a student sees who opens it. */
export const practiseSet = (seed: number) => `Alle üben blind mit denselben Unbekannten, Zusammenstellung ${seed}.`;
/** @param start where it opens, if not at its head */
export function opens(start: string | undefined, empty: boolean, hidden: boolean): string {
  const where = start === undefined ? "am Anfang" : `bei „${start}“`;
  const what = empty ? "mit leerem Protokoll" : "mit ausgefülltem Protokoll";
  const told = hidden
    ? "was die Versuche sagen und die Auswertung bleiben verborgen, bis danach gefragt wird, und eine Zeile sagt das"
    : "die Auswertung ist zu sehen";
  return `Die Anleitung öffnet sich ${where}, ${what}; ${told}.`;
}

/** In a frame. */
export const FRAME = "Im Rahmen einer Lernplattform";
export const FRAME_ABOUT =
  "Diese Teile haben auch eigene Seiten, gemacht für den Rahmen einer anderen Website. Kopiere die Adresse von einer in deine Plattform:";
export const NAMES_SALTS = ", nennt die Salze";

/** How the link is written. */
export const WRITTEN = "Wie der Link geschrieben wird";
export const HEADS = { end: "Am Ende der Adresse", does: "Was es bewirkt" };
/** Before what it does, on a phone. */
export const DOES = "Bewirkt";
export const OWN_RECORD =
  "Das Protokoll ist leer; was darin gewählt wird, kommt in die eigene Adresse, die man zurückschicken kann.";
export const HELD =
  "Alles, was die Salze nennt, ist verborgen, bis ein Knopf gedrückt wird. Zusammen mit dem Eintrag darüber:";
/** The names of the places stand after the first; after the second an example; then the third. */
export const PLACE = ["Die Seite öffnet sich dort:", "oder ein Teil der Aufgabe,", "Immer zuletzt."] as const;
export const SEED = "Blindes Üben mit den Unbekannten dieser Nummer, einer ganzen Zahl von 1 bis 999999.";
export const NOT_LOCKED =
  "Verborgen heißt nicht verschlossen: Wer die Antwort sucht, findet sie, hier oder auf den Seiten für Lehrkräfte. Ohne JavaScript ist die ganze Anleitung zu sehen.";
