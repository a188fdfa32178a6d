/** What is to be seen in a tube, told plainly part by part: not the words a mark scheme credits. */
import type { Colour } from "../../engine/practical/same-colour.ts";
import type { GasTest } from "../../engine/practical.ts";
import { evidence, colour as named } from "./observation.ts";

const hue = (colour: Colour): string => (colour === "colourless" ? "ohne jede Farbe" : named(colour));
const ofHue = (colour: Colour | undefined): string => (colour ? `, ${hue(colour)}` : "");

/** The tube as it stands. */
export const drySolid = (colour: Colour | undefined) => `Etwas Trockenes, Festes${ofHue(colour)}.`;
export const solidInIt = (colour: Colour | undefined) => `Etwas Festes ist darin${ofHue(colour)}.`;
/** @param same as it was before the test */
export const liquid = (colour: Colour, same: boolean) =>
  `Die Flüssigkeit ist ${same ? "wie vorher, " : ""}${hue(colour)}.`;

/** @param of the colour of the reagent, where it is known */
export const colourGone = (of: Colour | undefined, left: Colour) =>
  `Die Farbe des Reagenzes${of ? ` (${hue(of)})` : ""} ist verschwunden: Die Flüssigkeit ist ${hue(left)}.`;

/** What has happened since. */
export const BUBBLES = "Blasen steigen auf.";
/** @param less than at first */
export function clouds(colour: Colour, slight: boolean, less: boolean): string {
  const than = less ? ", wenn auch weniger als am Anfang" : "";
  return slight
    ? `Ein wenig von etwas, das ${named(colour)} ist, trübt sie${than}: Man kann gerade noch hindurchsehen.`
    : `Etwas, das ${named(colour)} ist, trübt alles${than}: Man kann nicht mehr hindurchsehen.`;
}
export const cloudGone = (colour: Colour) =>
  `Zuerst wird es trüb, ${named(colour)}; am Ende ist die Trübung verschwunden.`;
export const SOLID_GONE = "Das Feste ist weg.";
export const LESS_SOLID = "Vom Festen ist weniger da als vorher.";
export const solidStill = (colour: Colour | undefined) =>
  `Das Feste ist noch da${colour && colour !== "colourless" ? `, ${named(colour)}` : ""}.`;

/** What the paper, splint or limewater looks like where it showed a gas, by the evidence as the constants word it. */
const SIGNS: Readonly<Record<string, string>> = {
  "damp red litmus turns blue": "Das rote Lackmuspapier ist jetzt blau.",
  "limewater turns milky": "Durch das Kalkwasser sieht man nicht mehr hindurch: Es sieht aus wie dünne Milch.",
  "limewater turns milky, then clear in excess":
    "Das Kalkwasser sieht erst aus wie dünne Milch; mit mehr von dem Gas kann man wieder hindurchsehen.",
  "acidified manganate(VII) paper turns from purple to colourless": "Das Rotviolett des Papiers ist weg.",
  "lighted splint gives a squeaky pop": "An der Flamme gibt es ein kurzes, hohes Bellen.",
  "glowing splint relights": "Die Glut des Spans schlägt in eine Flamme um.",
  "damp litmus is bleached": "Das Lackmuspapier hat seine Farbe verloren.",
  "damp blue litmus turns red": "Das blaue Lackmuspapier ist jetzt rot.",
  "anhydrous copper(II) sulfate turns blue": "Das weiße Pulver ist jetzt blau.",
  "acidified dichromate(VI) paper turns from orange to green": "Das Orange des Papiers ist jetzt grün.",
  "cobalt(II) chloride paper turns from blue to pink": "Das Blau des Papiers ist jetzt rosa.",
  "white smoke on the rod": "Um den Stab hängt weißer Rauch.",
};
export const sign = (seen: string): string => SIGNS[seen] ?? `Zu sehen: ${evidence(seen)}.`;

/** What is held in the gas. */
const HELD: Readonly<Partial<Record<GasTest, string>>> = {
  "damp red litmus": "Das rote Lackmuspapier",
  "damp blue litmus": "Das blaue Lackmuspapier",
  limewater: "Das Kalkwasser",
  "glowing splint": "Der Span",
  "lighted splint": "Die Flamme des Spans",
  "rod with hydrochloric acid": "Die Luft um den Stab",
  "rod with ammonia": "Die Luft um den Stab",
  "anhydrous copper(II) sulfate": "Das weiße Pulver",
};
export const heldAsBefore = (test: GasTest | undefined) =>
  `${(test && HELD[test]) ?? "Das Papier"} sieht aus wie vorher.`;
export const spot = (colour: Colour) => `Der Fleck auf dem Papier ist ${named(colour)}.`;

export const fumes = (colour: Colour) => `Darüber füllt sich das Reagenzglas mit etwas, das ${named(colour)} ist.`;
export const DROPLETS = "Weiter oben ist das Glas innen nass.";
export const sublimate = (colour: Colour) =>
  `Weiter oben, wo das Glas kühl ist, hat es einen Belag, der ${named(colour)} ist.`;
export const EMPTY = "Der Boden des Reagenzglases ist leer.";
export const leftHot = (colour: Colour) => `Solange es heiß ist, ist das, was zurückbleibt, ${hue(colour)}.`;
export const leftCold = (colour: Colour) => `Abgekühlt ist das, was zurückbleibt, ${hue(colour)}.`;
export const NO_FLAME = "Die Flamme sieht aus wie ohne die Probe.";
export const flame = (colour: Colour) => `Der Rand der Flamme ist ${named(colour)}.`;
export const AS_BEFORE = "Es sieht aus wie vorher.";
