/** Sentences on sets of unknowns, for each case that can come up. */
import { describe, expect, test } from "vitest";
import { wordCount, wordOrder, wordSet, wordTerms } from "../../../src/components/choose/set-words.ts";
import { wordNearest } from "../../../src/components/conclude/certificate-words.ts";
import { whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

const none = { easy: 0, middling: 0, hard: 0, undecided: 0 };
const sets = { easy: [], middling: [], hard: [], undecided: [] };

describe("how many", () => {
  test.each([
    [
      { inAll: { sets: 12, decided: 6 }, looked: 12, found: { ...none, easy: 4, hard: 2, undecided: 6 } },
      "12 sets can be made up; the tests decide 6: 4 easy, 2 hard.",
    ],
    [
      { inAll: { sets: 1, decided: 0 }, looked: 1, found: { ...none, undecided: 1 } },
      "1 set can be made up; the tests decide none of them.",
    ],
    [
      { inAll: { sets: 0, decided: 0 }, looked: 0, found: none },
      "No set can be made up from this store for this paper.",
    ],
    [
      { inAll: { sets: 20349, decided: 11628 }, looked: 900, found: { ...none, middling: 900 } },
      "20\u00a0349 sets can be made up; the tests decide 11\u00a0628 of them on the usual sights. 900 were looked at; among them are 900 middling.",
    ],
    [
      { looked: 900, found: { ...none, middling: 300, undecided: 600 } },
      "There are more sets than can be looked at. Of 900 from all over the store the tests decide 300 on the usual sights (300 middling).",
    ],
    [{ looked: 0, found: none }, "Too much to look at even one set: give fewer samples or a smaller store."],
  ])("%j", (choice, words) => {
    expect(wordCount({ ...choice, sets, bordering: 0 })).toBe(words);
  });

  test.each([
    [1, " 1 of the decided sets looked at rests on the usual sights: one at the border would leave it open."],
    [3, " 3 of the decided sets looked at rest on the usual sights: one at the border would leave them open."],
  ])("%i that a sight at the border would leave open", (bordering, words) => {
    const found = { ...none, middling: 4 };
    const choice = { inAll: { sets: 4, decided: 4 }, looked: 4, found, sets };
    expect(wordCount({ ...choice, bordering })).toBe(wordCount({ ...choice, bordering: 0 }) + words);
  });
});

test.each([
  [{ observations: 0, assignments: 2 }, "Two other answers would give the same record."],
  [{ observations: 1, assignments: 1 }, "One other answer is one misread observation away."],
  [{ observations: 1, assignments: 12 }, "12 other answers are one misread observation away."],
  [{ observations: 3, assignments: 5 }, "It takes three misread observations to reach another answer."],
  [{ observations: Number.POSITIVE_INFINITY, assignments: 0 }, "The paper allows no other answer."],
])("the nearest other answer: %j", (nearest, words) => {
  expect(wordNearest(nearest)).toBe(words);
});

test.each([
  [{ rounds: [["P", "Q"]], together: [] }, "No sample has to wait for another."],
  [{ rounds: [["P"], ["Q"], ["R"]], together: [] }, "P can be told first, then Q, then R."],
  [{ rounds: [["P"]], together: ["Q", "R"] }, "P can be told first, then Q and R only together."],
  [{ rounds: [], together: ["P", "Q"] }, "Only all observations together tell P and Q."],
])("the order: %j", (order, words) => {
  expect(wordOrder(order)).toBe(words);
});

test("a set, and what holds for every set", () => {
  const tied = whitePrecipitates(["P", "Q"], { inAll: { anions: 1 } });
  expect(wordSet(tied, [0, 5])).toBe("P Zn^2+ Cl-, Q Al^3+ NO3-");
  expect(wordTerms(tied)).toEqual([
    "The paper says: one anion in all.",
    "P and Q are treated alike: which of them holds which salt makes no new set.",
  ]);
  const one = whitePrecipitates(["P"]);
  expect(wordTerms(one)).toEqual(["Nothing is said that ties the samples together."]);
});
