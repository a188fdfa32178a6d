/** A paper of one's own, as it is entered: samples, statements, parts, tests and steps. */
import type { Indicator } from "../../engine/constants/indicators.ts";

export const TITLE = "Titel";
export const MINUTES = "Erlaubte Minuten";
/** Before what is wrong with an entry. */
export const TO_DO = "Zu tun:";
/** Where nothing is chosen yet. */
export const CHOOSE = "wähle …";
export const REMOVE = "Entfernen";

/** Samples. */
export const SAMPLES = "Proben";
export const numbered = (number: number) => `Nummer ${number}`;
/** A field beside its name: what is written there, and what a listener hears. */
export const LETTER = "Buchstabe";
export const letterOf = (sample: string) => `Buchstabe der Probe ${sample}`;
export const GIVEN_AS = "Gegeben als";
export const isGivenAs = (sample: string) => `Probe ${sample} ist gegeben als`;
export const GIVEN = { solution: "Lösung", solid: "Feststoff", both: "Feststoff und seine Lösung" };
export const STRENGTH = "Konzentration der Lösung";
export const NO_STRENGTH =
  "Nennt die Aufgabe keine Konzentration, so schreib „etwa 0,1 mol/dm3“: Dann zählt auch, was 0,02 bis 0,5 mol/dm3 zeigen würden.";
export const strengthOf = (sample: string) => `Konzentration der Lösung ${sample}`;
export const IONS = { cations: "Kationen", anions: "Anionen" };
export const ionsIn = (kind: "cations" | "anions", sample: string) => `${IONS[kind]} in Probe ${sample}`;
export const COUNTS = { 1: "eines", 2: "zwei" };
/** After "Remove", for those who hear it alone. */
export const theSample = (sample: string) => `Probe ${sample}`;
export const ADD_SAMPLE = "Eine Probe dazunehmen";
/** @param parts Buchstaben der Teile, die mitgehen; @param statements wie viele mitgehen */
export const sampleRemoved = (sample: string, parts: readonly string[], statements: number): string => {
  const gone = [
    ...(parts.length === 0 ? [] : [`${parts.length === 1 ? "Teil" : "die Teile"} ${parts.join(", ")}`]),
    ...(statements === 0 ? [] : [statements === 1 ? "eine Angabe" : `${statements} Angaben`]),
  ];
  const makes = parts.length + statements > 1 ? "ergeben" : "ergibt";
  const besides = gone.length === 0 ? "" : `, und mit ihr ${gone.join(" und ")}: Ohne sie ${makes} das keinen Sinn`;
  return `Probe ${sample} ist entfernt${besides}. „Rückgängig“ bringt alles zurück.`;
};

/** What the paper says. */
export const PAPER_SAYS = "Was die Aufgabe sagt";
type Kind = "cations" | "anions";
export const LISTS = {
  school: "die der Schulliste",
  advanced: "die der erweiterten Liste",
  ticked: "die angekreuzten",
};
export const OWN_LIST = "die unserer eigenen Liste";
export const canBe = (kind: Kind) => `Mögliche ${IONS[kind]}`;
export const tickOffered = (kind: Kind) => `Kreuze die ${IONS[kind]} an, die die Aufgabe nennt`;
export const NOT_KNOWN_HERE = "(hier nicht bekannt)";
export const inAll = (kind: Kind) => `Verschiedene ${IONS[kind]} insgesamt, falls die Aufgabe es sagt`;
export const STATEMENTS = {
  share: "Einige Proben enthalten dasselbe Ion",
  differ: "Einige Proben enthalten verschiedene Ionen",
  same: "Einige Proben sind dasselbe Salz",
  contains: "Ein Ion ist in einigen der Proben",
};
export const statement = (number: number, words: string) => `Aussage ${number}: ${words}`;
export const ION = "Ion";
export const KINDS = { cation: "Kation", anion: "Anion" };
export const IN_HOW_MANY = "In wie vielen";
export const ONE_OR_MORE = "1 oder mehr";
export const OF_THESE = "Von diesen Proben (nichts angekreuzt: von allen)";
export const theStatement = (number: number) => `Aussage ${number}`;
export const ADD_STATEMENT = "Eine Aussage dazunehmen:";
export const NO_SUCH_SAMPLE = "(diese Probe gibt es nicht)";

/** Parts and tests. */
export const TESTS = "Versuche";
export const NO_TEST =
  "Noch kein Versuch. Füge oben die Sätze der Aufgabe ein, oder nimm einen Teil dazu und wähle seine Schritte.";
export const ADD_PART = "Einen Teil dazunehmen, mit frischem Reagenzglas";
export const PART = "Teil";
export const part = (label: string) => `Teil ${label}`;
export const CALLED = "Wie er heißt";
export const partCalled = (label: string) => `Wie Teil ${label} heißt`;
export const TAKEN_AS = "Genommen als";
export const partTakes = (label: string) => `Teil ${label} nimmt`;
export const TAKEN = { "": "wie der Schritt es sagt", solution: "die Lösung", solid: "den Feststoff" };
export const removePart = (label: string) => `Teil ${label} entfernen`;
export const DONE_ON = "Durchgeführt mit (nichts angekreuzt: mit allen)";
export const ADD_TEST = "Einen Versuch im selben Reagenzglas dazunehmen";
export const ofPart = (label: string) => `, Teil ${label}`;
export const test = (id: string) => `Versuch ${id}`;
export const ADD_STEP = "Einen Schritt dazunehmen";
export const toTest = (id: string) => `zu ${id}`;
export const JOIN = "Mit der Zeile darüber verbinden";
export const removeTest = (id: string) => `Versuch ${id} entfernen`;

/** Steps. `called` is "step 2 of a(i)". */
export const stepOf = (number: number, test: string) => `Schritt ${number} von ${test}`;
export const doneIn = (called: string) => `Was getan wird, ${called}`;
export const NEW_LINE = "Ab hier eine neue Zeile";
export const ASKED = {
  take: (called: string) => `Wie viel genommen wird, ${called}`,
  reagent: (called: string) => `Reagenz, ${called}`,
  amount: (called: string) => `Wie die Menge angegeben ist, ${called}`,
  count: (key: "drops" | "pieces", called: string) => `Wie viele ${key === "drops" ? "Tropfen" : "Stücke"}, ${called}`,
  volume: (called: string) => `Volumen, ${called}`,
  at: (called: string) => `Konzentration, falls die Aufgabe eine nennt, ${called}`,
  time: (called: string) => `Wie lange, ${called}`,
  filter: (called: string) => `Was aufgehoben wird, ${called}`,
  heat: (called: string) => `Wie, ${called}`,
  testGas: (called: string) => `Womit, ${called}`,
  indicator: (called: string) => `Welcher Indikator, ${called}`,
};
/** What stands in an empty field, and the strength that a new sample begins with. */
export const USUAL_STRENGTH = "0,1 mol/dm3";
export const HINTS = { take: "1 cm3 oder 0,2 g", strength: "wie üblich" };
export const KEEP = { filtrate: "das Filtrat aufheben", residue: "den Rückstand aufheben" };
export const HEAT = { gently: "vorsichtig", strongly: "kräftig" };
export const AS_LONG_AS_IT_COMES = "solange welches kommt";
const INDICATORS: Readonly<Record<Indicator, string>> = {
  litmus: "Lackmus",
  "universal indicator": "Universalindikator",
};
export const indicator = (which: Indicator): string => INDICATORS[which] ?? which;

/** What is done in a step, by the verb of its entry. */
export const STEPS = {
  take: "Etwas von der Probe nehmen",
  add: "Ein Reagenz zugeben",
  warm: "Vorsichtig erwärmen",
  boil: "Zum Sieden erhitzen",
  testGas: "Das Gas prüfen",
  leadThrough: "Das Gas durch Kalkwasser leiten",
  heat: "Den trockenen Feststoff erhitzen",
  flame: "Flammenfärbung",
  indicator: "Mit einem Indikator prüfen",
  filter: "Filtrieren",
  wash: "Den Rückstand waschen",
  cool: "Abkühlen lassen",
  stand: "Stehen lassen",
  shake: "Schütteln",
};
/** How an amount of a reagent is said. */
export const AMOUNTS = { drops: "Tropfen", volume: "ein Volumen", until: "im Überschuss", pieces: "Stücke" };

/** What an unfinished step is asked. */
export const WHICH_REAGENT = "Welches Reagenz? Wähle es aus der Liste.";
export const howMuchOf = (reagent: string) => `Wie viel ${reagent}? Wähle Tropfen, ein Volumen oder im Überschuss.`;
export const WITH_WHAT = "Womit wird das Gas geprüft?";
export const WHICH_KEPT = "Was wird aufgehoben: das Filtrat oder der Rückstand?";
export const HOW_LONG_STANDS = 'Wie lange steht es? Schreibe eine Zeit wie "5 min".';
export const HOW_LONG_BOILS = 'Wie lange siedet es? Schreibe eine Zeit wie "1 min".';
export const HOW_MUCH_TAKEN = 'Wie viel wird genommen? Schreibe eine Menge wie "1 cm3" oder "0,2 g".';
