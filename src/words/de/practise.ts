/** Blind practice: its number, test by test, the conclusion. What is said of the marks at the end is in `practise-result.ts`. */

export const NO_SCRIPT = {
  print: "Zum Üben hier braucht es JavaScript. Drucke sonst das",
  sheet: "leere Protokollblatt",
  compare:
    ", lass jemanden die Unbekannten wählen, schreibe, was du siehst, und vergleiche es mit den Formulierungen der",
  walkthrough: "Anleitung",
};
export const NOTHING_TO_DRAW =
  "Hier gibt es nichts zu üben: Jeder Satz von Salzen, den diese Aufgabe zulässt, brächte eines in einen Versuch, der damit nicht sicher ist.";

/** The number of the set. */
export const NO_NUMBER = "Es fehlt eine Nummer";
export const noNumberOfASet = (typed: string) => `„${typed}“ ist keine Nummer eines Satzes`;
export const expected = (fault: string, most: number) => `${fault}: Erwartet wird eine ganze Zahl von 1 bis ${most}.`;
export const CHOOSE_BELOW = "Wähle unten eine.";
export const underWay = (seed: number) => `Eine Übung mit Satz ${seed} ist noch nicht zu Ende.`;
export const goOn = (seed: number) => `Weiter mit Satz ${seed}`;
export const giveUpFor = (seed: number) => `Abbrechen und Satz ${seed} beginnen`;
export const NUMBER = "Nummer des Satzes";
export const BEGIN = "Beginnen";
export const BEGIN_NEW = "Mit einer neuen Nummer beginnen";
export const drawn = (seed: number, first: string) => `Satz ${seed} ist gezogen. Erster Versuch: ${first}.`;
/** Before the number, and after it. */
export const SET = "Satz";
export const SAME_UNKNOWNS = ": Wer diese Nummer eingibt, bekommt dieselben Unbekannten.";
export const CLEAR = "Löschen und eine andere Nummer wählen";
export const CLEARED = "Gelöscht: Von dieser Übung ist nichts mehr da.";
export const NOT_KEPT =
  "Dieser Browser hebt nichts auf: Was du schreibst, ist verloren, wenn die Seite geschlossen oder neu geladen wird.";

/** Where the reader is on the way. */
export const WAY = "Die Versuche der Reihe nach";
export const LAST = "auswerten";
export const DONE = "erledigt";

/** One test. */
export const cautionsFor = (test: string) => `Hinweise zur Sicherheit für ${test}`;
export const TAKE_CARE = "Vorsicht:";
export const TEST_SAYS = "Die Aufgabe sagt:";
export const EXPECT = "Was könntest du sehen, und was hieße das?";
export const EXPECT_OR_LEAVE = "(du kannst das auch leer lassen)";
export const CARRY_OUT = "Durchführen";
export const EXPECTED = "Du hast erwartet:";
export const SEE = "Was du siehst";
export const notDoneOn = (samples: string) => `${samples}: hier nicht durchgeführt.`;
export const stillEmpty = (sample: string) => `${sample} ist noch leer.`;
export const LINE_EMPTY =
  "Eine Zeile ist noch leer. Schreibe hinein, was du siehst, oder drücke noch einmal auf den Knopf, um sie auszulassen.";
export const SHOW_MODEL = "Musterformulierung zeigen";
export const marks = (earned: number, of: number) => `${earned} von ${of} Punkten.`;
export const marked = (earned: number, of: number) => `Bewertet: ${earned} von ${of}`;
export const nextTest = (test: string) => `Nächster Versuch: ${test}.`;
export const ALL_DONE = "Alle Versuche sind durchgeführt. Jetzt werte aus.";
export const onTo = (test: string) => `Weiter zu ${test}`;
export const ON_TO_CONCLUSION = "Weiter zur Auswertung";

/** One line of the record. */
export const recordFor = (sample: string) => `Dein Protokoll für ${sample}`;
export const OR_CHOOSE = "oder wähle";
export const readAs = (words: string) => `Gelesen als: ${words}.`;
export const MODEL_WORDING = "(Musterformulierung)";
export const YOU_WROTE = "Du hast geschrieben:";
export const WROTE_NOTHING = "nichts";
export const mark = (earned: boolean) => (earned ? "1 Punkt" : "kein Punkt");
export const notSeenHere = (words: string) => `Hier nicht zu sehen: ${words}.`;

/** The conclusion. */
export const CONCLUDE = "Auswerten";
export const CONCLUDE_ABOUT = "welche Ionen, und welche Versuche sie beweisen";
export const PAPER_SAYS = "Was die Aufgabe sagt";
export const KIND = { cations: "Kation", anions: "Anion" };
export const CHOOSE = "wähle";
export const LEFT_OPEN = "diese Versuche lassen es offen";
export const PROVED_BY = "bewiesen durch";
export const ionProvedBy = (kind: string, sample: string, test: string) =>
  `${kind} von ${sample} bewiesen durch ${test}`;
export const AS_FEW = "Kreuze so wenige Versuche an wie nötig: die, ohne die das Ion auch ein anderes sein könnte.";
export const MARK_ALL = "Alles bewerten";
export const OWN_RECORD = "Dein Protokoll";
export const TEST = "Versuch";
export const NOTHING_WRITTEN = "nichts geschrieben";
export const NOT_DONE = "nicht durchgeführt";
export const MARKING = "Wird bewertet …";
export const NOT_FETCHED =
  "Die Bewertung ließ sich nicht laden. Was du geschrieben hast, ist aufgehoben: Prüfe die Verbindung und lade die Seite neu.";
