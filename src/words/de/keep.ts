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
