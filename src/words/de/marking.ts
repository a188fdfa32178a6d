/** Why a mark of a record's line is lost. */
import type { Colour } from "../../engine/practical/same-colour.ts";
import { colour } from "./observation.ts";

export const CONCLUDED = '"Keine Reaktion" ist ein Schluss: Die Punkte gibt es für das, was zu sehen ist.';
export const NOTHING_READ = "In dieser Zeile steht nichts, was sich lesen ließ.";
export const SAID_TWICE = "Zweierlei, das sich ausschließt, steht da: Den Punkt gibt es für das, was zu sehen war.";
export const NOTHING_CHANGED = 'Hier hat sich nichts verändert: Schreibe "keine sichtbare Veränderung".';
export const BUBBLES = "Es waren Bläschen zu sehen: Schreibe Gasentwicklung.";
export const NO_PRECIPITATE = "Es gab keinen Niederschlag.";
export const PRECIPITATE = "Dass ein Niederschlag entstand, und welche Farbe er hat, steht nicht da.";
export const FATES = {
  remains: "Der Feststoff blieb.",
  "partly dissolves": "Der Feststoff löste sich teilweise.",
  dissolves: "Der Feststoff löste sich.",
};
export const FATE = "Was aus dem Feststoff wurde, steht nicht da.";
export const CLEAR = 'Die Farbe der Lösung steht nicht da; "klar" ist keine Farbe.';
export const GAS_SHOWED_NOTHING = "Dass der Gasnachweis nichts zeigte, steht nicht da.";
export const GAS_TEST = "Der Nachweis des Gases und was er zeigte, steht nicht da.";
export const GAS_ONLY_NAMED = "Das Gas ist benannt, aber den Punkt gibt es für seinen Nachweis.";
export const OTHER_SIGN = "Das hat der Nachweis des Gases nicht gezeigt.";
export const itWas = (gas: string) => `Es war ${gas}.`;
export const GAS_NAME = "Das Gas ist nicht benannt.";
export const NOTHING_LEFT = "Nichts blieb zurück: Das steht nicht da.";
export const flameWas = (seen: Colour) => `Die Flamme war ${colour(seen)}.`;
export const NO_FLAME = "Die Flamme hatte keine eigene Farbe.";
export const DROPLETS = "Die Tropfen an der kühlen Wand fehlen.";
/** What has a colour: whose it is, and what it was. */
const NAMES = {
  precipitate: ["des Niederschlags", "Der Niederschlag war"],
  solution: ["der Lösung", "Die Lösung war"],
  hot: ["des heißen Rückstands", "Der heiße Rückstand war"],
  cold: ["des kalten Rückstands", "Der kalte Rückstand war"],
  flame: ["der Flamme", "Die Flamme war"],
  indicator: ["des Indikators", "Der Indikator war"],
  fumes: ["der Dämpfe", "Die Dämpfe waren"],
  sublimate: ["des Feststoffs an der kühlen Wand", "Der Feststoff an der kühlen Wand war"],
} as const;
type Coloured = keyof typeof NAMES;
export const notSaid = (of: Coloured) => `Die Farbe ${NAMES[of][0]} steht nicht da.`;
export const otherColour = (of: Coloured, was: Colour, not: Colour) =>
  `${NAMES[of][1]} ${colour(was)}, nicht ${colour(not)}.`;
