import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { holds, termsOf, wordingsOf } from "../../../src/components/search/terms.ts";

const said = (question: string) => termsOf(question).map(({ says }) => says);

describe("what a question asks for", () => {
  test.each([
    ["SO4", ["sulfate"]],
    ["sulphate", ["sulfate"]],
    ["SO₄²⁻", ["sulfate"]],
    ["SO4 2-", ["sulfate"]],
    ["SO4 ^2-", ["sulfate"]],
    ["SO4-2", ["sulfate"]],
    ["SO4^-2", ["sulfate"]],
    ["SO₄²−", ["sulfate"]],
    ["the test for sulphate ions", ["sulfate"]],
    ["copper (II)", ["copper(ii)"]],
    ["Cu 2+", ["copper(II)"]],
    ["ferric", ["iron(III)"]],
    ["ferric chloride", ["iron(iii)", "chloride"]],
    ["NH3 and NaOH", ["ammonia", "sodium hydroxide"]],
    ["I am in the lab", ["am", "lab"]],
    ["the", []],
    ["???", []],
    ["", []],
  ])("%s", (question, wanted) => {
    expect(said(question).map((one) => one.toLowerCase())).toEqual(wanted.map((one) => one.toLowerCase()));
  });

  test("each formula is asked for by name and as it is printed", () => {
    for (const way of ["SO4", "SO4^2-", "sulphate"]) expect(wordingsOf(termsOf(way))).toEqual(["sulfate", "SO₄"]);
    expect(wordingsOf(termsOf("copper(II)"))).toEqual(["copper(II)", "Cu²⁺"]);
    expect(wordingsOf(termsOf("zinc SO4"))).toEqual(["sulfate zinc", "SO₄ zinc"]);
    expect(wordingsOf(termsOf("white"))).toEqual(["white"]);
    // Each of these can be said in two ways: all of them together would be a number of 13 figures.
    expect(wordingsOf(termsOf("SO4 ".repeat(40))).length).toBeLessThanOrEqual(8);
    expect(wordingsOf(termsOf("of the"))).toEqual([]);
  });

  test("no question, however odd, asks for more than eight wordings", () => {
    const pieces = fc.array(
      fc.constantFrom("SO4", "NO3-", "Cu2+", "CuSO4", "^", "((", "₂", "[", "NH3", "a+", "2-", "\\", "*"),
      {
        maxLength: 40,
      },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 300 }),
          pieces.map((some) => some.join(" ")),
        ),
        (question) => {
          const terms = termsOf(question);
          expect(wordingsOf(terms).length).toBeLessThanOrEqual(8);
          expect(typeof holds("Any text.", terms)).toBe("boolean");
        },
      ),
      { seed: 4, numRuns: 500 },
    );
  });
});

describe("what a page holds", () => {
  test.each([
    ["SO4", "It shows SO₄²⁻.", true],
    ["SO4", "sulfates", true],
    ["SO4", "S₂O₃²⁻ and SO₃²⁻", false],
    ["SO3", "SO₃²⁻", true],
    ["NO2", "a brown gas, NO₂, comes off", true],
    ["NO2", "the ion NO₂⁻", false],
    ["NO2", "nitrite", false],
    ["NO2-", "the ion NO₂⁻", true],
    ["NO2-", "NO₂ gas", false],
    ["CO2", "CO₂(g)", true],
    ["NH3", "[Cu(NH₃)₄]²⁺", true],
    ["NH3", "CH₃NH₃⁺", false],
    ["Cu2+", "Cu²⁺", true],
    ["Cu2+", "iron(II)", false],
    ["copper(II)", "copper(II) sulfate", true],
    ["copper(II)", "copper(I)", false],
    ["asdf", "as", false],
    ["precipitates", "a white precipitate", true],
  ])("%s in “%s”: %s", (question, text, held) => {
    expect(holds(text, termsOf(question))).toBe(held);
  });
});
