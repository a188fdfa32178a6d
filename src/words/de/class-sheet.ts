/** The preparation sheet for a class. Amounts come as text. */

export const FOR_WHOM = "Für Lehrkraft und Sammlung.";
export const NAMES_SALTS =
  "Diese Seite nennt die Salze. Wer die Versuche selbst lösen will, liest besser nicht weiter.";
export const WHO_DECIDES = "Wer entscheidet.";
export const CANNOT_BE_MADE = "Lässt sich nicht ansetzen.";
export const NEEDS_SCRIPT =
  "Eine andere Klasse lässt sich nur mit JavaScript wählen; unten steht das Blatt für die übliche.";
export const HAZARDS = "Gefahren bei diesen Konzentrationen";
export const GASES = "Gase, die entweichen können";
/** @param tests in which it may */
export const haveReady = (tests: string, have: string) => `, in ${tests}; bereithalten: ${have}`;
export const DAY_BEFORE = "Am Tag davor";

/** The class, as it is chosen. */
export const CLASS = "Die Klasse";
export const ENTRIES = {
  groups: "Zahl der Gruppen",
  sparePercent: "Reserve",
  sampleCm3: "Volumen jeder Probe für eine Gruppe",
  sampleG: "Masse jeder festen Probe für eine Gruppe",
};
export const NOT_UNDERSTOOD = "Nicht verstanden.";
export const notThat = (entry: string, found: string, whole: boolean, least: number, most: number, unit: string) =>
  `${entry}: gefunden ${found}, erwartet wird eine ${whole ? "ganze " : ""}Zahl von ${least} bis ${most}${whole ? "" : ` ${unit}`}`;
/** As it was chosen: the class stands after the first, with its groups, its spare, what each group is given. */
export const isFor = (still: boolean) => `Dieses Blatt gilt ${still ? "noch " : ""}für`;
export const GROUP_IS = "Eine Gruppe ist, wer an einem Platz arbeitet, allein oder zu zweit.";
export const groups = (count: number) => (count === 1 ? "1 Gruppe" : `${count} Gruppen`);
export const spare = (percent: string) => `${percent}\u00a0% Reserve`;
export const ofEachSample = (amount: string) => `${amount} jeder Probe für eine Gruppe`;
export const ofEachSolid = (amount: string) => `${amount} jeder festen Probe für eine Gruppe`;
export const TOO_LITTLE = "Zu wenig.";

/** Make up. */
export const MAKE_UP = "Ansetzen";
export const MAKE_UP_CAPTION = "Was angesetzt wird, mit dem Salz hinter jedem Buchstaben";
export const MAKE_HEADS = { what: "Was", make: "Menge", how: "Wie" };
export const wanted = (amount: string) => `(gebraucht ${amount})`;
export const amountOf = (amount: string, what: string) => `${amount} ${what}`;
/** Between bottles of which any will do. */
export const OR = ", oder ";
export const inTubes = (amount: string) => `: ${amount} für jede Gruppe, in einem Glas mit Stopfen`;
export const waterFirst = (amount: string) => ` Zuerst etwa ${amount} Wasser.`;
export const TAKE_CARE = "Vorsicht.";
/** Before where the strength of a stock is from. */
export const STOCK = "Vorrat:";

/** Set out. */
export const SET_OUT = "Bereitstellen";
export const SET_OUT_ABOUT =
  "Jede Probe gibt es in derselben Menge, damit die Füllung nichts darüber verrät, was sie ist. Der Name des Salzes steht in der Liste oben und sonst nirgends. Was auf ein Gefahrenetikett kommt, steht im Sicherheitsdatenblatt des Lieferanten.";
export const BOTTLES = "Flaschen und Etiketten";
export const BOTTLE_HEADS = { label: "Aufschrift", in: "In", fill: "Füllen mit", count: "Wie viele" };
export const LETTER_ONLY = "(der Buchstabe und sonst nichts)";
export const AND_DATE = "und das Datum";
export const STOPPERED_TUBE = "Glas mit Stopfen";
export const ALSO = "Außerdem";
export const GOGGLES = "Schutzbrillen für alle im Raum, und einige als Reserve.";
export const about = (amount: string) => `, etwa ${amount}`;
export const withTeacher = (what: string) => `Eines für die Klasse, im Abzug: ${what}.`;

/** From the store. */
export const STORE = "Aus der Sammlung";
export const STORE_CAPTION = "Für alle Flaschen zusammen, je nach der zuerst genannten";
export const STORE_HEADS = { what: "Was", amount: "Menge" };
export const SCARCE = "Knapp:";
/** Why the grams of an element are counted; the constants have it in English. */
const WHY: Readonly<Record<string, string>> = {
  Ag: "weitaus das Teuerste: sammeln und zurückgewinnen, was übrig ist",
  I: "teurer als Chloride und Bromide",
  Li: "teurer als Salze von Natrium und Kalium",
};
export const whyScarce = (element: string, why: string): string => WHY[element] ?? why;
/** A bottle by what it holds, cm3; the constants have its name in English. */
export const bottleOf = (cm3: number, _name: string): string =>
  cm3 > 25 ? `Flasche mit Pipette, ${cm3} cm3` : `Tropfflasche, ${cm3} cm3`;
export const testsUseMore = (used: string, sample: string, given: string) =>
  `Die Versuche brauchen ${used} von ${sample}, und jede Gruppe bekommt nur ${given}.`;

/** Waste. */
export const WASTE = "Abfall";
export const WASTE_CAPTION = "Abfall, der zu erwarten ist, einmal Spülen jedes Glases eingeschlossen";
export const WASTE_HEADS = { into: "Wohin", about: "Etwa", setOut: "Bereitstellen", how: "Wie" };
/** "240 cm³ verdünnte Salpetersäure" */
export const ofIt = (amount: string, name: string) => `${amount} ${name}`;
/** @param bottles among which it is shared out */
export const standsFirst = (what: string, bottles: number) =>
  `Vor der Stunde ${what} hineingeben${bottles > 1 ? ", auf die Flaschen verteilt" : ""}: Das ist in der angesetzten Menge enthalten.`;
export const A_LITTLE = "ein wenig";
export const NO_VESSEL = "nichts";
export const BEAKER = "ein Becherglas an jedem Platz";
export const ONE_FOR_CLASS = "eine für die Klasse";

/** Hazards. */
export const LIMITS = "Was jede Flasche einem Menschen antun kann, und die Grenzen, die entscheiden";
export const LIMIT_HEADS = { bottle: "Flasche", at: "Bei ihrer Konzentration" };
/** Before the strength of the usual bottle. */
export const SAID_OF = "Gilt für die üblichen";
export const atStrength = (what: string, strength: string) => `${what} mit ${strength}`;
export const byLimits = (words: string) => `, nach den Grenzen: ${words}.`;
export const DIFFER = "Die Quellen sind uneins; es gilt die strengere.";
export const ITS_LIMITS = "Ihre Grenzen:";
export const READ = "gelesen";
export const FROM_MEMORY = "aus dem Gedächtnis";
export const NO_LIMIT = "hier ist keine Grenze der Konzentration bekannt; das heißt nicht, dass es keine gibt.";
export const NONE_APPLIES = "Keine Grenze der Konzentration gilt.";
export const WORDS_STRICTER = "Die Worte zur Flasche sind strenger als diese Grenzen: Halte dich an die Worte.";
export const CONFIRM = [
  "Im Sicherheitsdatenblatt des Lieferanten nachprüfen:",
  "einiges hier ist aus dem Gedächtnis.",
] as const;
export const LIMITS_ABOUT =
  "Grenzen in Prozent sind als g in 100 cm³ genommen und auf zwei Ziffern gerundet. Eine Konzentration genau auf einer Grenze zählt als darüber. Jeder Stoff ist für sich betrachtet; zusammen können sie schlimmer sein.";
export const FIRST_AID = "Erste Hilfe";
export const AID_HEADS = { after: "Nach Kontakt mit", do: "Tun" };
