/**
 * Words into observations. The sentences marked "notes" are those of the boards' published notes on qualitative analysis (Cambridge 0620,
 * 5070 and 9701, from memory of the printed notes); the others are how such lines are written by hand: common practice, no source.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COLOURS } from "../../../src/engine/constants/colours.ts";
import { observation } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { readWords } from "../../../src/engine/wording/read-words.ts";

const read = (text: string, asked = {}) => readWords(text, asked);

describe("the boards' notes", () => {
  test.each<[string, object | string]>([
    [
      "white ppt., soluble in excess, giving a colourless solution",
      { precipitate: "white", fate: "dissolves", solution: "colourless" },
    ],
    ["white ppt., insoluble in excess", { precipitate: "white", fate: "remains" }],
    ["light blue ppt., insoluble in excess", { precipitate: "light blue", fate: "remains" }],
    [
      "light blue ppt., soluble in excess, giving a dark blue solution",
      { precipitate: "light blue", fate: "dissolves", solution: "dark blue" },
    ],
    ["green ppt., insoluble in excess", { precipitate: "green", fate: "remains" }],
    ["red-brown ppt., insoluble in excess", { precipitate: "red-brown", fate: "remains" }],
    [
      "grey-green ppt., soluble in excess giving dark green solution",
      { precipitate: "grey-green", fate: "dissolves", solution: "dark green" },
    ],
    ["no ppt.", { precipitate: "none" }],
    ["off-white ppt., insoluble in excess", { precipitate: "off-white", fate: "remains" }],
    ["effervescence", { effervescence: true }],
    ["cream ppt.", { precipitate: "cream" }],
    ["yellow ppt.", { precipitate: "yellow" }],
    ["turns damp red litmus paper blue", { gas: "NH3" }],
    ["turns limewater milky", { gas: "CO2" }],
    ["bleaches damp litmus paper", { gas: "Cl2" }],
    ["relights a glowing splint", { gas: "O2" }],
    ["turns acidified aqueous potassium manganate(VII) from purple to colourless", { gas: "SO2" }],
  ])("notes: %s", (text, seen) => {
    expect(read(text).seen).toEqual(observation.parse(seen));
    expect(read(text).questions).toEqual([]);
  });
});

describe("as it is written at the bench", () => {
  test.each<[string, object | string]>([
    ["white ppt sol in xs giving colourless soln", { precipitate: "white", fate: "dissolves", solution: "colourless" }],
    ["White PPT, insol. in XS", { precipitate: "white", fate: "remains" }],
    ["wht", {}],
    ["faint white ppt", { precipitate: { colour: "white", amount: "slight" } }],
    ["slight white precipitate", { precipitate: { colour: "white", amount: "slight" } }],
    ["reddish brown ppt", { precipitate: "red-brown" }],
    ["n.v.c.", "no visible change"],
    ["No visible change", "no visible change"],
    ["nothing happens", "no visible change"],
    ["bubbles, limewater goes cloudy", { effervescence: true, gas: "CO2" }],
    ["fizzing; gas turns lime water milky", { effervescence: true, gas: "CO2" }],
    ["damp red litmus → blue", { gas: "NH3" }],
    ["squeaky pop with a lighted splint", { gas: "H2" }],
    ["lilac flame", { flame: "lilac" }],
    ["flame is brick red", { flame: "brick red" }],
    ["yellow when hot, white when cold", { residue: { hot: "yellow", cold: "white" } }],
    ["brown fumes, glowing splint relights", { fumes: "brown", gas: "O2" }],
    ["solution turns from orange to green", { solution: "green" }],
    ["solution goes blue", { solution: "blue" }],
    ["universal indicator turns red", { indicator: "red" }],
    ["white solid on the cool wall", { sublimate: "white" }],
  ])("%s", (text, seen) => {
    if (Object.keys(seen).length === 0) expect(read(text).seen).toBeUndefined();
    else expect(read(text).seen).toEqual(observation.parse(seen));
  });
});

describe("what is missing or no colour is asked for", () => {
  test.each<[string, object, RegExp]>([
    ["white ppt", { excess: true }, /What happened in excess/],
    ["it dissolves", { solid: true, excess: true }, /What colour is the solution now/],
    ["precipitate", {}, /What colour is the precipitate/],
    ["clear solution", {}, /"Clear" is not a colour/],
    ["it dissolves to a clear liquid", { solid: true }, /"Clear" is not a colour/],
    ["ammonia", { gas: true }, /How was ammonia shown/],
    ["effervescence", { gas: true }, /Which gas was it/],
    ["no reaction", {}, /"No reaction" is a conclusion/],
    ["white", {}, /What is white: a precipitate, the solution/],
    ["white ppt smells of violets", {}, /Not understood: "smells violets"/],
    ["", {}, /Nothing is written yet/],
    ["x".repeat(400), {}, /400 letters long/],
  ])("%s", (text, asked, question) => {
    expect(read(text, asked).questions.join(" ")).toMatch(question);
  });

  test("no change to a precipitate in excess is that it remains", () => {
    expect(read("no further change", { solid: true, excess: true }).seen).toEqual({ none: true });
    expect(read("no change in excess", { solid: true, excess: true }).seen).toEqual({ fate: "remains" });
  });
});

test("the engine's own words are read back as what they say", () => {
  const colour = fc.constantFrom(...(Object.keys(COLOURS) as (keyof typeof COLOURS)[]));
  const written = fc.oneof(
    fc.record({ precipitate: colour, fate: fc.constantFrom("remains", "dissolves", "partly dissolves") }),
    fc.record({ precipitate: colour }),
    fc.record({ fate: fc.constant("dissolves"), solution: colour }),
    fc.record({ solution: colour }),
    fc.record({ flame: colour }),
    fc.record({
      gas: fc.constantFrom("NH3", "CO2", "O2", "H2", "Cl2", "SO2", "HCl", "H2O"),
      effervescence: fc.constant(true),
    }),
  );
  fc.assert(
    fc.property(written, (short) => {
      const seen = observation.parse(short);
      expect(readWords(phrase(seen)).seen).toEqual(seen);
    }),
    { numRuns: 800, seed: 11 },
  );
});

test("no text makes it fail or take long", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), (text) => {
      expect(readWords(text).questions.every((question) => question.length > 0)).toBe(true);
    }),
    { numRuns: 500, seed: 12 },
  );
});
