/** The record of a walkthrough. */

/** Said of any test, besides its own sights: no observation is ever worded like one of these. */
export const NOT_DONE = "nicht durchgeführt";
export const ELSE = "etwas anderes";
export const NOT_ASKED = "nicht verlangt";

export const HEADING = "Protokollieren";
export const ABOUT = "ändere, was zu sehen war; die Auswertung folgt";
export const TABLE = "Das Protokoll";
export const TEST = "Versuch";
/** A place of the record: "a(i) für K". */
export const cellFor = (cell: string, sample: string) => `${cell} für ${sample}`;
export const CHANGED = "geändert";
/** Before what stood there. */
export const WAS = ", vorher:";

export const RESET = "Zurück zum Protokoll der Anleitung";
export const EMPTY = "Mit leerem Protokoll beginnen";
export const UNDO = "Rückgängig";
export const AS_GIVEN = "Wie in der Anleitung protokolliert.";
export const changed = (count: number) => `${count} geändert.`;
export const filledIn = (done: number, of: number) => `Dein eigenes Protokoll: ${done} von ${of} ausgefüllt.`;

export const UNREADABLE = "Ein Teil des Links ließ sich nicht lesen.";
/** @param own the record was begun empty */
export const unreadableLeft = (own: boolean) =>
  own ? "Dort ist dein Protokoll leer." : "Dort steht das Protokoll, wie es die Anleitung hat.";
export const IN_ADDRESS =
  "Die Adresse dieser Seite enthält jetzt dein Protokoll: Kopiere sie, um es aufzuheben oder weiterzugeben.";
export const IN_FRAME =
  "Dieses Protokoll geht verloren, wenn die Seite geschlossen wird: Drucke es, oder öffne die Anleitung, um deines aufzuheben.";
export const FROM_DISK =
  "Diese Seite wurde als Datei geöffnet und behält kein Protokoll: Drucke sie, um deines aufzuheben.";

/** Spoken after a change, what was done before what follows from it. */
export const FOUND_IN_LINK = "Das Protokoll ist das aus dem Link";
export const EMPTIED = "Das Protokoll ist leer: Kein Versuch ist durchgeführt";
export const BACK = "Zurück beim Protokoll der Anleitung";
export const UNDONE = "Rückgängig gemacht";
export const STILL_THAT_OF_THE_WALKTHROUGH =
  "die Auswertung ließ sich nicht laden, sie ist deshalb noch die der Anleitung";

export const CONCLUDE_HEADING = "Auswerten";
export const CONCLUDE_ABOUT = "aus diesem Protokoll und den Angaben der Aufgabe";
export const HELD = "Deine Lehrkraft verbirgt die Auswertung, bis du danach fragst.";
export const SHOW_CONCLUSION = "Auswertung zeigen";
export const WORKING = "Wird ausgewertet …";
export const NOT_LOADED =
  "Die Auswertung ließ sich nicht laden, unten steht deshalb noch die der Anleitung. Dein Protokoll ist in der Adresse dieser Seite aufgehoben: Prüfe die Verbindung und lade die Seite neu.";
export const NEEDS_SCRIPT =
  "Um das Protokoll zu ändern, braucht es JavaScript; die Listen unten sind abgeschaltet und zeigen das Protokoll der Anleitung mit allem, was daraus folgt.";

/** What is wrong with a link. */
export const linkTooLong = (letters: number, most: number) =>
  `Der Link ist ${letters} Zeichen lang, erwartet werden höchstens ${most}.`;
/** Of an entry that can say one thing only. */
export const onlyUnderstood = (entry: string, found: string, own: string) =>
  `${entry}: gefunden ${found}; nur ${own} wird dort verstanden.`;
export const noSuchPlace = (name: string, such: string) =>
  `${name}: Diese Stelle gibt es im Protokoll nicht; erwartet wird eine wie ${such}.`;
export const noSuchSight = (place: string, found: string) =>
  `${place}: gefunden ${found}, erwartet wird eine Beobachtung aus der Liste.`;
export const givenTwice = (place: string, times: number) =>
  `${place}: gefunden ${times} Einträge, erwartet wird einer.`;
export const moreLikeThese = (count: number) => `Und ${count} weitere wie diese.`;
export const nothingBehindMark = (found: string) =>
  `${found}: Hinter „#“ wird nichts gelesen, ein Protokoll steht hinter „?“.`;
export const quote = (text: string) => `„${text}“`;
