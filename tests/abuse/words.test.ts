/** What somebody types or pastes: an observation, the sentences of a paper, a question to the search. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { holds, termsOf, wordingsOf } from "../../src/components/search/terms.ts";
import { LONGEST_INSTRUCTION, readInstruction } from "../../src/engine/wording/read-instruction.ts";
import { readWords } from "../../src/engine/wording/read-words.ts";
import { anyText, HOSTILE, untouched } from "./hostile.ts";

const PASTED =
  "To 1 cm3 of solution K add aqueous ammonia until in excess. Warm gently and test any gas with damp red litmus.";
const SEEN = "white precipitate, dissolves in excess to a colourless solution; damp red litmus turns blue";

/** A sentence with something put into it. */
const mixed = (sentence: string) =>
  fc.tuple(fc.nat(sentence.length), anyText).map(([at, put]) => sentence.slice(0, at) + put + sentence.slice(at));

test("an observation in any words is read or asked about, and a sight is never made of nothing", () => {
  for (const text of HOSTILE) {
    const { seen, questions } = readWords(text);
    expect(seen === undefined || questions.length === 0 || text.includes("white"), text.slice(0, 30)).toBe(true);
    for (const question of questions) expect(question.length).toBeLessThan(1_000);
  }
  fc.assert(
    fc.property(fc.oneof(anyText, mixed(SEEN)), (text) => {
      const { seen, questions } = readWords(text);
      expect(seen !== undefined || questions.length > 0).toBe(true);
      for (const question of questions) expect(question.length).toBeLessThan(1_000);
    }),
    { numRuns: 600, seed: 41 },
  );
  expect(untouched()).toBe(true);
});

test("pasted sentences give no more steps than they have words", () => {
  const looked = (text: string) => {
    const read = readInstruction(text);
    const steps = read.parts.flatMap(({ tests }) => tests.flatMap((one) => one.steps));
    // Each word may be an amount, a reagent or a verb; "add ammonia" after a fresh start takes a sample first.
    expect(steps.length).toBeLessThanOrEqual(2 * (text.split(/\s+/).length + 1));
    return steps.length;
  };
  for (const text of HOSTILE) expect(looked(text), text.slice(0, 30)).toBe(0);
  fc.assert(
    fc.property(fc.oneof(anyText, mixed(PASTED)), (text) => {
      looked(text);
    }),
    { numRuns: 400, seed: 42 },
  );
  expect(looked(PASTED.repeat(1 + LONGEST_INSTRUCTION / PASTED.length))).toBeGreaterThanOrEqual(0);
  expect(untouched()).toBe(true);
});

test("any question to the search is a few terms of it, and asks for no more wordings than a reader waits for", () => {
  fc.assert(
    fc.property(fc.oneof(anyText, mixed("is SO4^2- found with barium nitrate")), (text) => {
      const terms = termsOf(text);
      expect(terms.length).toBeLessThanOrEqual(text.length);
      expect(wordingsOf(terms).length).toBeLessThan(100);
      holds("White precipitate of BaSO4 with barium nitrate.", terms);
    }),
    { numRuns: 400, seed: 43 },
  );
  expect(untouched()).toBe(true);
});
