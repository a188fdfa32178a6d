/** The page of a walkthrough around its five parts, and practicals in lists. */

export const LEVELS = { foundation: "Grundlagen", core: "Kern", stretch: "anspruchsvoll" };
const samples = (count: number) => (count === 1 ? "eine Probe" : `${count} Proben`);
/** Under a practical in a list; `level` is one of LEVELS. */
export const aboutPractical = (level: string, minutes: number, count: number) =>
  `${level} · ${minutes} Minuten · ${samples(count)}`;
export const practicalNumber = (order: number) => `Versuch ${order}`;

export const BEFORE_YOU_BEGIN = "Bevor du beginnst";
export const TAKE_CARE = "Vorsicht.";
export const GOGGLES =
  "Schutzbrille auf, von der ersten Flasche bis zum letzten gespülten Reagenzglas. Deine Lehrkraft und die Regeln deiner Schule gehen vor.";
export const PARTS_OF_THE_JOB = "Teile der Arbeit";
export const PARTS = {
  read: "Lesen",
  prepare: "Vorbereiten",
  "carry-out": "Durchführen",
  record: "Protokollieren",
  conclude: "Auswerten",
};
/** A link, and what it leads to. */
export const PRACTISE = "Diese Nachweise blind üben";
export const PRACTISE_ABOUT =
  ": andere Salze, gezogen mit einer Nummer, die eine Klasse teilen kann, mit einem Punkt für jede Zeile.";
export const TAKE_AWAY = "Diese Anleitung mitnehmen";
export const TAKE_AWAY_ABOUT = ": eine Datei, die ohne Netz und ohne den Kurs aufgeht, mit Protokoll und Auswertung.";

/** The quiet line for those who prepare it, its links between. */
export const TEACHERS = {
  for: "Für Lehrkräfte und Sammlung:",
  link: "ein Link für die Klasse",
  thenNaming: ", mit seinem QR-Code; und drei, die Salze nennen,",
  unknowns: "Unbekannte wählen",
  class: "Vorbereitungsblatt für eine Klasse",
  marks: "Bewertungsbogen",
};
