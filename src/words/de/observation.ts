/** An observation in the words of the trade: its parts, which `wording/phrase.ts` puts together. Usual school words, no source. */
import type { Colour } from "../../engine/practical/same-colour.ts";
import type { Amount, Fate, Gas } from "../../engine/practical.ts";

export const NO_CHANGE = "keine sichtbare Veränderung";

/** What a solid in the tube is called: one that has just formed, one of the test before, or a dry sample. */
export type TheSolid = "it" | "precipitate" | "solid";

/** Each colour as it stands by itself, and before an ending where that is another word. */
export const COLOURS: Readonly<Record<Colour, string | readonly [alone: string, stem: string]>> = {
  colourless: "farblos",
  white: "weiß",
  "yellowish white": "gelblichweiß",
  "off-white": "weißlich",
  cream: "cremefarben",
  "pale yellow": "blassgelb",
  yellow: "gelb",
  "bright yellow": "leuchtendgelb",
  orange: ["orange", "orangefarben"],
  "yellow-brown": "gelbbraun",
  brown: "braun",
  "dark brown": "dunkelbraun",
  "red-brown": "rotbraun",
  red: "rot",
  "blood-red": "blutrot",
  "brick red": "ziegelrot",
  "orange-red": "orangerot",
  crimson: "karminrot",
  "golden yellow": "goldgelb",
  "orange-yellow": "orangegelb",
  scarlet: "scharlachrot",
  "apple green": "apfelgrün",
  "pale purple": "blassrotviolett",
  "pale blue-white": "bläulichweiß",
  lilac: "hellviolett",
  "pale violet": "blassviolett",
  violet: "violett",
  purple: "rotviolett",
  blue: "blau",
  "pale blue": "blassblau",
  "light blue": "hellblau",
  "deep blue": "tiefblau",
  "dark blue": "dunkelblau",
  "blue-black": "blauschwarz",
  "blue-green": "blaugrün",
  green: "grün",
  "pale green": "blassgrün",
  "very pale green": "sehr blassgrün",
  "light green": "hellgrün",
  "dark green": "dunkelgrün",
  "dirty green": "schmutziggrün",
  "grey-green": "graugrün",
  "yellow-green": "gelbgrün",
  "very pale pink": ["sehr blassrosa", "sehr blassrosafarben"],
  pink: ["rosa", "rosafarben"],
  grey: "grau",
  "grey-black": "grauschwarz",
  black: "schwarz",
};

/** A colour by itself. */
export function colour(name: Colour): string {
  const row = COLOURS[name];
  return typeof row === "string" ? row : row[0];
}
const stem = (name: Colour): string => {
  const row = COLOURS[name];
  return typeof row === "string" ? row : row[1];
};

export const effervescence = (seen: boolean) => (seen ? "Gasentwicklung" : "keine Gasentwicklung");
export const NO_PRECIPITATE = "kein Niederschlag";
const HOW_MUCH: Record<Amount, string> = { plain: "", slight: "schwacher ", trace: "sehr schwacher " };
export const precipitate = (colour: Colour, amount: Amount) => `${HOW_MUCH[amount]}${stem(colour)}er Niederschlag`;
export function fate(what: TheSolid, became: Fate): string {
  const solid = { it: "er", precipitate: "Niederschlag", solid: "Feststoff" }[what];
  return `${solid} ${{ remains: "bleibt", dissolves: "löst sich", "partly dissolves": "löst sich teilweise" }[became]}`;
}
/** What a solid has dissolved to; the liquid beside a solid; what the liquid turns to where no solid tells the story. */
export const dissolvedTo = (colour: Colour) => `ergibt eine ${stem(colour)}e Lösung`;
export const solution = (colour: Colour) => `${stem(colour)}e Lösung`;
export const noChange = (stays: Colour) => `${NO_CHANGE} (bleibt ${colour(stays)})`;
export const solutionTurns = (name: Colour) => `Lösung wird ${colour(name)}`;

const EVIDENCE: Readonly<Record<string, string>> = {
  "damp red litmus turns blue": "feuchtes rotes Lackmuspapier wird blau",
  "damp blue litmus turns red": "feuchtes blaues Lackmuspapier wird rot",
  "damp litmus is bleached": "feuchtes Lackmuspapier wird gebleicht",
  "limewater turns milky": "Kalkwasser trübt sich",
  "limewater turns milky, then clear in excess": "Kalkwasser trübt sich und wird mit mehr Gas wieder klar",
  "acidified manganate(VII) paper turns from purple to colourless": "Papier mit angesäuertem Permanganat wird entfärbt",
  "acidified dichromate(VI) paper turns from orange to green":
    "Papier mit angesäuertem Dichromat wird von orange nach grün verfärbt",
  "lighted splint gives a squeaky pop": "pfeifender Knall am brennenden Span",
  "glowing splint relights": "glimmender Span flammt auf",
  "brown gas": "braunes Gas",
  "white smoke on the rod": "weißer Rauch am Stab",
  "anhydrous copper(II) sulfate turns blue": "wasserfreies Kupfersulfat wird blau",
  "cobalt(II) chloride paper turns from blue to pink": "Cobaltchloridpapier wird von blau nach rosa verfärbt",
};
/** What showed a gas. The constants word it in English; what an author has worded stays as it is. */
export const evidence = (seen: string): string => EVIDENCE[seen] ?? seen;
export const GASES: Readonly<Record<Gas, string>> = {
  NH3: "Ammoniak",
  CO2: "Kohlenstoffdioxid",
  SO2: "Schwefeldioxid",
  H2: "Wasserstoff",
  O2: "Sauerstoff",
  Cl2: "Chlor",
  NO2: "Stickstoffdioxid",
  HCl: "Chlorwasserstoff",
  H2O: "Wasserdampf",
};
export const NO_SIGN = "Gasnachweis negativ";

export const indicator = (name: Colour) => `Indikator wird ${colour(name)}`;
export const fumes = (colour: Colour) => `${stem(colour)}e Dämpfe`;
export const DROPLETS = "Flüssigkeitstropfen an der kühlen Wand";
export const sublimate = (colour: Colour) => `${stem(colour)}er Feststoff an der kühlen Wand`;
export const NOTHING_LEFT = "nichts bleibt zurück";
/** In one colour, hot and cold alike; seen only when cold; only when hot; in two colours. */
export function residue(hot: Colour | undefined, cold: Colour | undefined): string {
  if (hot !== undefined && hot === cold) return `${stem(cold)}er Rückstand`;
  const at = [hot && residueAt("hot", hot), cold && residueAt("cold", cold)];
  return `Rückstand ${at.filter((one) => one !== undefined).join(", ")}`;
}
export const NO_FLAME = "keine Flammenfärbung";
export const flame = (colour: Colour) => `${stem(colour)}e Flamme`;

/** What earns a mark by itself. */
export const gasNamed = (gas: string) => `benannt: ${gas}`;
export const residueAt = (at: "hot" | "cold", name: Colour) => `${at === "hot" ? "heiß" : "kalt"} ${colour(name)}`;
