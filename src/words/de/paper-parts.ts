/** Parts of the page for a paper of one's own that are fetched when they come to be used: words of one's own, pasted sentences, what follows. */
import { list } from "./language.ts";

/** An observation in the reader's own words. */
export const TEST_AND_SAMPLE = "Versuch und Probe";
export const place = (cell: string, sample: string) => `${cell} für ${sample}`;
export const WRITTEN = "(geschrieben)";
export const YOU_SAW = "Was du gesehen hast";
export const SUCH_AS = "weißer Nd., i. Ü. löslich, farblose Lsg.";
export const WRITE_DOWN = "Eintragen";
export const READ_AS = "Gelesen als:";
export const QUESTION = "Frage:";
export const wroteDown = (place: string, words: string) => `${place}: ${words}.`;

/** Pasted sentences as they were understood. */
export const FRESH_TUBE = "Ein frisches Reagenzglas";
export const tubeFor = (samples: readonly string[]) => (samples.length > 0 ? `für ${list(samples)}` : "für jede Probe");
export const NOTHING_IS_DONE = "im Reagenzglas geschieht nichts.";
export const TAKEN_FOR_GRANTED = "Angenommen:";
export const notInPaper = (samples: readonly string[]) =>
  samples.length === 1
    ? `Probe ${samples[0]} steht noch nicht in der Aufgabe: Sie kommt mit den Versuchen dazu.`
    : `Die Proben ${list(samples)} stehen noch nicht in der Aufgabe: Sie kommen mit den Versuchen dazu.`;
export const TAKE_TESTS = "Diese Versuche in die Aufgabe übernehmen";
export const LEAVE_THEM = "Nicht übernehmen";
const KEPT: Readonly<Record<string, string>> = { filtrate: "das Filtrat", residue: "den Rückstand" };
const HOW: Readonly<Record<string, string>> = { gently: "vorsichtig", strongly: "kräftig" };
/** A step in a few words; `…` stands for what is missing. */
export const STEP = {
  unknown: "ein unbekannter Schritt",
  take: (amount: string) => `${amount} nehmen`,
  inExcess: (what: string) => `${what} im Überschuss zugeben`,
  drops: (count: string, what: string) => `${count} Tropfen ${what} zugeben`,
  pieces: (count: string, what: string) => `${count} ${count === "1" ? "Stück" : "Stücke"} ${what} zugeben`,
  volume: (volume: string, what: string) => `${volume} ${what} zugeben`,
  boil: (time: string) => `${time} lang sieden lassen`,
  stand: (time: string) => `${time} stehen lassen`,
  filter: (keep: string) => `filtrieren, ${KEPT[keep] ?? keep} aufheben`,
  heat: (how: string) => `den trockenen Feststoff ${HOW[how] ?? how} erhitzen`,
  testGas: (how: string) => `das Gas prüfen: ${how}`,
  leadThrough: (inExcess: boolean) => `das Gas durch Kalkwasser leiten${inExcess ? ", im Überschuss" : ""}`,
  indicator: (which: string) => `prüfen mit: ${which}`,
  /** Of the name of a step, as it stands in the list of steps; a noun keeps its capital. */
  other: (name: string) => (name === "Flammenfärbung" ? name : name.charAt(0).toLowerCase() + name.slice(1)),
};

/** A test that would settle what the record leaves open. */
export const LOOKING = "Die üblichen Nachweise werden durchgesehen …";
export const LOOK = "Einen Nachweis suchen, der es entscheidet";
export const NONE_WOULD = "Kein üblicher Nachweis würde diese Salze unterscheiden.";
