/** The order of work. Times come as text, in minutes; volumes in cm3. */
import type { GasTest } from "../../engine/practical.ts";
import { list } from "./language.ts";
import { gasTest } from "./steps.ts";

export const NEEDS_SCRIPT =
  "Um Personen, Brenner und Gläser zu wählen, braucht es JavaScript; unten steht der Plan für eine Person mit einem Brenner.";
export const NOT_UNDERSTOOD = "Nicht verstanden.";
/** What can be chosen. */
export const ENTRIES = {
  people: "Personen",
  burners: "Brenner",
  "test-tubes": "Reagenzgläser",
  "boiling-tubes": "Große Reagenzgläser",
  places: "Plätze im Gestell",
  planning: "Minuten zum Planen",
  minutes: "Minuten insgesamt",
  free: "Teile dürfen die Plätze tauschen",
};
/** Of people or burners. */
export const oneOrTwo = (count: number) => (count === 1 ? "1" : "2");
export const tubes = (count: number, forAll: boolean) =>
  forAll ? `${count}, eines für jeden Versuch` : `${count}, gespült und wieder benutzt`;
export const ROOM_FOR_ALL = "Platz für alle";

export const inMinutes = (time: string, one: boolean) => `${time} ${one ? "Minute" : "Minuten"}`;
/** Held against the minutes that the paper allows. */
export const fits = (allowed: number) => `das passt in die ${allowed} Minuten, die es gibt`;
export const over = (inMinutes: string, allowed: number) => `${inMinutes} mehr als die ${allowed}, die es gibt`;
/** @param bench in minutes, with their unit; whole: with planning and clearing up */
export const whole = (bench: string, whole: string, fits: string, proof: string) =>
  `${bench} am Arbeitsplatz und ${whole} mit Planen und Aufräumen: ${fits}. ${proof}`;
export const shortest = (least: string) =>
  `Keine Reihenfolge braucht am Arbeitsplatz weniger als ${least} Minuten, also ist keine kürzer: Das ist bewiesen.`;
export const nearShortest = (least: string, longer: string) =>
  `Keine Reihenfolge braucht am Arbeitsplatz weniger als ${least}, diese ist also höchstens ${longer} länger als die kürzeste.`;

export const HOW_READ = "Jeder Versuch endet mit seiner Zeile im Protokoll. Gefüllte Balken brauchen den Brenner.";
export const DOTTED = " Eine gepunktete Linie neben den Balken: Ein Glas steht, kühlt ab oder tropft inzwischen.";
export const inUse = (tubes: number) =>
  tubes === 1 ? "Höchstens ein Glas ist zugleich in Gebrauch." : `Bis zu ${tubes} Gläser sind zugleich in Gebrauch.`;
export const RINSED =
  " Ein benutztes Glas wird zweimal mit entionisiertem Wasser gespült: Leitungswasser enthält Chlorid.";
export const PLACES = "Wo jedes Glas steht";
export const STEP_BY_STEP = "Schritt für Schritt";
export const HEADS = { minute: "Minute", who: "Wer", tubes: "Gläser", what: "Was" };
export const fromTo = (from: string, to: string) => `${from} bis ${to}`;
export const WHO = { both: "beide", first: "erste Person", second: "zweite Person" };
export const ALL_TUBES = "alle";
export const PLANNING =
  "Alles lesen, planen, die Gläser beschriften und die Marken anbringen. Schreib noch keine Beobachtung auf.";
export const CLEARING_UP = "Die Gläser dorthin leeren, wohin sie gehören, spülen, aufräumen.";
export const rinseFirst = (samples: readonly string[]) => `Spüle zuerst ein benutztes Glas für ${list(samples)}. `;
export const BURNER = " (Brenner)";
export const testsFor = (cells: readonly string[], samples: readonly string[]) =>
  `${cells.join(", ")} für ${list(samples)}`;
const ALONE = {
  stand: ["steht", ""],
  cool: ["kühlt", " ab"],
  "drip through the filter": ["tropft", " durch den Filter"],
} as const;
/** @param to what the tubes are left alone to do */
export function wait(to: keyof typeof ALONE, several: boolean, inMinutes: string) {
  const [verb, rest] = ALONE[to];
  return `Dann ${verb} ${several ? "jedes" : "es"} ${inMinutes} lang${rest}.`;
}

/** In the drawing: the unit at its side, and the name of a bar with what has room behind it. */
export const TIMELINE = {
  unit: "min",
  first: "erste Person",
  second: "zweite Person",
  planning: ["Lesen, planen", ", Gläser beschriften und markieren"],
  clearingUp: ["Aufräumen", ": leeren, spülen, wischen"],
  flame: "Flamme, ",
} as const;

/** A step in a few words, within a sentence. */
export const STEPS = {
  lookAgain: "noch einmal hinsehen",
  take: (amount: string) => `${amount} einfüllen`,
  inExcess: (name: string) => `${name} im Überschuss zugeben`,
  drops: (count: number, name: string) => `${count} Tropfen ${name} zugeben`,
  pieces: (count: number, name: string) => `${count} ${count === 1 ? "Stück" : "Stücke"} ${name} zugeben`,
  volume: (cm3: string, name: string) => `${cm3} cm3 ${name} zugeben`,
  boil: (inMinutes: string) => `${inMinutes} sieden lassen`,
  filter: (keep: "filtrate" | "residue") =>
    `filtrieren, ${keep === "filtrate" ? "das Filtrat" : "den Rückstand"} aufheben`,
  wash: "den Rückstand waschen",
  heat: (how: "gently" | "strongly") => `den Feststoff ${how === "gently" ? "vorsichtig" : "kräftig"} erhitzen`,
  testGas: (by: GasTest) => `das Gas prüfen: ${gasTest(by)}`,
  leadThrough: (inExcess: boolean) => `das Gas durch Kalkwasser leiten${inExcess ? ", solange welches kommt" : ""}`,
  indicator: (by: string) => `mit ${by === "litmus" ? "Lackmus" : "Universalindikator"} prüfen`,
  flame: "den Draht reinigen, in der Flamme prüfen",
  warm: "erwärmen",
  cool: "abkühlen lassen",
  stand: "stehen lassen",
} as const;
