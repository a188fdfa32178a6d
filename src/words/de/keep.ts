/** Keeping the whole course on the device. Sizes come as text. */

export const lessThan = (size: string) => `weniger als ${size}`;
export const FETCH_NEWER = "Neuere Ausgabe laden";
export const keep = (size: string) => `Diesen Kurs auf diesem Gerät behalten: ${size}`;
/** How it stands. */
export const NOT_KEPT = "Der Kurs ist auf diesem Gerät nicht gespeichert.";
export const UNREACHABLE =
  "Der Server des Kurses ist gerade nicht erreichbar, deshalb lässt sich nichts laden. Versuche es wieder, wenn dieses Gerät ein Netz hat.";
export const kept = (files: number, size: string) =>
  `Der Kurs ist auf diesem Gerät gespeichert: ${files} Dateien, ${size}.`;
export const NOT_KNOWN =
  "Sein Server ist gerade nicht erreichbar, deshalb ist nicht bekannt, ob es eine neuere Ausgabe gibt.";
export const NEWEST = "Es ist die neueste Ausgabe.";
export const newer = (size: string) =>
  `Es gibt eine neuere Ausgabe, insgesamt ${size}; geladen wird nur, was sich geändert hat.`;
/** No room. */
export const left = (free: string) => `Der Browser hat für diese Website noch ${free} frei.`;
export const noRoom = (size: string) =>
  `Für den Kurs ist kein Platz: Er braucht ${size}. Entferne etwas von diesem Gerät und versuche es dann wieder; bis dahin sichere einzelne Anleitungen oder drucke sie.`;
/** What went wrong. */
export const FAULTS = {
  unreachable:
    "Das Netz ging verloren, bevor alles gespeichert war. Was geladen ist, bleibt: Mach weiter, wenn das Netz wieder da ist.",
  changed:
    "Eine Datei des Kurses war nicht die, die seine Liste nennt: Vielleicht wird gerade eine neue Ausgabe bereitgestellt. Versuche es in ein paar Minuten wieder.",
  refused:
    "Der Browser weigert sich, für diese Website etwas zu speichern, wie in einem privaten Fenster. Erlaube es in den Einstellungen des Browsers, oder nimm ein Fenster, das nicht privat ist.",
  stopped: "Angehalten. Was geladen ist, bleibt auf diesem Gerät: Mach weiter, wann du willst, oder entferne es.",
};
export const NOT_HERE =
  "Dieser Browser behält hier keine Kurse: Er ist zu alt, oder diese Adresse beginnt nicht mit https. Der Kurs geht wie bisher, solange ein Netz da ist.";
export const NOT_FOR_GOOD =
  "Der Browser verspricht nicht, ihn zu behalten: Wird der Platz auf dem Gerät knapp, kann er den Kurs entfernen, und du müsstest ihn neu laden.";
export const LOOKING = "Es wird nachgesehen, was auf diesem Gerät gespeichert ist …";
export const FILES_STORED = "Gespeicherte Dateien";
export const filesOf = (done: number, all: number) => `${done} von ${all} Dateien`;
export const STOP = "Anhalten";
export const remove = (size: string) => `Von diesem Gerät entfernen: gibt ${size} frei`;
export const REMOVE_FETCHED = "Entfernen, was geladen ist";
/** On a kept page when the course has changed: a sentence, the words of the link. */
export const KEPT_PAGE = "Du liest die Ausgabe, die auf diesem Gerät gespeichert ist. Es gibt eine neuere:";
export const FETCH_IT = "laden";

/** The page around it. */
export const TITLE = "Den Kurs auf diesem Gerät behalten";
export const DESCRIPTION = "Der ganze Kurs ohne Netz, mit Suche, Protokollen und Berechnung.";
export const ABOUT =
  "Auf deinem Telefon oder Rechner behalten, geht der ganze Kurs ohne Netz: jede Anleitung mit ihrem Protokoll, die Kurven, das blinde Üben, eine eigene Aufgabe und die Suche. Du erfährst zuerst, wie groß er ist, und nichts wird gespeichert, bis du auf den Knopf drückst.";
export const NEEDS_SCRIPT =
  "Um den Kurs zu behalten, braucht es JavaScript, und das ist abgeschaltet. Du kannst eine Anleitung drucken oder ihre Seite in deinem Browser sichern.";
export const ONCE_KEPT = "Wenn er gespeichert ist";
export const WHEN_KEPT = [
  "Öffne ihn unter derselben Adresse wie vorher, oder lege ihn auf den Startbildschirm: Im Menü deines Browsers heißt das „Installieren“ oder „Zum Startbildschirm hinzufügen“.",
  "Wenn sich der Kurs geändert hat, sagt es eine Zeile oben auf seinen Seiten; die neuere Ausgabe wird erst geladen, wenn du auf dieser Seite danach fragst.",
  "Was du schreibst, bleibt in diesem Browser, wie mit Netz auch. Nichts wird irgendwohin gesendet.",
  "Auf einem Gerät, das auch andere benutzen, entferne den Kurs, wenn du gehst: Was im Browser gespeichert ist, bleibt für alle, die nach dir kommen.",
];
export const NEWEST_FIRST = "Erst das Neueste";
export const DOES_NOT_CHANGE =
  "Ein gespeicherter Kurs ändert sich nicht von selbst. Bevor du am Arbeitsplatz stehst, sieh hier einmal mit Netz nach: Ein Hinweis zur Sicherheit kann verbessert worden sein.";
