/** German words into observations: how such lines are written on record sheets. Common practice, no source. */
import { describe, expect, test } from "vitest";
import { COLOURS } from "../../../src/engine/constants/colours.ts";
import type { Colour } from "../../../src/engine/practical/same-colour.ts";
import { observation } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { type AskedOf, readWords } from "../../../src/engine/wording/read-words.ts";

const WHITE_DISSOLVED = { precipitate: "white", fate: "dissolves", solution: "colourless" };

describe("precipitates and what becomes of them", () => {
  test.each<[string, AskedOf, object | string]>([
    ["weißer Niederschlag, löst sich im Überschuss, farblose Lösung", {}, WHITE_DISSOLVED],
    ["weisser Niederschlag, loest sich im Ueberschuss, farblose Loesung", {}, WHITE_DISSOLVED],
    ["Weißer Nd., im Überschuss löslich, ergibt eine farblose Lsg.", {}, WHITE_DISSOLVED],
    ["es fällt ein weißer Niederschlag aus, der sich im Überschuss wieder löst, farblose Lösung", {}, WHITE_DISSOLVED],
    ["weißer Niederschlag, unlöslich im Überschuss", {}, { precipitate: "white", fate: "remains" }],
    ["weißer Niederschlag, löst sich im Überschuss nicht", {}, { precipitate: "white", fate: "remains" }],
    ["weißer Niederschlag, löst sich nicht auf", {}, { precipitate: "white", fate: "remains" }],
    ["hellblauer Niederschlag, der bestehen bleibt", {}, { precipitate: "light blue", fate: "remains" }],
    [
      "hellblauer Niederschlag, löst sich im Überschuss auf, tiefblaue Lösung",
      {},
      { precipitate: "light blue", fate: "dissolves", solution: "deep blue" },
    ],
    ["Niederschlag bleibt", { solid: true }, { fate: "remains" }],
    ["löst sich teilweise, blaue Lösung", { solid: true }, { fate: "partly dissolves", solution: "blue" }],
    ["löst sich zum Teil auf", { solid: true }, { fate: "partly dissolves" }],
    ["rotbrauner Niederschlag", {}, { precipitate: "red-brown" }],
    ["rostbrauner Niederschlag", {}, { precipitate: "red-brown" }],
    ["dunkel-grüner Niederschlag", {}, { precipitate: "dark green" }],
    ["schmutzig grüner Niederschlag", {}, { precipitate: "dirty green" }],
    ["cremefarbener Niederschlag", {}, { precipitate: "cream" }],
    ["schwacher weißer Niederschlag", {}, { precipitate: { colour: "white", amount: "slight" } }],
    ["weiße Trübung", {}, { precipitate: "white" }],
    ["kein Niederschlag", {}, { precipitate: "none" }],
    ["grüner, gallertartiger Niederschlag", {}, { precipitate: "green" }],
  ])("%s", (text, asked, seen) => {
    expect(readWords(text, asked).seen).toEqual(observation.parse(seen));
    expect(readWords(text, asked).questions).toEqual([]);
  });
});

describe("liquids, gases, flames and residues", () => {
  test.each<[string, AskedOf, object | string]>([
    ["keine sichtbare Veränderung", {}, "no visible change"],
    ["keine Veränderung", {}, "no visible change"],
    ["nichts zu sehen", {}, "no visible change"],
    ["es passiert nichts", {}, "no visible change"],
    ["keine Blaufärbung mit Stärke", {}, "no visible change"],
    ["wird mit Stärke nicht blauschwarz", {}, "no visible change"],
    ["mit Stärke blauschwarz", {}, { solution: "blue-black" }],
    ["blauschwarze Färbung mit Stärkelösung", {}, { solution: "blue-black" }],
    ["Lösung wird blau", {}, { solution: "blue" }],
    ["die Lösung färbt sich von orange nach grün", {}, { solution: "green" }],
    ["entfärbt sich", { gas: false }, { solution: "colourless" }],
    ["Gasentwicklung", {}, { effervescence: true }],
    ["Bläschen, Kalkwasser trübt sich", {}, { effervescence: true, gas: "CO2" }],
    ["es schäumt, Kalkwasser wird milchig", {}, { effervescence: true, gas: "CO2" }],
    ["keine Gasentwicklung", {}, { effervescence: false }],
    ["feuchtes rotes Lackmuspapier färbt sich blau", {}, { gas: "NH3" }],
    ["rotes Lackmuspapier wird blau, Ammoniak", {}, { gas: "NH3" }],
    ["wird blau", { gasTest: "damp red litmus" }, { gas: "NH3" }],
    ["feuchtes Lackmuspapier wird gebleicht", {}, { gas: "Cl2" }],
    ["Glimmspanprobe positiv", {}, { gas: "O2" }],
    ["glimmender Span flammt auf", {}, { gas: "O2" }],
    ["Knallgasprobe positiv", {}, { gas: "H2" }],
    ["pfeifender Knall am brennenden Span", {}, { gas: "H2" }],
    ["Papier mit Permanganat wird entfärbt", {}, { gas: "SO2" }],
    ["wasserfreies Kupfersulfat wird blau", {}, { gas: "H2O" }],
    [
      "weißer Rauch am Stab",
      { gasTest: "rod with hydrochloric acid" },
      { gas: { formula: "NH3", evidence: "white smoke on the rod" } },
    ],
    ["Gasnachweis negativ", {}, { gas: "none" }],
    ["braune Dämpfe", {}, { fumes: "brown" }],
    ["gelbe Flamme", {}, { flame: "yellow" }],
    ["Flamme ziegelrot", {}, { flame: "brick red" }],
    ["färbt die Flamme gelb", { flame: true }, { flame: "yellow" }],
    ["keine Flammenfärbung", { flame: true }, { flame: "none" }],
    ["heiß gelb, kalt weiß", { heated: true }, { residue: { hot: "yellow", cold: "white" } }],
    ["schwarzer Rückstand", { heated: false }, { residue: { cold: "black" } }],
    ["nichts bleibt zurück", { heated: true, solid: true }, { residue: "none" }],
    ["Tropfen an der kühlen Wand", {}, { droplets: true }],
    ["weißer Feststoff an der kühlen Wand", {}, { sublimate: "white" }],
    ["Universalindikator wird rot", { indicator: "universal indicator" }, { indicator: "red" }],
  ])("%s", (text, asked, seen) => {
    expect(readWords(text, asked).seen).toEqual(observation.parse(seen));
    expect(readWords(text, asked).questions).toEqual([]);
  });
});

describe("what is asked, and what is not understood", () => {
  test.each<[string, AskedOf, RegExp]>([
    ["klare Lösung", {}, /^"Klar" ist keine Farbe/],
    ["keine Reaktion", {}, /^"Keine Reaktion" ist ein Schluss/],
    ["Ammoniak entsteht", {}, /^Wie wurde Ammoniak nachgewiesen\? .* "feuchtes rotes Lackmuspapier wird blau"\.$/],
    ["stechender Geruch", {}, /^Ein Geruch benennt kein Gas/],
    ["Niederschlag", {}, /^Welche Farbe hat der Niederschlag\?/],
    ["weißer Niederschlag", { excess: true }, /^Was geschah im Überschuss/],
    ["weiß", {}, /^Was ist weiß:/],
    ["weißer Niederschlag wie Quark", {}, /^Nicht verstanden: "wie quark"\.$/],
    [
      "Bläschen, die Kalkwasser nicht berühren",
      {},
      /^Nicht verstanden: ".*nicht beruehren".* Es heißt, dass etwas nicht/,
    ],
    ["", {}, /^Noch steht nichts da\.$/],
    ["x".repeat(301), {}, /^Das sind 301 Zeichen/],
  ])("%s", (text, asked, question) => {
    expect(readWords(text, asked).questions.join("\n")).toMatch(question);
  });
});

test.each(Object.keys(COLOURS) as Colour[])("%s is read back from its German name", (colour) => {
  const seen = readWords(phrase({ precipitate: { colour, amount: "plain" } })).seen;
  const read = seen?.precipitate ? seen.precipitate.colour : undefined;
  if (colour === "colourless") expect(read).toBeUndefined();
  else expect(read).toBe(colour);
});
