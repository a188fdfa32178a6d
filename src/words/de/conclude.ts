/** Conclude: the verdict on each sample and the evidence behind it. Names and formulas come as text, formulas in mhchem notation. */
import { AND, list, OR } from "./language.ts";

export const TOO_MUCH =
  "Die Aufgabe sagt zu vieles zugleich über ihre Proben, um ihm hier zu folgen: Lass einige Angaben weg, oder protokolliere mehr Versuche.";
export const ALL_KEPT = "Alles, was du eingetragen hast, ist aufgehoben.";
export const NOTHING_YET = "Noch ist nichts protokolliert.";
export const NOTHING_YET_ABOUT =
  "Das ist, was die Aufgabe allein offenlässt. Trag ein, was du gesehen hast, und jedes Ion, das nicht passt, wird gestrichen.";
export const PAPER_ADDS = "Was die Aufgabe dazugibt:";
/** In how many ways every sample can have a salt. */
export function ways(count: number): string {
  if (count === 0)
    return "Auf keine Weise lässt sich jeder Probe ein Salz zuordnen, das zum Protokoll und zur Aufgabe passt.";
  return count === 1
    ? "Nur auf diese eine Weise lässt sich jeder Probe ein Salz zuordnen, das zum Protokoll und zur Aufgabe passt."
    : `Noch auf ${count} Weisen lässt sich jeder Probe ein Salz zuordnen, das zum Protokoll und zur Aufgabe passt.`;
}

/** The signs of the evidence. */
export const LEGEND = {
  fits: "passt,",
  clashes: "widerspricht,",
  nothing: "sagt nichts: nicht durchgeführt, oder alle Ionen sehen dort gleich aus.",
  border:
    "passt gerade noch: zu sehen, wo eine Flasche schwächer oder stärker ist als üblich, oder an der Grenze dessen, was unsere Zahlen hergeben.",
};
/** A sign in a word. */
export const MARK = { fits: "passt", border: "passt gerade noch", clashes: "widerspricht", nothing: "sagt nichts" };
export const NOT_DONE = "nicht durchgeführt";
export const evidenceFor = (sample: string) => `Belege für ${sample}`;
export const ION = "Ion";
export const STANDING = "Stand";
export const STILL_POSSIBLE = "noch möglich";
export const CERTAIN = "sicher";
/** Before the reason. */
export const OUT = "nein:";
export const waitsFor = (sample: string) => `wartet auf ${sample}`;
export const SIDE_BY_SIDE = "Die Proben nebeneinander";
export const STANDINGS = { certain: "sicher", possible: "möglich", out: "nein" };
export const OUT_OF_ALL = "In keiner Probe:";

/** The verdict on a sample whose tests or whose paper disagree. */
export const fitsNothing = (sample: string) =>
  `Kein Salz, das die Aufgabe zulässt, passt zu allem, was für ${sample} protokolliert ist.`;
export const nothingAgrees = (sample: string) => `${sample}: Nichts passt zu dem, was die Aufgabe sagt.`;
export const waitsUntil = (sample: string, others: readonly string[]) =>
  `${sample} wartet, bis ${list(others, OR)} berichtigt ist.`;
export const fitsAlone = (sample: string, statement: string) =>
  `Nach den eigenen Versuchen passt ${sample} zu einem Salz, aber nicht zusammen mit den anderen Proben: Die Aufgabe sagt ${statement}.`;
/** What its own tests leave of a sample, for the sentence below. */
export const ALONE = {
  holds: (sample: string, name: string, formula: string) => `enthält ${sample} ${name}, ${formula}`,
  mayBe: (sample: string, formulas: readonly string[]) => `kann ${sample} ${list(formulas, OR)} sein`,
  oneOf: (sample: string, count: number) => `kann ${sample} eines von ${count} Salzen sein`,
};
export const butFirst = (alone: string, stuck: readonly string[]) =>
  `Nach den eigenen Versuchen ${alone}, aber ${list(stuck)} ${stuck.length > 1 ? "müssen" : "muss"} zuerst berichtigt werden.`;

/** The verdict on a sample whose tests agree. */
export const holdsSalt = (sample: string, name: string, formula: string, ions: readonly string[]) =>
  `${sample} enthält ${name}, ${formula}: ${list(ions)}.`;
export const holdsIon = (sample: string, ions: string, open: string) => `${sample} enthält ${ions}; ${open}.`;
export const stillOpen = (sample: string, count: number, all: boolean, open: readonly string[]) =>
  `${sample} ist noch offen, ${all ? "alle " : ""}${count} Salze: ${open.join("; ")}.`;
const KINDS = { cations: ["das Kation ist", "die Kationen sind"], anions: ["das Anion ist", "die Anionen sind"] };
/** What is left of a kind of ion: "das Kation ist Calcium (Ca^2+) oder Magnesium (Mg^2+)". */
export const left = (kind: "cations" | "anions", several: boolean, words: string) =>
  `${KINDS[kind][several ? 1 : 0]} ${words}`;
const NUMBERS = ["keines", "eines", "zwei"];
const number = (count: number) => NUMBERS[count] ?? String(count);
/** "eines oder zwei von 7", "zwei von Natrium (Na+), Kalium (K+) und Zink (Zn^2+)" */
export const outOf = (sizes: readonly number[], ions: number | readonly string[]) =>
  `${list(sizes.map(number), OR)} von ${typeof ions === "number" ? ions : list(ions, AND)}`;
export const withOthers = (certain: readonly string[], others: string) => `${list(certain)}, dazu ${others}`;

/** Why an ion is out, in clauses. */
export const notWithPaper = (statement: string) => `die eigenen Versuche passen, aber die Aufgabe sagt: ${statement}`;
export const notTogether = (statement: string) =>
  `die eigenen Versuche passen, aber nicht zusammen mit den anderen Proben: Die Aufgabe sagt ${statement}`;
export const waitsUntilRight = (sample: string) => `wartet, bis ${sample} berichtigt ist`;
/** @param as the salt that would show it, where not all of the ion would */
export const wouldShow = (cell: string, sight: string, as: string | undefined) =>
  `${as === undefined ? "" : `als ${as} `}wäre bei ${cell} zu sehen: ${sight}`;
export const othersElsewhere = (clause: string) => `${clause}; seine anderen Salze widersprechen an anderer Stelle`;

/**
 * "sicher aus a(ii) und b(ii)".
 * @param from tests that prove it, those of another sample with its letter
 * @param several other tests would prove it as well
 * @param statement of the paper, where it does the rest
 */
export function certain(from: readonly { cell: string; sample?: string }[], several: boolean, statement?: string) {
  const places = from.map(({ cell, sample }) => (sample === undefined ? cell : `${cell} für ${sample}`));
  const tests = places.length > 0 ? ` aus ${list(places)}` : "";
  const way = several ? `, zum Beispiel${tests}` : tests;
  if (statement) return `sicher${way}, denn die Aufgabe sagt: ${statement}`;
  return tests ? `sicher${way}` : "sicher: Die Aufgabe lässt kein anderes zu";
}
