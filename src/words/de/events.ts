/** What happens in a test, and what could mislead there. Figures come as text with a decimal point, formulas in mhchem notation. */
import type { Kind } from "../../engine/bench/interference/disturbances.ts";
import { list, OR } from "./language.ts";

/** All but so little that nobody sees it; or so many per cent. */
export const ALL_BUT_A_TRACE = "bis auf eine Spur alles";
const place = (where: "limewater" | undefined) => (where ? "Im Kalkwasser " : "");
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
export const forms = (what: string, where: "limewater" | undefined, gramsPerDm3: string | undefined) =>
  `${where ? `Im Kalkwasser entsteht ${what}` : `${what} entsteht`}${gramsPerDm3 === undefined ? "" : `, ${gramsPerDm3} g/dm3 der Mischung`}.`;
export function dissolves(what: string, where: "limewater" | undefined, part: string | undefined): string {
  if (part === undefined) return where ? `Im Kalkwasser löst sich ${what}.` : `${what} löst sich.`;
  return where ? `${place(where)}löst sich ${part} von ${what}.` : `${capital(part)} von ${what} löst sich.`;
}
export const passes = (what: string) =>
  `${what} entsteht, wo ein Tropfen hineinfällt, und löst sich beim Schütteln wieder.`;
export const asBubbles = (cm3: string, seen: boolean) => `${cm3} cm3${seen ? " als Blasen" : ""}`;
export const ofTheAir = (percent: string) => `${percent} % der Luft über der Flüssigkeit`;
export const comesOff = (what: string, amounts: readonly string[]) =>
  `${what} entweicht${amounts.length > 0 ? `: ${amounts.join(", ")}` : ""}.`;
export const heatChanges = (celsius: number | undefined) =>
  `Die Hitze verändert es${celsius === undefined ? "" : `, ab etwa ${celsius} °C`}.`;
export const HOW_ACIDIC = "Der Indikator zeigt, wie sauer es ist.";
export const hasPH = (pH: string) => `Die Flüssigkeit hat pH ${pH}.`;
export const REDOX = "Eine Oxidation und eine Reduktion.";
export const COMMON_PRACTICE = "Das ist übliche Praxis; eine Quelle war nicht zur Hand.";
export const source = (source: string) => `Quelle: ${source}.`;

/** What is behind each kind of false result, as the beginning of a sentence. */
const CAUSE: Readonly<Record<Kind, string>> = {
  "chloride or sulfate of a reagent": "Die Reagenzien selbst bringen Chlorid oder Sulfat mit",
  "ammonium not boiled off": "Auch Ammonium, das nicht ausgekocht wurde, ergibt Ammoniak",
  nitrite: "Nitrit ergibt Ammoniak wie Nitrat",
  "sulfur dioxide": "Schwefeldioxid trübt Kalkwasser wie Kohlenstoffdioxid",
  "silver sulfate": "Silbersulfat löst sich nur wenig",
  "no acid, or too little": "Ohne genug Säure geben auch andere Ionen einen Niederschlag",
  "tap water": "Leitungswasser enthält Chlorid",
  "old alkali": "Lauge, die an der Luft gestanden hat, enthält Carbonat",
  "a hydroxide in the way": "Das Metallion gibt selbst einen Niederschlag",
};
const CONCLUDED: Readonly<Record<string, string>> = {
  "a halide": "ein Halogenid",
  "another halide than it is": "ein anderes Halogenid",
  sulfate: "Sulfat",
  nitrate: "Nitrat",
  carbonate: "Carbonat",
  "a cation with a white hydroxide": "ein Kation mit weißem Hydroxid",
};
/** What is concluded wrongly; the engine names it in English. */
export const concluded = (what: string): string => CONCLUDED[what] ?? what;
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
  const who = typeof salts === "number" ? `einem von ${salts} Salzen der Liste` : list(salts, OR);
  return `${CAUSE[kind]}: Mit ${who} ${surely ? "hält" : "kann"} man ${amount ?? "das, was zu sehen ist,"} für ${concluded}${surely ? "" : " halten"}. ${remedy}`;
}
/** @param atMost the most that any of several gives */
export const amountOf = (amount: string, phase: string, atMost: boolean) =>
  `${atMost ? "bis zu " : ""}${amount} ${phase}`;

/** With what a reading near a limit turns into another. */
export const WITH = {
  constant: "mit einer etwas anderen Konstante",
  carbonate: "mit dem wenigen Carbonat, das die meiste Lauge enthält,",
  sample: (strength: string) => `mit der Probe bei ${strength} mol/dm3`,
  reagent: (formula: string, strength: string) => `mit ${formula} bei ${strength} mol/dm3`,
};
/** @param ways each with what would then be seen */
export const nearLimit = (letter: string, ways: readonly { way: string; seen: string }[], strengths: boolean) =>
  `${letter} ist hier nahe an einer Grenze: ${ways.map(({ way, seen }) => `${way} wäre zu sehen: ${seen}`).join("; ")}.${strengths ? " Prüfe die Konzentration auf der Flasche." : ""}`;
