/** Choosing unknowns for a class: the controls, and sets of unknowns in sentences. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

/** How hard a set is. */
export const STANDINGS = { easy: "leicht", middling: "mittel", hard: "schwer", undecided: "nicht entschieden" };
/** The rule behind these words. */
export const HARDNESS_RULE =
  "Leicht: Jede Probe ist durch ihre eigenen Versuche entschieden, auch bei einer Beobachtung im Grenzbereich, und höchstens so viele andere Antworten, wie es Proben gibt, sind eine falsch gelesene Beobachtung entfernt. " +
  "Schwer: Zwei oder mehr Proben brauchen eine andere, oder mehr als doppelt so viele Antworten wie Proben sind eine falsch gelesene Beobachtung entfernt. " +
  "Mittel: der Rest. Diese Grenzen haben wir gewählt.";

/** The controls. */
export const SAMPLES = "Proben";
export const asPaperHas = (count: number) => `${count}, wie in der Aufgabe`;
export const SHOW = "Zeigen";
export const ALL_KINDS = "alle Arten";
export const inStore = (ticked: number, possible: number) =>
  `Salze in der Sammlung: ${ticked} von ${possible} angekreuzt`;
export const USUAL = "Die üblichen einer Schulsammlung";
export const ALL = "Alle";
export const NONE = "Keines";
export const UNREADABLE = "Ein Teil des Links ließ sich nicht lesen.";
export const IN_ADDRESS =
  "Die Adresse dieser Seite enthält jetzt deine Auswahl: Kopiere sie, um sie aufzuheben oder weiterzugeben.";
export const SETS = "Sätze zur Auswahl";
export const WORKING = "Wird ausgerechnet …";
export const NOT_LOADED =
  "Die Sätze zu deiner Auswahl ließen sich nicht laden; die unten sind aus den üblichen Salzen einer Schulsammlung. Deine Auswahl ist in der Adresse dieser Seite aufgehoben: Prüfe die Verbindung und lade die Seite neu.";

/** What is wrong with a link. */
export const quote = (text: string) => `„${text}“`;
export const linkTooLong = (letters: number, most: number) =>
  `Der Link ist ${letters} Zeichen lang, erwartet werden höchstens ${most}.`;
export const badSamples = (found: string, most: number) =>
  `Proben: gefunden ${found}, erwartet wird eine ganze Zahl von 1 bis ${most}.`;
export const badStore = (found: string) =>
  `Sammlung: gefunden ${found}, erwartet werden Formeln von Salzen, die hier angekreuzt werden können.`;

/** The sets. */
export const someOf = (some: number, all: number) => `${some} von ${all}`;
export const MORE = "Mehr";
/** After "More", for those who hear it alone. */
export const onSet = (set: string) => `zu ${set}`;
export const BEFORE_GIVING_OUT = "Vor dem Ausgeben.";
export const OTHER_NUMBER =
  "Die Aufgabe hat eine andere Zahl von Proben, deshalb entfällt, was sie über sie sagt, und jeder Versuch wird mit jeder Probe durchgeführt.";
export const UNSAFE_LEFT_OUT =
  "Weggelassen sind Sätze, bei denen Blei in eine Flamme käme oder Blei(II)-nitrat oder ein anderes Salz trocken erhitzt würde, das im Unterricht nicht sicher zu erhitzen ist.";
export const paperSays = (statements: readonly string[]) => `Die Aufgabe sagt: ${statements.join("; ")}.`;
export const NOTHING_TIES = "Nichts ist gesagt, was die Proben miteinander verbindet.";
export const treatedAlike = (samples: readonly string[]) =>
  `${list(samples)} werden gleich behandelt: Welche von ihnen welches Salz enthält, macht keinen neuen Satz.`;

/** How many sets there are. Figures come as text. */
const can = (count: string) => (count === "1" ? "1 Satz lässt sich" : `${count} Sätze lassen sich`);
export const ofKind = (count: string, standing: keyof typeof STANDINGS) => `${count} ${STANDINGS[standing]}`;
export const NOT_EVEN_ONE =
  "Zu viel, um auch nur einen Satz anzusehen: Gib weniger Proben an oder eine kleinere Sammlung.";
export const NO_SET = "Aus dieser Sammlung lässt sich für diese Aufgabe kein Satz zusammenstellen.";
/** @param kinds how many of each kind, as `ofKind` says it */
export const tooMany = (looked: string, decided: string, kinds: string) =>
  `Es gibt mehr Sätze, als angesehen werden können. Von ${looked} aus der ganzen Sammlung entscheiden die Versuche ${decided} bei den üblichen Beobachtungen${kinds && ` (${kinds})`}.`;
export const lookedAt = (all: string, decided: string, looked: string, kinds: string) =>
  `${can(all)} zusammenstellen; die Versuche entscheiden ${decided} davon bei den üblichen Beobachtungen. ${looked} wurden angesehen${kinds && `; darunter sind ${kinds}`}.`;
/** @param decided absent for none */
export const decides = (all: string, decided: string | undefined, kinds: string) =>
  `${can(all)} zusammenstellen; die Versuche entscheiden ${decided === undefined ? "keinen davon" : `${decided}: ${kinds}`}.`;
export const bordering = (count: string) =>
  count === "1"
    ? "1 der entschiedenen Sätze, die angesehen wurden, beruht auf den üblichen Beobachtungen: Eine im Grenzbereich ließe ihn offen."
    : `${count} der entschiedenen Sätze, die angesehen wurden, beruhen auf den üblichen Beobachtungen: Eine im Grenzbereich ließe sie offen.`;

/** One set. */
/** A part of the paper, as one of the tests that would settle something. */
export const partNamed = (label: string, title: string) => `Teil ${label} (${title})`;
export const onlyAllTell = (samples: readonly string[]) =>
  `Nur alle Beobachtungen zusammen bestimmen ${list(samples)}.`;
export const NONE_WAITS = "Keine Probe muss auf eine andere warten.";
/** "R und S lassen sich zuerst bestimmen, dann T, dann U und V nur zusammen." */
export function order(rounds: readonly (readonly string[])[], together: readonly string[]): string {
  const [first = [], ...later] = rounds;
  const then = [
    ...later.map((samples) => list(samples)),
    ...(together.length > 0 ? [`${list(together)} nur zusammen`] : []),
  ];
  return `${list(first)} ${first.length === 1 ? "lässt" : "lassen"} sich zuerst bestimmen${then.map((samples) => `, dann ${samples}`).join("")}.`;
}
export const TOO_MANY_STATEMENTS =
  "Die Aufgabe sagt zu vieles zugleich über ihre Proben, um mehr über diesen Satz zu sagen.";
export const mayAlsoBe = (sample: string, salts: readonly string[]) => `${sample} kann auch ${list(salts, OR)} sein.`;
export const withoutStaysOpen = (tests: readonly string[]) =>
  `Ohne ${list(tests, OR)} bleibt etwas offen; jeder andere Versuch könnte für sich allein entfallen.`;
export const ANY_COULD_GO = "Jeder einzelne Versuch könnte entfallen.";
export const TOO_LONG_TO_LOOK =
  "Es passt so vieles, dass die Suche nach einem Nachweis, der es entscheidet, zu lange dauert.";
export const NONE_SETTLES = "Keiner der üblichen Nachweise entscheidet es, und auch keine zwei von ihnen.";
export const EVERY_SAMPLE = "jeder Probe";
/** A test, or several, on these samples: on one of them, or on all. */
export const testsOn = (tests: readonly string[], samples: readonly string[], onlyOne: boolean) =>
  `${list(tests)} mit ${list(samples, onlyOne ? OR : undefined)}`;
/** @param ways each as `testsOn` says it */
export const wouldSettle = (ways: readonly string[]): string =>
  `Das würde es entscheiden, wenn jede Probe das Wahrscheinlichste zeigt: ${list(ways, OR)}.`;
