/** The sheets that are printed for one practical. Amounts come as text. */

export const SHEETS = {
  "bench-card": {
    name: "Karte für den Arbeitsplatz",
    about: "eine Seite für den Arbeitsplatz: Gestell, Füllmarken, Flaschen, Reihenfolge der Arbeit, Abfall",
  },
  labels: { name: "Etiketten", about: "zum Ausschneiden und Aufkleben auf die Gläser" },
  record: { name: "Protokollblatt", about: "leer, zum Ausfüllen von Hand" },
  marks: { name: "Bewertungsbogen", about: "für die Lehrkraft; er nennt die Salze" },
};
export const sheetOf = (name: string, practical: string, about: string) => `${name} zu „${practical}“: ${about}.`;
export const BACK_TO_WALKTHROUGH = "Zurück zur Anleitung";
export const print = (about: string) => `Vom Browser auf A4 zu drucken: ${about}.`;

/** Labels. */
export const LABELS_ABOUT =
  "Ein Etikett für jedes Glas: Probe und Teil, dann die Marken in mm, innen vom Boden an, in Klammern von der dünnsten bis zur dicksten Wand, mit der es solche Gläser gibt. Schneide an den Linien entlang und klebe es über die höchste Marke.";
export const ofSolid = (grams: string) => `${grams} g Feststoff`;
export const DOES_NOT_FIT = "passt nicht hinein";
export const TOO_MUCH = "zu viel";
export const hotAtMost = (cm3: string) => `heiß: höchstens ${cm3} cm³`;

/** Record. */
export const FILL = { name: "Name", date: "Datum" };
export const RECORD_ABOUT =
  "Schreib sofort, was du siehst: Farbe, Niederschlag oder Lösung, im Überschuss, ein Gas mit seinem Nachweis. Ist nichts zu sehen, schreib „keine sichtbare Veränderung“.";
export const TEST = "Versuch";
export const SAMPLE = "Probe";
export const NOT_ASKED = "nicht verlangt";
export const CONCLUDE = "Auswerten";
export const CONCLUSION = { cation: "Kation", anion: "Anion", because: "Denn" };

/** Marks. */
export const NAMES_SALTS = "Er nennt die Salze.";
export const marksAbout = (total: number) =>
  `Ein Punkt für alles, was zu sehen war, und für jedes Ion, insgesamt ${total}: So wird gewöhnlich bewertet. Der eigene Maßstab deiner Fachschaft geht vor.`;
export const marksOf = (total: number) => `Punkte, von ${total}`;
export const MARKS = {
  each: "Je ein Punkt",
  instead: "Auch anerkannt",
  marks: "Punkte",
  fewest: "Die wenigsten Beobachtungen, die es beweisen",
  by: "Bewiesen durch",
};
/** Between readings that are accepted as well. */
export const OR_ELSE = "; oder ";
export const CONCLUSIONS = "Auswertung";
/** "Zn^2+ aus a(i), b(ii) für R": tests of another sample have its letter. */
export const provedFrom = (ion: string, places: readonly { cell: string; sample?: string }[]) =>
  `${ion} aus ${places.map(({ cell, sample }) => (sample === undefined ? cell : `${cell} für ${sample}`)).join(", ")}`;

/** Bench card. */
export const GOGGLES = "Schutzbrille auf.";
export const CARD_ABOUT = "Deine Lehrkraft und die Regeln deiner Schule gehen dieser Karte vor.";
export const HOT = "Ein heißes Glas zeigt von allen weg und wird nicht über seine Marke gefüllt.";
export const SINK = "Nichts kommt in den Ausguss, wofür unten eine Flasche steht.";
export const RACK = "Gestell, vordere Reihe zuerst, jede von links nach rechts";
export const RACK_ABOUT =
  "Millimeter innen vom Boden an, für gängige Wände: Wie weit sie abweichen können, sagen die Etiketten.";
export const CHECK = "Zuerst prüfen";
export const BOTTLES = "Flaschen, jede mit ihrer Pipette";
/** Before its letter. */
export const THE_SAMPLE = "Probe";
/** What a waste bottle must hold before it takes a tube; the card has little room. */
export const firstInto = (reagent: string, bottle: string) => `${reagent}, zuerst in: ${bottle}`;
export const pieces = (count: number) => `${count} kleine Stücke`;
export const GASES = "Gase";
export const ORDER = "Reihenfolge der Arbeit";
export const ORDER_HEADS = { minute: "Minute", tubes: "Gläser", what: "Was" };
export const ALL_TUBES = "alle";
export const CLEAR_UP = "Aufräumen.";
export const AFTERWARDS = "Danach";
/** Wohin geleert wird, wozu vorher etwas gegeben wird. */
export const afterAdding = (into: string, what: readonly string[]) => `${into}, vorher dazu ${what.join(" und ")}`;
export const HOW_EMPTIED = "Wie jedes geleert wird, steht in der Anleitung.";
