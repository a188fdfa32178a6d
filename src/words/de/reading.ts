/** What the reader of records asks and answers, and German brought into its vocabulary, that of `wording/reading/`. */
import type { Colour } from "../../engine/practical/same-colour.ts";
import type { Gas } from "../../engine/practical.ts";
import { GLOSSES, withColours } from "./glosses.ts";
import { colour, evidence } from "./observation.ts";

/** Gases as that vocabulary names them. */
export const GASES_READ: Readonly<Record<Gas, string>> = {
  NH3: "ammonia",
  CO2: "carbon dioxide",
  SO2: "sulfur dioxide",
  H2: "hydrogen",
  O2: "oxygen",
  Cl2: "chlorine",
  NO2: "nitrogen dioxide",
  HCl: "hydrogen chloride",
  H2O: "water vapour",
};

/** Umlauts and ß may be written out: "loesung", "weiss". */
const writtenOut = (text: string): string =>
  text.replace(/ä/g, "ae").replace(/ö/g, "oe").replace(/ü/g, "ue").replace(/ß/g, "ss");

const COMPILED = GLOSSES.map(
  ([pattern, words]) => [new RegExp(`(?<![a-z])(?:${pattern})(?![a-z])`, "g"), ` ${words} `] as const,
);

/** The line in the reader's vocabulary; it is in lower case. */
export function inReaderWords(line: string): string {
  const plain = writtenOut(line.normalize("NFC"))
    .replace(/\((?:[iv]+)\)-?/g, "")
    .replace(/[„“”"]/g, " ")
    .replace(/\s+/g, " ");
  const read = COMPILED.reduce((text, [pattern, words]) => text.replace(pattern, words).replace(/ +/g, " "), plain);
  return withColours(read);
}

/** German for words of the reader that a sentence may leave over. */
const BACK: Readonly<Record<string, string>> = {
  precipitate: "Niederschlag",
  solution: "Lösung",
  liquid: "Flüssigkeit",
  excess: "Überschuss",
  litmus: "Lackmus",
  limewater: "Kalkwasser",
  manganate: "Permanganat",
  flame: "Flamme",
  residue: "Rückstand",
  effervescence: "Gasentwicklung",
  insoluble: "unlöslich",
  soluble: "löslich",
  dissolves: "löst sich",
  remains: "bleibt",
  cloudiness: "Trübung",
  not: "nicht",
  no: "kein",
  without: "ohne",
  never: "nie",
  melts: "schmilzt",
  crackles: "knistert",
  swells: "bläht sich",
};

/** Words of that vocabulary as the writer put them. */
const asWritten = (words: string): string => words.replace(/[a-z]+/g, (word) => BACK[word] ?? word);

export const tooLong = (letters: number, most: number) =>
  `Das sind ${letters} Zeichen; schreibe eine Beobachtung in höchstens ${most}.`;
export const NOTHING_WRITTEN = "Noch steht nichts da.";
export const NAMES_NOTHING =
  'Das nennt nichts, was zu sehen ist: Schreibe eine Farbe und wovon, ein Gas mit seinem Nachweis oder "keine sichtbare Veränderung".';
export const notUnderstood = (words: string) => `Nicht verstanden: "${asWritten(words)}".`;
export const DENIED =
  'Es heißt, dass etwas nicht zu sehen war, deshalb wird nichts aus dieser Zeile gelesen: Schreibe, was zu sehen war, etwa "kein Niederschlag", "unlöslich" oder "keine sichtbare Veränderung".';
export const readAs = (written: string, as: Colour) => `"${asWritten(written)}" wird als ${colour(as)} gelesen.`;

export const WHICH_GAS = "Welches Gas war es: Was hat sein Nachweis gezeigt?";
export const WHAT_DID_THE_GAS_SHOW = "Was hat der Nachweis des Gases gezeigt?";
export const IN_EXCESS = "Was geschah im Überschuss: Hat er sich gelöst, teilweise gelöst, oder ist er geblieben?";
export const SOLUTION_NOW = "Welche Farbe hat die Lösung jetzt?";
export const HOT = "Welche Farbe hatte der Rückstand, solange er heiß war?";
export const COLD = "Welche Farbe hat der kalte Rückstand?";

export const WHICH_ACID_GAS =
  "Chlorwasserstoff, Schwefeldioxid und Stickstoffdioxid färben alle feuchtes blaues Lackmuspapier rot: Welches war es?";
export const notItsSign = (its: string, named: string) =>
  `Das ist das Zeichen für ${its}, nicht für ${named}: Welches war es?`;
export const howShown = (gas: string, sign: string) =>
  `Wie wurde ${gas} nachgewiesen? Punkte gibt es für den Nachweis: "${evidence(sign)}".`;
export const LIMEWATER = "Was hat das Kalkwasser gezeigt: Hat es sich getrübt, oder blieb es, wie es war?";
export const SMOKE = "Weißer Rauch woran: an einem Stab mit Salzsäure oder an einem mit Ammoniak?";
export const SMELL = "Ein Geruch benennt kein Gas: Was hat sein Nachweis gezeigt?";

export const CLEAR = '"Klar" ist keine Farbe: Es heißt durchsichtig. Schreibe farblos, oder nenne die Farbe.';
export const ofWhat = (seen: Colour) =>
  `Was ist ${colour(seen)}: ein Niederschlag, die Lösung, eine Flamme, ein Rückstand?`;
export const noPlace = (word: string) =>
  `"${asWritten(word)}" ist verstanden, aber ein Protokoll hat hier keinen Platz dafür.`;
export const NO_REACTION =
  '"Keine Reaktion" ist ein Schluss: Schreibe, was zu sehen ist, "keine sichtbare Veränderung".';
export const ON_STANDING =
  "Eine Farbe, die erst beim Stehen kommt, gehört zu einem späteren Blick: Nur der erste wird aufgehoben.";
export const COLOURLESS_SOLID = "Ein Niederschlag, den man sieht, hat eine Farbe: welche?";
export const PRECIPITATE_COLOUR = "Welche Farbe hat der Niederschlag?";
export const ONE_PRECIPITATE =
  "Zwei Farben des Niederschlags sind genannt, oder eine dazwischen: Welche war es? Halte ihn vor weißes Papier.";
export const ONE_SOLUTION = "Zwei Farben der Lösung sind genannt: Welche hat sie am Ende?";
export const ONE_FLAME = "Zwei Farben der Flamme sind genannt: Welche ist die der Probe?";
export const ONE_FATE = "Es heißt, dass er bleibt und dass er sich löst: Was gilt am Ende?";
export const ONE_GAS = "Zwei Gase sind genannt: Welches war es?";
export const ONE_SIGN = "Hier stehen Zeichen, die nicht zusammenpassen: Was hat die Gasprobe gezeigt?";
