/** Conclude: standard tests that are not on the paper, where its own leave something open. */
import { AND, list } from "./language.ts";

export const NOT_FETCHED = "Die Liste der üblichen Nachweise ließ sich nicht laden. Prüfe die Verbindung.";
export const LOOKING = "Die üblichen Nachweise werden durchgesehen …";
export const TOO_OPEN = "Es ist noch zu vieles offen, um hier nach einem weiteren Nachweis zu suchen.";
export const COULD_SETTLE = "Ein Nachweis, der nicht in der Aufgabe steht, könnte mehr entscheiden";
export const WOULD_NOT_HELP = "Andere Nachweise würden nicht helfen";
export const ASK_FIRST =
  "Nicht Teil dieses Versuchs: Frag erst deine Lehrkraft, und nimm für jeden Nachweis eine frische Portion.";
export const titleFor = (title: string, sample: string) => `${title} für ${sample}`;
export const TAKE_CARE = "Vorsicht.";

/** A bench that has every bottle, and one sample on it. */
export const THE_SAMPLE = "der Probe";

/** What has to be told apart: by their formulas, or so many that they are only counted. */
type Alike = readonly string[] | number;
/** "kein Nachweis auf unserer Liste, der mit beiden sicher ist, unterscheidet NH4Cl und NH4NO3". @param onlySafe one that is unsafe on some of them might */
export function noneTells(alike: Alike, onlySafe: boolean): string {
  const two = typeof alike !== "number" && alike.length === 2;
  const safe = onlySafe ? `, der mit ${two ? "beiden" : "allen"} sicher ist,` : "";
  const these = typeof alike === "number" ? `diese ${alike} Salze` : list(alike, AND);
  return `kein Nachweis auf unserer Liste${safe} unterscheidet ${these}`;
}
/** The name of a test within a sentence. */
export const within = (title: string) => title;
/** "Dann: Flammenfärbung und, wenn nötig, Kalkwasser" */
export const nextIs = (first: string, more: readonly string[]) =>
  `Dann: ${first}${more.length > 0 ? ` und, wenn nötig, ${list(more)}` : ""}`;
export const thenSettled = (next: string) => `${next}; das entscheidet es.`;
export const thenOpen = (next: string, noneTells: string, others: boolean) =>
  `${next}; aber ${noneTells}${others ? ", und auch einige andere nicht" : ""}.`;
export const staysOpen = (noneTells: string, sample: string) => `${noneTells}, deshalb bleibt ${sample} offen.`;
