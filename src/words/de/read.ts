/** Read: what is given, what the paper says, what each test is for. */
import { AND, list, OR } from "./language.ts";

export const HEADING = "Lesen";
export const ABOUT = "bevor etwas geöffnet wird";
export const GIVEN = "Was gegeben ist";
export const PAPER_SAYS = "Was die Aufgabe sagt";
export const notEveryPair = (all: number, possible: number, samples: string) =>
  `Nicht jedes Paar dieser Ionen kann eine solche Probe sein: Von ${all} Paaren kommen ${possible} für ${samples} infrage. Nur an ihnen wird ein Protokoll gemessen.`;
export const IMPOSSIBLE_PAIRS = "Paare, die keine solche Probe sein können, und warum";
export const HOW_TO_READ = "Wie man eine Liste von Versuchen liest";
export const ASK =
  "Frage bei jeder Zeile: Welche Ionen sähen hier anders aus? Ein Versuch, der bei allen dasselbe zeigt, kann warten; für einen, bei dem ein Gas entweicht, müssen Papier oder Span bereitliegen.";
export const PURPOSES = "Wozu jeder Versuch dient";
export const TEST = "Versuch";
export const SEEN = "Was zu sehen sein kann, und bei welchen Ionen";
export const GAS_HEAD = "Gas, das entweichen kann";
export const GAS = "Gas";
export const NO_GAS = "keines";
export const andMore = (names: string, more: number) => `${names} und ${more} weitere`;
/** Of ions and salts whose sight here is not predicted. */
export const NOT_FORETOLD = "nicht vorhergesagt";
export const moreSights = (count: number) =>
  count === 1 ? "eine weitere Beobachtung" : `${count} weitere Beobachtungen`;
export const theSights = (count: number) => `die ${count} Beobachtungen`;
/** After a count of sights, for those who hear it alone. */
export const ofTest = (cell: string) => `von ${cell}`;

const FORM = { solid: "ein Feststoff", solution: "eine Lösung", both: "ein Feststoff und eine Lösung" };
/** "K: eine Lösung, 0,1 mol/dm3" */
/** A strength that the paper does not give. */
export const about = (strength: string) => `etwa ${strength}, denn die Aufgabe nennt keine`;
export const given = (label: string, form: keyof typeof FORM, strength: string | undefined) =>
  `${label}: ${FORM[form]}${strength ? `, ${strength}` : ""}`;
const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `ein ${one}` : `${count === 2 ? "zwei" : count} ${many}`;
/** How many ions a sample holds; by it samples are gathered. */
export const held = (cations: number, anions: number) =>
  `${counted(cations, "Kation", "Kationen")} und ${counted(anions, "Anion", "Anionen")}`;
export const eachHolds = (what: string) => `Jede Probe enthält ${what}.`;
export const theyHold = (labels: readonly string[], what: string) =>
  labels.length === 1 ? `${labels[0]} enthält ${what}.` : `${list(labels, AND)} enthalten je ${what}.`;
export const cationIsOne = (names: readonly string[]) => `Das Kation ist eines von ${list(names, OR)}.`;
export const anionIsOne = (names: readonly string[]) => `Das Anion ist eines von ${list(names, OR)}.`;
export const allHold = (what: string) => `Alle Proben zusammen enthalten ${what}.`;

const KINDS = { cation: "welches Kation", anion: "welches Anion" };
/** Which kind of ion a test tells apart: "Unterscheidet, welches Kation und welches Anion vorliegt." */
export const tellsApart = (kinds: readonly ("cation" | "anion")[]) =>
  `Unterscheidet, ${kinds.map((kind) => KINDS[kind]).join(" und ")} vorliegt.`;
export const TELLS_SALTS = "Unterscheidet kein Ion für sich, aber einige Salze.";
export const TELLS_NOTHING = "Nichts: Alle möglichen Salze sehen gleich aus.";
export const orSeen = (seen: string) => `, oder ${seen}`;
export const except = (ion: string, salts: readonly string[]) => `${ion} (nicht ${list(salts, OR)})`;
