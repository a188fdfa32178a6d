/** What happens in a test, and what could mislead there. Figures come as text with a decimal point, formulas in mhchem notation. */
import type { Kind } from "../../engine/bench/interference/disturbances.ts";
import { list, OR } from "./language.ts";

/** All but so little that nobody sees it; or so many per cent. */
export const ALL_BUT_A_TRACE = "all but a trace";
const place = (where: "limewater" | undefined) => (where ? `In the ${where}, ` : "");
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
export const forms = (what: string, where: "limewater" | undefined, gramsPerDm3: string | undefined) =>
  `${place(where)}${what} forms${gramsPerDm3 === undefined ? "" : `, ${gramsPerDm3} g/dm3 of mixture`}.`;
export function dissolves(what: string, where: "limewater" | undefined, part: string | undefined): string {
  if (part === undefined) return `${place(where)}${what} dissolves.`;
  return `${place(where)}${where ? part : capital(part)} of the ${what} dissolves.`;
}
export const passes = (what: string) => `${what} forms where a drop lands, and dissolves again when shaken.`;
export const asBubbles = (cm3: string, seen: boolean) => `${cm3} cm3${seen ? " as bubbles" : ""}`;
export const ofTheAir = (percent: string) => `${percent} % of the air above the liquid`;
export const comesOff = (what: string, amounts: readonly string[]) =>
  `${what} comes off${amounts.length > 0 ? `: ${amounts.join(", ")}` : ""}.`;
export const heatChanges = (celsius: number | undefined) =>
  `The heat changes it${celsius === undefined ? "" : `, from about ${celsius} °C`}.`;
export const HOW_ACIDIC = "The indicator shows how acidic it is.";
export const hasPH = (pH: string) => `The liquid has pH ${pH}.`;
export const REDOX = "An oxidation and a reduction.";
export const COMMON_PRACTICE = "This is common practice; no source was at hand.";
export const source = (source: string) => `Source: ${source}.`;

/** What is behind each kind of false result, as the beginning of a sentence. */
const CAUSE: Readonly<Record<Kind, string>> = {
  "chloride or sulfate of a reagent": "The reagents themselves bring chloride or sulfate",
  "ammonium not boiled off": "Ammonium that was not boiled off gives ammonia too",
  nitrite: "Nitrite gives ammonia as nitrate does",
  "sulfur dioxide": "Sulfur dioxide clouds limewater as carbon dioxide does",
  "silver sulfate": "Silver sulfate dissolves only slightly",
  "no acid, or too little": "Without enough acid other ions give a precipitate as well",
  "tap water": "Tap water holds chloride",
  "old alkali": "Alkali that has stood in air holds carbonate",
  "a hydroxide in the way": "The metal ion gives a precipitate of its own",
};
/** What is concluded wrongly; the engine names it in English. */
export const concluded = (what: string): string => what;
interface Misleads {
  kind: Kind;
  /** Salts by formula, or so many that they are only counted. */
  salts: readonly string[] | number;
  amount: string | undefined;
  surely: boolean;
  concluded: string;
  remedy: string;
}
export function misleads({ kind, salts, amount, surely, concluded, remedy }: Misleads): string {
  const who = typeof salts === "number" ? `any of ${salts} salts of the list` : list(salts, OR);
  return `${CAUSE[kind]}: with ${who}, ${amount ?? "what is seen"} ${surely ? "is" : "may be"} taken for ${concluded}. ${remedy}`;
}
/** @param atMost the most that any of several gives */
export const amountOf = (amount: string, phase: string, atMost: boolean) =>
  `${atMost ? "up to " : ""}${amount} of ${phase}`;

/** With what a reading near a limit turns into another. */
export const WITH = {
  constant: "with a constant a little off",
  carbonate: "with the little carbonate that most alkali holds",
  sample: (strength: string) => `with the sample at ${strength} mol/dm3`,
  reagent: (formula: string, strength: string) => `with ${formula} at ${strength} mol/dm3`,
};
/** @param ways each with what would then be seen */
export const nearLimit = (letter: string, ways: readonly { way: string; seen: string }[], strengths: boolean) =>
  `${letter} is near a limit here: ${ways.map(({ way, seen }) => `${way} you would see: ${seen}`).join("; ")}.${strengths ? " Check the strength on the bottle." : ""}`;
