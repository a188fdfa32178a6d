/** What the reader has practised, in this browser. */

export const MARK = "Das habe ich geübt";
export const NOT_MARKED = "Nicht vermerkt: Prüfe die Verbindung und lade die Seite neu.";
export const NOT_KEPT = "Dein Browser hebt das nicht auf: Sein Speicher ist abgeschaltet oder voll.";
export const SAVE = "Meine Punkte als Datei sichern";
export const FORGET = "Meine Punkte vergessen";
export const FORGOTTEN = "Vergessen.";
export const NOT_FORGOTTEN = "Dein Browser hat es verweigert: Lösche seine Daten für diese Website.";

const times = (count: number): string => (count === 1 ? "einmal" : count === 2 ? "zweimal" : `${count}-mal`);
/** "Du hast das zweimal geübt, zuletzt am 30. November 2026; bestenfalls 9 von 12 Punkten." */
export const practised = (count: number, last: string, best: { earned: number; of: number } | undefined) =>
  `Du hast das ${times(count)} geübt, zuletzt am ${last}${best ? `; bestenfalls ${best.earned} von ${best.of} Punkten` : ""}.`;
