/** Pages about one practical besides its walkthrough, and the list of all. */

export const LIST = "Versuche";
export const LIST_ABOUT = "Anleitungen zu Versuchen der Salzanalyse, in der Reihenfolge des Kurses.";
/** The link stands after the first sentence's two parts. */
export const LIST_LEAD = [
  "In der Reihenfolge des Kurses: Die ersten verlangen wenig, die letzten Urteilsvermögen. Die",
  "Übersicht",
  "zeigt, welche Nachweise und Ionen jeder übt und was du schon geübt hast.",
] as const;
export const PRACTISE_BLIND = "Blind üben";

export const BACK_TO_WALKTHROUGH = "Zurück zur Anleitung";
/** Title and description of each page. */
export const unknowns = (practical: string) => `Unbekannte wählen: ${practical}`;
export const unknownsAbout = (practical: string) =>
  `Für Lehrkräfte: Zusammenstellungen von Salzen, die die Versuche von „${practical}“ entscheiden, und wie schwer jede ist.`;
export const sheet = (practical: string) => `Vorbereitungsblatt: ${practical}`;
export const sheetAbout = (practical: string) =>
  `Was für eine Klasse bereitgestellt wird, die „${practical}“ durchführt. Es nennt die Salze.`;
export const order = (practical: string) => `Reihenfolge der Arbeit: ${practical}`;
export const orderAbout = (practical: string) => `Was am Arbeitsplatz wann getan wird in „${practical}“.`;
export const practice = (practical: string) => `Blind üben: ${practical}`;
export const practiceAbout = (practical: string) =>
  `Unbekannte Salze, gezogen mit einer Nummer, für die Versuche von „${practical}“: Protokolliere, was du siehst, werte aus und erhalte Punkte mit Begründung.`;

/** Choose unknowns. */
export const FOR_TEACHERS = "Für Lehrkräfte.";
export const NAMES_SALTS = "Diese Seite nennt die Salze der Anleitung.";
export const UNKNOWNS_LEAD =
  "Welche Salze kann eine Klasse für diese Versuche bekommen? Eine Zusammenstellung ist entschieden, wenn das Protokoll, das eine Klasse davon schriebe, zu keinen anderen Salzen passt, die die Aufgabe zulässt, ob du sie hast oder nicht. Konzentrationen, Mengen und Formen sind die der Anleitung.";
export const OWN_SET = "Die Zusammenstellung der Anleitung";
export const WHAT_YOU_HAVE = "Was du hast";
export const UNKNOWNS_NEED_SCRIPT =
  "Die Auswahl braucht JavaScript; unten stehen die Zusammenstellungen aus den üblichen Salzen einer Schulsammlung.";
export const JUDGED = "Wie beurteilt wird";
export const JUDGED_ABOUT =
  "Eine falsch gesehene Beobachtung ist eine Stelle des Protokolls, an der ein anderes Salz etwas anderes gezeigt hätte. Ein Versuch, der eine Zusammenstellung entscheiden würde, ist nur genannt, wo er es auch dann tut, wenn eine Vorhersage an der Grenze anders ausfällt; die eigenen Versuche der Aufgabe an einer anderen Probe kommen zuerst. Zwei Proben zu verwechseln, ist kein Versehen, das diese Zahlen mitzählen.";
export const notLookedAt = (test: string, why: string) => `Nicht als weiterer Versuch betrachtet, ${test}: ${why}.`;
export const STORE_HAZARDS =
  "Die Gefahren sind die der Liste hinter dieser Website, viele aus dem Gedächtnis: Die Angaben deines Lieferanten und die Regeln deiner Schule gehen vor. Ein Salz, zu dem nichts gesagt ist, ist deshalb nicht harmlos.";

/** Order of work. */
export const ORDER_LEAD =
  "Während ein Glas steht, abkühlt oder tropft, wird an einem anderen gearbeitet. Die Minuten sind die von jemandem, der solche Versuche schon gemacht hat; beim ersten Mal dauert es länger. Nichts hier ist eine Verbrennung wert: Arbeite lieber langsamer, als eine Flamme oder ein heißes Glas allein zu lassen.";
export const SPOIL = "Was eine Beobachtung verderben könnte";
export const parts = (letters: string, several: boolean) => `${several ? "Teile" : "Teil"} ${letters}`;
export const LASTS = "Wie lange alles dauern soll";
export const LASTS_ABOUT =
  "Übliche Planzahlen, in Minuten, so gewählt, dass ganze Versuche so lange dauern, wie man gewöhnlich für sie plant. Sie beruhen auf keiner veröffentlichten Messung: Nimm deine eigenen, wo du sie kennst.";
export const LASTS_HEADS = { what: "Was", minutes: "Minuten", source: "Beruht auf" };

/** Practise blind. */
export const PRACTICE_LEAD =
  "Die Versuche sind die der Anleitung, die Salze sind andere, gezogen mit einer Nummer. Sieh dir jedes Reagenzglas an, schreib in deinen eigenen Worten, was du siehst, und sieh erst dann die Musterlösung, mit einem Punkt für jedes und dem Grund, wo einer verloren ist. Am Ende wertest du aus und siehst, ob dein eigenes Protokoll dich dorthin geführt hätte.";
export const PRACTICE_SHARED =
  "Eine Lehrkraft kann eine Nummer weitergeben: Wer sie eingibt, bekommt dieselben Unbekannten. Was du schreibst, bleibt in diesem Browser und geht nirgendwohin; eine versehentlich geschlossene Seite macht weiter, wo sie war.";
export const BEFORE_YOU_BEGIN = "Bevor du beginnst";
export const TAKE_CARE = "Vorsicht.";
export const DRAWN_TUBES =
  "Hier sind die Gläser gezeichnet. Mit echten gilt: Schutzbrille auf, und deine Lehrkraft und die Regeln deiner Schule gehen vor.";
