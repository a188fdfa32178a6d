/** A paper of one's own: the page, the shelf of papers, how the work stands, what was read, the tests as instructions, the record. */
import type { Language } from "../tags.ts";

export const TITLE = "Deine eigene Aufgabe";
export const DESCRIPTION =
  "Gib eine eigene Aufgabe ein: wozu jeder Versuch dient, der Arbeitsplatz, die Reihenfolge der Arbeit, ein Protokoll zum Ausfüllen und was daraus folgt.";
export const ABOUT =
  "Gib die Aufgabe ein, die vor dir liegt: ihre Proben, was sie darüber sagt, und ihre Versuche, Schritt für Schritt oder durch Einfügen ihrer Sätze. Sofort hast du, wozu jeder Versuch dient, den Arbeitsplatz, die Reihenfolge der Arbeit, ein Protokoll zum Ausfüllen und was daraus folgt. Nichts, was du eingibst, verlässt dieses Gerät.";
export const BEFORE_YOU_BEGIN = "Bevor du beginnst";
export const TAKE_CARE = "Vorsicht.";
export const COMES_FIRST =
  "Deine Lehrkraft, deine Aufgabe und die Regeln deiner Schule gehen allem vor, was hier ausgerechnet wird. Schutzbrille auf, von der ersten Flasche bis zum letzten gespülten Reagenzglas.";
/** Where scripts are off, its links between. */
export const NO_SCRIPT = {
  read: "Diese Seite rechnet deine Aufgabe in deinem Browser aus; dafür braucht sie JavaScript, und das ist abgeschaltet. Ohne JavaScript kannst du lesen, wie der Kurs die Arbeit macht, in jedem seiner",
  practicals: "Versuche",
  lookUp: ", nachschlagen, was jedes Ion zeigt, unter",
  tests: "Nachweise",
  beware: ", und wovor du dich hüten musst, unter",
  cautions: "Sicherheit",
};

export const JOB = "Teile der Arbeit";
/** Each part of the job, and beside its heading in a few words. */
export const PARTS = {
  read: ["Lesen", "was die Aufgabe vorgibt und verlangt"],
  prepare: ["Vorbereiten", "bevor etwas geöffnet wird"],
  "carry-out": ["Durchführen", "in jedem Teil ein frisches Reagenzglas für jede Probe"],
  record: ["Protokollieren", "was du siehst, in Worten, die Punkte bringen"],
  conclude: ["Auswerten", "aus diesem Protokoll und den Angaben der Aufgabe"],
  keep: ["Aufheben", "nichts verlässt dieses Gerät"],
} as const;
export const KEEP_AND_SHARE = "Aufheben und weitergeben";

/** How the work stands. */
export const WORKING = "Wird ausgerechnet …";
export const WORKED_OUT = "Ausgerechnet.";
export const WHEN_A_TEST_IS_WHOLE =
  "Das folgt, sobald ein Versuch vollständig ist: Was fehlt, ist an seinen Schritten markiert.";
export const WHEN_THERE_IS_A_TEST = "Das folgt, sobald die Aufgabe einen Versuch hat.";
export const notFinished = (count: number) =>
  `${count === 1 ? "Eine Angabe ist" : `${count} Angaben sind`} noch nicht fertig und im Folgenden weggelassen.`;
/** @param last what stands near a limit is being looked for */
export const progress = (last: boolean, done: number, of: number) =>
  `${last ? "Gesucht wird, was nahe an einer Grenze liegt" : "Die Versuche werden an jedem Salz durchgeführt"}: ${done} von ${of}`;
export const BENCH_NOT_FETCHED = "Der Plan des Arbeitsplatzes ließ sich nicht laden. Lade die Seite neu.";
export const DRAWING_BENCH = "Der Arbeitsplatz wird gezeichnet …";
export const CONCLUSION_NOT_FETCHED =
  "Die Auswertung ließ sich nicht laden. Dein Protokoll ist aufgehoben; lade die Seite neu.";
export const NOTHING_RECORDED = "Noch ist nichts protokolliert.";
export const NOT_LOADED =
  "Die Berechnung ließ sich nicht laden. Was du eingegeben hast, ist aufgehoben; prüfe die Verbindung und lade die Seite neu.";
/** A part of the page that is fetched when it is opened. */
export const PART_NOT_FETCHED = "Dieser Teil ließ sich nicht laden. Prüfe die Verbindung und lade die Seite neu.";

/** The shelf. */
export const KEPT_HERE = "Hier aufgehobene Aufgaben:";
export const A_NEW_PAPER = "eine neue Aufgabe";
export const NEW_PAPER = "Neue Aufgabe";
export const EMPTY_IS_OPEN = "Eine leere Aufgabe ist geöffnet.";
export const openNow = (name: string) => `Jetzt geöffnet: ${name}.`;
export const FROM_EXAMPLE = "Mit einem Beispiel beginnen";
export const EXAMPLE_IS_OPEN = "Das Beispiel ist geöffnet: seine Aufgabe ohne die Lösung. Ändere daran, was du willst.";
export const EXAMPLE_NOT_FETCHED = "Das Beispiel ließ sich nicht laden. Prüfe die Verbindung.";
export const UNDO = "Rückgängig";
export const DELETE = "Diese Aufgabe löschen …";
/** The question, and what stands after it. */
export const deleteFrom = (name: string) => `„${name}“ aus diesem Browser löschen?`;
export const NO_WAY_BACK = "Das lässt sich nicht rückgängig machen.";
export const DELETE_IT = "Löschen";
export const KEEP_IT = "Behalten";
export const deleted = (name: string) => `„${name}“ ist gelöscht.`;
export const OPEN_FILE = "Die Datei eines Versuchs öffnen";
export const NO_TITLE = "Eine Aufgabe ohne Titel";
export const KEEPS_NOTHING =
  "Dieser Browser hebt für diese Seite nichts auf, deshalb ist deine Aufgabe weg, wenn du sie schließt. Sichere sie als Datei, oder kopiere ihren Link.";
export const KEPT_UNREADABLE = "Die in diesem Browser aufgehobenen Aufgaben ließen sich nicht lesen.";
export const OTHER_TAB =
  "Ein anderer Tab hat diese Aufgabe auch geändert. Deine ist daneben als eigene Aufgabe aufgehoben.";

/** A link with a paper in it. */
export const NO_PAPER_BEHIND =
  "Hinter # steht im Link etwas, das keine Aufgabe ist; eine Aufgabe steht hinter #paper=. Lass dir den Link noch einmal geben.";
export const CANNOT_UNPACK = "Dieser Browser kann einen solchen Link nicht entpacken.";
export const linkNotOpened = (why: string) =>
  `Der Link ließ sich nicht öffnen. ${why} Deine eigenen Aufgaben sind, wie sie waren.`;
export const LINK_HOLDS_NO_PAPER =
  "Der Link enthält keine Aufgabe. Lass ihn dir noch einmal geben. Deine eigenen Aufgaben sind, wie sie waren.";
export const LINK_IS_OPEN = "Die Aufgabe aus dem Link ist geöffnet.";

/** What of a paper from outside fitted no field. Places are named by the entries of its file, which are the same in every language. */
export const LEFT_OUT = {
  paper: "die Aufgabe",
  sample: (number: number) => `Probe ${number}`,
  part: (number: number) => `Teil ${number}`,
  test: (number: number) => `Versuch ${number}`,
  entry: (number: number) => `Eintrag ${number}`,
  step: "Schritt",
  wasLeftOut: (place: string, why: string) => `${place}: ${why}; das wurde weggelassen.`,
  more: "Und weitere wie diese.",
  group: "erwartet wird eine Gruppe von Einträgen",
  list: "erwartet wird eine Liste",
  tooMany: (found: number, most: number) => `gefunden ${found} Einträge, höchstens ${most} werden behalten`,
  cutOff: (place: string, found: number, most: number) =>
    `${place}: gefunden ${found} Zeichen, höchstens ${most} passen; der Rest wurde abgeschnitten.`,
  text: "erwartet wird Text",
  oneOf: (choices: string) => `erwartet wird eines von ${choices}`,
  noField: "dafür gibt es kein Feld",
  tooMuchText: "gefunden zu viel Text",
  noSuchTest: "diesen Versuch gibt es nicht",
};

/** What the paper leaves before any test is done. */
export const LEAVES_OPEN = "Was die Aufgabe offen lässt";
export const canBe = (sample: string, salts: number) =>
  salts === 0
    ? `${sample} kann kein Salz sein: Aus diesen Ionen gibt es keine solche Probe`
    : `${sample} kann ${salts === 1 ? "ein Salz" : `${salts} Salze`} sein`;
export const cannotBe = (impossible: number, all: number, samples: string) =>
  `${impossible} von ${all} Ionenpaaren kommen für ${samples} nicht infrage, und warum`;
export const more = (sights: number) => (sights === 1 ? "eine weitere" : `${sights} weitere`);

/** The tests as instructions. */
export const only = (letters: string) => `(nur ${letters})`;
export const ASK_FIRST = "Erst fragen.";
export const cautionsForPart = (label: string) => `Hinweise zur Sicherheit für Teil ${label}`;
export const MORE = "Mehr";
export const PAPER_SAYS = "Die Aufgabe sagt:";
export const MAY_MISLEAD = "Was hier täuschen kann.";
export const STILL_LOOKING = "Es wird noch gesucht, was bei diesen Versuchen täuschen kann …";

/** The record. */
export const filledIn = (done: number, of: number) => `${done} von ${of} ausgefüllt.`;
export const EMPTY_RECORD = "Das Protokoll leeren";
export const TESTS_AS_NOW =
  "Die Versuche werden ausgerechnet, wie sie jetzt sind; dann lässt sich das Protokoll ausfüllen.";
export const FINDING_PLACE = "Für deine Worte wird ein Platz im Protokoll gesucht …";
export const wroteDown = (cell: string, sample: string, words: string) => `${cell} für ${sample}: ${words}.`;
export const OWN_WORDS = "Eine Beobachtung in eigenen Worten schreiben";

/** The paper as a link and as a file. */
export const MAKE_LINK = "Einen Link zu dieser Aufgabe machen";
export const SAVE_FILE = "Als Datei eines Versuchs sichern";
export const PRINT = "Drucken";
export const LINK_HOLDS = "Der Link enthält die ganze Aufgabe und ihr Protokoll";
export const FILE = "Die Datei";
/** Where the file goes; between them its folder, and what stands for a salt. */
export const PUT_IT = {
  into: "Lege sie in den Ordner",
  says: "einer Website. Wo ein Salz aus deinem Protokoll nicht sicher folgt, steht darin",
  until:
    ": Schreibe die Lösung dorthin und oben eine eigene Zusammenfassung; bis dahin nennt der Bau der Website diese Stellen.",
};

/** Instructions pasted from a paper. Sentences are read in one language only. */
export const PASTED_IN: Language = "en-GB";
export const PASTE = "Die Versuche einfügen";
export const SENTENCES = "Die Sätze der Aufgabe, einer oder viele; gelesen werden sie bisher nur auf Englisch";
export const READING = "Wird gelesen …";
export const READ_SENTENCES = "Diese Sätze lesen";
export const TRY_EXAMPLE = "Ein Beispiel versuchen";
export const READER_NOT_LOADED =
  "Der Leser der Sätze ließ sich nicht laden. Prüfe die Verbindung und lade die Seite neu.";
export const NO_INSTRUCTION = "In diesem Text wurde keine Anweisung gefunden.";
const counted = (many: number, one: string, more: string) => `${many} ${many === 1 ? one : more}`;
export const linesRead = (lines: number, parts: number, questions: number) =>
  `${counted(lines, "Zeile", "Zeilen")} des Protokolls in ${counted(parts, "Teil", "Teilen")} gelesen${questions > 0 ? `, mit ${counted(questions, "Frage", "Fragen")}` : ""}.`;
export const samplesWereAdded = (letters: readonly string[]) =>
  `${letters.length === 1 ? "Probe" : "Proben"} ${letters.join(", ")} ${letters.length === 1 ? "ist" : "sind"} oben dazugekommen: Sieh nach, was gegeben ist.`;
export const testsTaken = (more: string) =>
  `Die Versuche stehen unten in der Aufgabe.${more && ` ${more}`} Felder, die noch offen sind, sind dort markiert.`;
export const NO_TEST_IN_THESE = "In diesen Sätzen steht kein Versuch.";
