/** An observation in the words of the trade: its parts, which `wording/phrase.ts` puts together. */
import type { Colour } from "../../engine/practical/same-colour.ts";
import type { Amount, Fate, Gas } from "../../engine/practical.ts";

export const NO_CHANGE = "no visible change";

/** What a solid in the tube is called: one that has just formed, one of the test before, or a dry sample. */
export type TheSolid = "it" | "precipitate" | "solid";

export const effervescence = (seen: boolean) => (seen ? "effervescence" : "no effervescence");
export const NO_PRECIPITATE = "no precipitate";
const HOW_MUCH: Record<Amount, string> = { plain: "", slight: "faint ", trace: "very faint " };
export const precipitate = (colour: Colour, amount: Amount) => `${HOW_MUCH[amount]}${colour} precipitate`;
export function fate(what: TheSolid, became: Fate): string {
  if (became === "partly dissolves") return `some of ${what === "it" ? what : `the ${what}`} dissolves`;
  return `${what} ${became}`;
}
/** What a solid has dissolved to; the liquid beside a solid; what the liquid turns to where no solid tells the story. */
export const dissolvedTo = (colour: Colour) => `giving ${/^[aeiou]/.test(colour) ? "an" : "a"} ${colour} solution`;
export const solution = (colour: Colour) => `${colour} solution`;
export const noChange = (stays: Colour) => `${NO_CHANGE} (stays ${stays})`;
export const solutionTurns = (colour: Colour) => `solution turns ${colour}`;

/** What showed a gas. The constants word it in English, and so do authors. */
export const evidence = (seen: string): string => seen;
export const GASES: Readonly<Record<Gas, string>> = {
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
export const NO_SIGN = "gas test shows nothing";

export const indicator = (colour: Colour) => `indicator turns ${colour}`;
export const fumes = (colour: Colour) => `${colour} fumes`;
export const DROPLETS = "drops of liquid on the cool wall";
export const sublimate = (colour: Colour) => `${colour} solid on the cool wall`;
export const NOTHING_LEFT = "nothing left";
/** In one colour, hot and cold alike; seen only when cold; only when hot; in two colours. */
export function residue(hot: Colour | undefined, cold: Colour | undefined): string {
  if (hot === undefined || hot === cold) return `${cold} residue${hot === undefined ? " when cold" : ""}`;
  return cold === undefined ? `residue ${hot} when hot` : `residue ${hot} when hot, ${cold} when cold`;
}
export const NO_FLAME = "no flame colour";
export const flame = (colour: Colour) => `${colour} flame`;

/** What earns a mark by itself. */
export const gasNamed = (gas: string) => `named: ${gas}`;
export const residueAt = (at: "hot" | "cold", colour: Colour) => `${colour} when ${at}`;
