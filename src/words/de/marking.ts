/** Why a mark of a record's line is lost. */

export const CONCLUDED = '"Keine Reaktion" ist ein Schluss: Die Punkte gibt es für das, was zu sehen ist.';
export const NOTHING_READ = "In dieser Zeile steht nichts, was sich lesen ließ.";
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
export const flameWas = (colour: string) => `Die Flamme war ${colour}.`;
export const NO_FLAME = "Die Flamme hatte keine eigene Farbe.";
export const DROPLETS = "Die Tropfen an der kühlen Wand fehlen.";
/** What has a colour, in "the colour of the ... is not said" and "the ... was white, not blue". */
export const notSaid = {
  solution: "Die Farbe der Lösung steht nicht da.",
  hot: "Die Farbe des heißen Rückstands steht nicht da.",
  cold: "Die Farbe des kalten Rückstands steht nicht da.",
  flame: "Die Farbe der Flamme steht nicht da.",
  indicator: "Die Farbe des Indikators steht nicht da.",
  fumes: "Die Farbe der Dämpfe steht nicht da.",
  sublimate: "Die Farbe des Feststoffs an der kühlen Wand steht nicht da.",
};
const SUBJECTS = {
  precipitate: "Der Niederschlag war",
  solution: "Die Lösung war",
  hot: "Der heiße Rückstand war",
  cold: "Der kalte Rückstand war",
  flame: "Die Flamme war",
  indicator: "Der Indikator war",
  fumes: "Die Dämpfe waren",
  sublimate: "Der Feststoff an der kühlen Wand war",
};
export const otherColour = (of: keyof typeof SUBJECTS, was: string, not: string) =>
  `${SUBJECTS[of]} ${was}, nicht ${not}.`;
