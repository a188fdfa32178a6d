/** What stands on the bench besides tubes, samples and reagents, and what is done with it first. Volumes and masses come as text. */
import type { GasKit } from "../../engine/planning/gas-plan.ts";

const DAMP = "Befeuchte es mit entionisiertem Wasser und halte es an die Mündung, ohne das Glas zu berühren.";
const WITH_TEACHER =
  "Sie raucht und verätzt: Deine Lehrkraft macht das, oder ist dabei, im Abzug oder am offenen Fenster.";

interface Kit {
  what: string;
  /** @param filling what limewater is put where, as a sentence: `filling` below */
  prepare: (filling: string) => string;
}
/** For each way of testing a gas. */
export const GASES: Readonly<Record<GasKit, Kit>> = {
  "damp red litmus": { what: "rotes Lackmuspapier", prepare: () => DAMP },
  "damp blue litmus": { what: "blaues Lackmuspapier", prepare: () => DAMP },
  limewater: {
    what: "kleines Glas mit Kalkwasser und eine saubere Pipette",
    prepare: (filling) =>
      `${filling} Zieh das Gas mit der Pipette dicht über der Flüssigkeit auf und blase es hindurch.`,
  },
  "glowing splint": {
    what: "Span",
    prepare: () => "Zünde ihn an, blase die Flamme aus und nimm ihn, solange er glimmt.",
  },
  "lighted splint": { what: "Span", prepare: () => "Zünde ihn an, bevor das Gas kommt." },
  "acidified manganate(VII) paper": {
    what: "Streifen Filterpapier",
    prepare: () => "Befeuchte ihn erst kurz vor dem Nachweis mit einem Tropfen angesäuertem Kaliumpermanganat.",
  },
  "acidified dichromate(VI) paper": {
    what: "Streifen Filterpapier, mit der Pinzette gehalten",
    prepare: () =>
      "Befeuchte ihn mit einem Tropfen angesäuertem Kaliumdichromat, das Krebs und Allergien auslösen kann: Handschuhe, und danach in den Chromabfall.",
  },
  "rod with hydrochloric acid": {
    what: "Glasstab",
    prepare: () => `Tauche ihn in konzentrierte Salzsäure. ${WITH_TEACHER}`,
  },
  "rod with ammonia": {
    what: "Glasstab",
    prepare: () => `Tauche ihn in konzentrierte Ammoniaklösung. ${WITH_TEACHER}`,
  },
  "anhydrous copper(II) sulfate": {
    what: "Spatelspitze weißes, wasserfreies Kupfer(II)-sulfat",
    prepare: () => "Halte es trocken. Es schädigt die Augen: Schutzbrille auf.",
  },
  "cobalt(II) chloride paper": {
    what: "trockenes, blaues Cobalt(II)-chlorid-Papier",
    prepare: () => "Halte es trocken und fass es mit der Pinzette an: Es kann Krebs und Allergien auslösen.",
  },
  "delivery tube into limewater": {
    what: "Ableitungsrohr mit Stopfen, und ein Glas mit Kalkwasser",
    prepare: (filling) => `${filling} Sieh nach, ob das Ableitungsrohr von einem Ende zum anderen frei ist.`,
  },
};
export const filling = (cm3: string, all: string, mm: number, tube: string) =>
  `Gib in jedes ${cm3} cm3 Kalkwasser, zusammen ${all} cm3: ${mm} mm hoch (${tube}).`;
/** Why it stands ready; the thing itself says what it shows. */
export const forTest = (_test: GasKit, because: string) => because;

/** "Teil a", "Teilen a, c" */
const parts = (letters: readonly string[]) => `${letters.length > 1 ? "den Teilen" : "Teil"} ${letters.join(", ")}`;
export const heatingIn = (letters: readonly string[]) => `Erhitzen in ${parts(letters)}`;
export const boilingIn = (letters: readonly string[]) => `Sieden in ${parts(letters)}`;
export const flameTestIn = (letters: readonly string[]) => `Flammenfärbung in ${parts(letters)}`;
export const filteringIn = (letters: readonly string[]) => `Filtrieren in ${parts(letters)}`;
export const SPLINTS = "Späne";
export const tubes = (count: number) => `${count} Gläser`;
export const inCaseColoured = (cells: readonly string[]) => `falls ${cells.join(" oder ")} ein farbiges Gas ergibt`;
/** @param tubes labels of those that hold it */
export const acidIn = (tubes: readonly string[]) => `die Säure in ${tubes.join(", ")}, bevor sie geleert werden`;
/** @param tip grams on the very tip of a spatula; `end` on its end */
export const wipeSpatula = (tip: string, end: string) =>
  `Wisch ihn zwischen zwei Proben sauber ab. Wiege jede Portion, oder schätze sie: ${tip} g sind etwa, was die äußerste Spitze fasst, ${end} g, was das Ende fasst.`;

/** What it is, what is done with it first, and why it is there where that is always the same. */
export const EXTRAS = {
  goggles: {
    what: "Schutzbrille",
    prepare: "Setz sie auf, bevor die erste Flasche geöffnet wird.",
    because: "jeder Teil",
  },
  rack: { what: "Reagenzglasgestell" },
  labels: {
    what: "Stift und Papieretiketten",
    prepare: "Beschrifte jedes Glas, bevor du es füllst.",
    because: "jedes Glas",
  },
  burner: {
    what: "Brenner mit Unterlage und Anzünder",
    prepare: "Probiere beides aus, dann stell den Brenner ab oder auf die leuchtende Flamme.",
  },
  holder: { what: "Reagenzglashalter", prepare: "Fass das Glas nahe an der Mündung." },
  granule: { what: "Siedesteinchen", prepare: "Gib es hinein, solange die Flüssigkeit kalt ist." },
  wire: {
    what: "Draht für die Flammenfärbung",
    prepare: "Reinige ihn vor jeder Probe in der Säure und der Flamme, bis er keine Farbe mehr gibt.",
  },
  watchGlass: {
    what: "Uhrglas",
    prepare: "Eines mit der Säure für den Draht, eines für ein wenig von jeder Probe.",
  },
  spatula: { what: "schmaler Spatel", because: "Portionen fester Proben" },
  tweezers: {
    what: "Pinzette",
    prepare: "Halte damit jedes Papier, nie mit den Fingern.",
    because: "Papiere für Gase",
  },
  funnel: {
    what: "Trichter mit Filterpapier",
    prepare: "Falte das Papier und befeuchte es mit entionisiertem Wasser.",
  },
  card: { what: "weiße Karte", prepare: "Halte sie hinter das Glas: Ein blasses Gas übersieht man leicht." },
  indicator: {
    prepare:
      "Leg es auf eine weiße Unterlage und berühre es mit einem Tropfen an einem sauberen Glasstab. Tauche es nie in das Glas.",
  },
  tile: {
    what: "weiße Unterlage mit einem Glasstab",
    prepare: "Spüle und trockne den Stab zwischen zwei Flüssigkeiten.",
    because: "Indikatorpapier",
  },
  dropper: {
    what: "saubere Pipette",
    prepare: "Eine für jede Flasche. Leg sie nie auf den Tisch und tauche sie nie in ein Glas.",
    because: "eine Pipette für jede Flasche mit Lösung",
  },
  carbonate: {
    what: "Fläschchen mit festem Natriumcarbonat und eigenem Spatel",
    prepare:
      "Beschrifte es. Es reizt die Augen: Schutzbrille auf. Es kommt in kein Glas, bevor die letzte Zeile geschrieben ist.",
  },
  washBottle: {
    what: "Spritzflasche mit entionisiertem Wasser",
    because: "zum Spülen der Gläser und Befeuchten der Papiere",
  },
  beaker: { because: "für das, was in keine Flasche kommt; nichts in den Ausguss, bevor deine Lehrkraft es sagt" },
};
