/** Pages of ions, and the tables on them. Names of ions and titles of tests come as text. */
import type { GivenOff } from "../../engine/practical.ts";
import { evidence } from "./observation.ts";

export { colour } from "./observation.ts";

type Kind = "cation" | "anion";

/** The list of all ions. */
export const IONS = "Ionen";
export const DESCRIPTION =
  "Für jedes Ion eine Seite: was es in jedem üblichen Nachweis zeigt, womit man es verwechselt, was es unterscheidet.";
export const ABOUT =
  "Für jedes Ion eine Seite: was es in jedem üblichen Nachweis zeigt, warum, mit welchem anderen Ion man es leicht verwechselt und was die beiden unterscheidet. Das alles ist berechnet; geschrieben sind die wenigen Zeilen darüber, wo dir das Ion begegnet.";
export const OTHER_WAY = "Andersherum";
/** Its link between. */
export const SEEN_SOMETHING = {
  ask: "Du hast etwas gesehen und fragst, was es sein kann? Beginne mit dem",
  test: "Nachweis",
  lists: ": Auf seiner Seite steht, was jedes Ion darin zeigt.",
};
export const KINDS = { cation: "Kationen", anion: "Anionen" };

/** One ion. */
export const ionTitle = (name: string) => `${name}-Ion`;
export const KIND = { cation: "Kation", anion: "Anion" };
export const LISTED = { school: "Schulliste", advanced: "erweiterte Liste", solid: "nur als Feststoff" };
export const CAUTIONS_AND_GASES = "Sicherheit und Gase";
export const GASES = "Gase, die es abgeben kann";
export const BY_ITSELF = "Für sich allein";
/** Before the link to hydroxide. */
export const OXIDE =
  "Oxid-Ionen gibt es in Wasser nicht: Was sich von einem Oxid löst, wird sofort zu Hydroxid. Was eine solche Lösung zeigt, steht auf der Seite von";
export const IN_WATER = "In Wasser";
export const UNIVERSAL_INDICATOR = "Universalindikator";
export const FLAME = "Flamme";
export const NO_FLAME = "keine eigene Farbe";
export const HIDDEN_BY = "; verdeckt von";
export const SHOWS = "Was es zeigt";
export const showsIn = (ion: string, kind: Kind) => `Was ${ion} in Nachweisen für ${KINDS[kind]} zeigt`;
export const showsInOthers = (ion: string) => `Was ${ion} in anderen Nachweisen zeigt`;
export const IN_THE_WAY = "In Nachweisen für etwas anderes, wo es stören kann";
export const PARTNER = { cation: "das Nitrat (das Chlorid, wo auf Nitrat geprüft wird)", anion: "das Natriumsalz" };
/** Before a strength, and after it. */
export const workedOutFor = (partner: string) => `Berechnet für ${partner} mit`;
export const EITHER = ". „Oder“: Nahe an der Grenze dessen, was man sieht oder zählt, gilt beides im Protokoll.";
export const noChangeIn = (tests: readonly string[]) => `Keine eigene Veränderung: ${tests.join(", ")}.`;
export const TAKEN_FOR = "Leicht zu verwechseln mit";
export const MISLEADS = "Was täuschen kann";
export const whyDrops = (ion: string) => `Warum: wo ${ion} ist, Tropfen für Tropfen`;
export const SOLIDS = "Seine Salze als Feststoffe";

/** What an ion shows, test by test. */
export const TEST = "Nachweis";
export const WHAT_IS_SEEN = "Was zu sehen ist";
/** On a phone, beside each entry. */
export const SEEN = "Zu sehen";
export const HAPPENS = "Was geschieht";
export const SHOWN_TOO = "Zeigen auch";
export const NONE = "keines";
export const gas = (names: string) => `Gas: ${names}`;
/** Between sights that may be recorded alike. */
export const OR = ", oder ";

/** Ions it is taken for. */
export const ION = "Ion";
export const LOOKS_SAME = "Sieht gleich aus in";
export const TOLD_APART = "Unterschieden durch";
export const NO_TEST = "keinen üblichen Nachweis";

/** Its solids. */
export const SOLID = "Feststoff";
export const AS_BOUGHT = "In der Flasche";
export const STIRRED = "In Wasser gerührt";
export const HEATED_STRONGLY = "Kräftig erhitzt";
export const HEATED = "Erhitzt";
export const ITS_GAS = "; Gas,";
export const TRACE_OF = "; vielleicht eine Spur";
export const NOT_HEATED = "im Unterricht nicht erhitzt, oder nicht bekannt";

/** What no evidence of a procedure says in the same words. */
const SHOWN: Readonly<Partial<Record<GivenOff, string>>> = {
  Cl2: "feuchtes blaues Lackmuspapier wird rot, dann gebleicht",
  NO2: "als braunes Gas zu sehen",
  SO3: "als weißer Rauch zu sehen",
  Br2: "als rotbrauner Dampf zu sehen",
  H2S: "Papier mit Blei(II)-acetat wird schwarz",
  I2: "als violetter Dampf zu sehen",
};
/** How a gas is shown; the constants have it in English. */
export const shownBy = (gas: GivenOff, test: string): string => SHOWN[gas] ?? evidence(test);
/** What is done, in a table that has little room. */
export const short = (done: string): string => done;
