/**
 * Words into observations. The sentences marked "notes" are those of the boards' published notes on qualitative analysis (Cambridge 0620,
 * 5070 and 9701, from memory of the printed notes); the others are how such lines are written by hand: common practice, no source.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COLOURS } from "../../../src/engine/constants/colours.ts";
import { CLEARS_AGAIN, type Observation, observation } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { type AskedOf, readWords } from "../../../src/engine/wording/read-words.ts";

const read = (text: string, asked: AskedOf = {}) => readWords(text, asked);

const WHITE_DISSOLVED = { precipitate: "white", fate: "dissolves", solution: "colourless" };
const CLEARED = { formula: "CO2", evidence: CLEARS_AGAIN };
const SULFUROUS = { formula: "SO2", evidence: "damp blue litmus turns red" };

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
    ["grey-brown ppt", { precipitate: "brown" }],
    ["violet-blue solution", { solution: "blue" }],
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

describe("other words and another order", () => {
  test.each<[string, AskedOf, object | string]>([
    ["ppt, white", {}, { precipitate: "white" }],
    ["a precipitate which is white, dissolving in xs -> colourless", {}, WHITE_DISSOLVED],
    ["colourless soln formed when xs added, white ppt at first, dissolves", {}, WHITE_DISSOLVED],
    ["slight white ppt", {}, { precipitate: { colour: "white", amount: "slight" } }],
    ["v. faint trace of white ppt.", {}, { precipitate: { colour: "white", amount: "trace" } }],
    ["barely visible white ppt", {}, { precipitate: { colour: "white", amount: "trace" } }],
    ["very slight white ppt", {}, { precipitate: { colour: "white", amount: "trace" } }],
    ["white cloudiness", {}, { precipitate: "white" }],
    ["gelatinous white precipitate", {}, { precipitate: "white" }],
    ["ppt is still there", { solid: true }, { fate: "remains" }],
    ["white ppt insol in xs", { solid: true, excess: true }, { fate: "remains" }],
    ["doesnt dissolve", { solid: true }, { fate: "remains" }],
    ["partially soluble", { solid: true }, { fate: "partly dissolves" }],
    ["some of it dissolves, deep blue soln", { solid: true }, { fate: "partly dissolves", solution: "deep blue" }],
    ["clear blue solution", {}, { solution: "blue" }],
    ["manganate decolourised", { gas: false }, { solution: "colourless" }],
    ["stays purple", { solid: false }, { solution: "purple" }],
    ["no change, remains purple", { solid: false }, { none: true, stays: "purple" }],
    ["purple colour remains", { solid: false }, { solution: "purple" }],
    ["the purple colour of the manganate persists", {}, { solution: "purple" }],
    ["KMnO4 turns from purple to colourless", { gas: true }, { gas: "SO2" }],
    ["no bubbles", {}, { effervescence: false }],
    ["NVC", {}, "no visible change"],
    ["no obvious change", {}, "no visible change"],
    ["white smoke near HCl", {}, { gas: { formula: "NH3", evidence: "white smoke on the rod" } }],
    ["white smoke", { gasTest: "rod with ammonia" }, { gas: { formula: "HCl", evidence: "white smoke on the rod" } }],
    ["turns blue", { gasTest: "damp red litmus" }, { gas: "NH3" }],
    ["red litmus stays red", {}, { gas: "none" }],
    ["no pop", { gasTest: "lighted splint" }, { gas: "none" }],
    ["goes cloudy", { gasTest: "limewater" }, { gas: "CO2" }],
    ["goes cloudy then clears", { gasTest: "limewater" }, { gas: CLEARED }],
    ["lime water milky, clears again in excess", {}, { gas: CLEARED }],
    ["limewater milky", {}, { gas: "CO2" }],
    ["blue litmus goes red, sulfur dioxide", {}, { gas: SULFUROUS }],
    ["brown fumes (nitrogen dioxide)", {}, { fumes: "brown" }],
    ["lilac", { flame: true }, { flame: "lilac" }],
    ["brick-red flame", {}, { flame: "brick red" }],
    ["no colour", { flame: true }, { flame: "none" }],
    ["red", { indicator: "litmus" }, { indicator: "red" }],
    ["hot: yellow, cold: white", { heated: true }, { residue: { hot: "yellow", cold: "white" } }],
    ["black then grey when hot, grey (silver) when cold", {}, { residue: { hot: "grey", cold: "grey" } }],
    ["white, swollen when hot, white when cold", {}, { residue: { hot: "white", cold: "white" } }],
    ["brown to yellow when hot, yellow on cooling", {}, { residue: { hot: "yellow", cold: "yellow" } }],
    ["nothing left", { heated: true, solid: true }, { residue: "none" }],
    ["white sublimate on the cool part of the tube", {}, { sublimate: "white" }],
    ["condensation on the cool wall", {}, { droplets: true }],
  ])("%s", (text, asked, seen) => {
    expect(read(text, asked).seen).toEqual(observation.parse(seen));
    expect(read(text, asked).questions.filter((question) => question.startsWith("Not understood"))).toEqual([]);
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
    ["no reaction seen", {}, /"No reaction" is a conclusion/],
    ["ammonia given off", { gas: true }, /How was ammonia shown/],
    ["white smoke", {}, /White smoke near what/],
    ["pungent smell", {}, /A smell names no gas/],
    ["blue litmus turns red", {}, /which was it/],
    ["grey-white ppt", {}, /"grey-white" is read as white/],
    ["goes cloudy then clears", {}, /What colour is the precipitate|What colour is the solution/],
    ["yellow residue", { heated: true }, /while it was hot/],
    ["yellow when hot", { heated: true }, /when cold/],
    ["melts", { heated: true }, /a record here has no place/],
    ["white", {}, /What is white: a precipitate, the solution/],
    ["white ppt smells of violets", {}, /Not understood: "violets"/],
    ["", {}, /Nothing is written yet/],
    ["x".repeat(400), {}, /400 letters long/],
  ])("%s", (text, asked, question) => {
    expect(read(text, asked).questions.join(" ")).toMatch(question);
  });

  test("hydrogen chloride is named as itself, not as hydrogen", () => {
    expect(read("damp blue litmus turns red, hydrogen chloride").named).toBe("HCl");
    expect(read("squeaky pop, hydrogen").named).toBe("H2");
  });

  test("no change to a precipitate in excess is that it remains", () => {
    expect(read("no further change", { solid: true, excess: true }).seen).toEqual({ none: true });
    expect(read("no change in excess", { solid: true, excess: true }).seen).toEqual({ fate: "remains" });
  });
});

test("the engine's own words are read back as what they say", () => {
  const colour = fc.constantFrom(...(Object.keys(COLOURS) as (keyof typeof COLOURS)[]));
  // A colourless precipitate is asked for its colour.
  const opaque = colour.filter((name) => name !== "colourless");
  const written = fc.oneof(
    fc.record({ precipitate: opaque, fate: fc.constantFrom("remains", "dissolves", "partly dissolves") }),
    fc.record({ precipitate: opaque }),
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

test("no text makes it fail or hang", () => {
  const word = fc.constantFrom(
    ..."white ppt soln xs sol insol litmus limewater turns to from blue red purple colourless manganate splint pop hot cold , - no not slight very pale residue fumes rod smoke some of it".split(
      " ",
    ),
  );
  const sentence = fc.array(word, { maxLength: 60 }).map((words) => words.join(" ").slice(0, 300));
  const repeated = word.map((one) => `${one} `.repeat(300).slice(0, 300));
  const asked = fc.record({
    solid: fc.boolean(),
    excess: fc.boolean(),
    gas: fc.boolean(),
    heated: fc.boolean(),
    flame: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.oneof(fc.string({ maxLength: 300 }), sentence, repeated), asked, (text, of) => {
      const { seen, questions } = readWords(text, of);
      expect(questions.every((question) => question.length > 0)).toBe(true);
      // What is read is an observation that a record can hold.
      if (seen) expect(observation.safeParse(shortOf(seen)).success).toBe(true);
      else expect(questions.length).toBeGreaterThan(0);
    }),
    { numRuns: 1500, seed: 12 },
  );
});

/** As an author writes it: `none` for what was looked for and not found. */
const shortOf = (seen: Observation): object =>
  Object.fromEntries(
    Object.entries(seen).map(([key, value]) => [key, value === false && key !== "effervescence" ? "none" : value]),
  );

describe("a denial that is not understood denies all that was read", () => {
  test.each<[string, AskedOf]>([
    ["bubbles that do not turn limewater milky", {}],
    ["bubbles that do not turn limewater milky", { gas: true, gasTest: "limewater" }],
    ["white ppt did not form", {}],
    ["white ppt, hardly dissolves in excess", { solid: true, excess: true }],
    ["very little of it dissolves", { solid: true }],
    ["ppt never dissolves", { solid: true }],
    ["gas does not pop", {}],
    ["no brown fumes", {}],
    ["lighted splint held near the gas never pops", {}],
    ["KMnO4 was not at all decolourised", { gas: true }],
    ["limewater isnt milky", {}],
    ["isn't blue", { gasTest: "damp red litmus" }],
    ["fails to relight a glowing splint", {}],
  ])("%s %j", (text, asked) => {
    const { seen, named, questions } = read(text, asked);
    expect(seen).toBeUndefined();
    expect(named).toBeUndefined();
    expect(questions.join(" ")).toMatch(/^Not understood: ".*". It says that something was not seen/);
  });

  test.each<[string, AskedOf, object]>([
    ["no ppt", {}, { precipitate: "none" }],
    ["ppt does not dissolve", { solid: true }, { fate: "remains" }],
    ["splint does not pop", {}, { gas: "none" }],
    ["limewater did not turn milky", {}, { gas: "none" }],
  ])("but what is read as a denial stands: %s", (text, asked, seen) => {
    expect(read(text, asked).seen).toEqual(observation.parse(seen));
  });
});

describe("a colour said of the solid is not the liquid's", () => {
  const DISSOLVED_WHITE = { precipitate: "white", fate: "dissolves" };
  test.each<[string, AskedOf, object]>([
    ["white solid formed then it dissolved", {}, DISSOLVED_WHITE],
    ["white solid formed then it dissolved", { solid: false }, DISSOLVED_WHITE],
    ["white solid which dissolves when more is added", { solid: false }, DISSOLVED_WHITE],
    ["white solid dissolves", { solid: true }, { fate: "dissolves" }],
    ["blue solid dissolves to a blue solution", { solid: true }, { fate: "dissolves", solution: "blue" }],
    ["white solid formed", { solid: true }, { precipitate: "white" }],
    ["wh ppt", {}, { precipitate: "white" }],
    ["wht ppt", {}, { precipitate: "white" }],
  ])("%s %j", (text, asked, seen) => {
    expect(read(text, asked).seen).toEqual(observation.parse(seen));
  });

  test("what is not understood is said back as it was typed", () => {
    expect(read("xyz ppt").questions.join(" ")).toContain("xyz ppt");
  });
});
