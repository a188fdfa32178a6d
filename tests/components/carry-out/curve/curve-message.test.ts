/** What the guard between a page and its worker lets through. */
import { describe, expect, test } from "vitest";
import { answer, type CurveQuestion, question } from "../../../../src/components/carry-out/curve/curve-message.ts";
import { changedCurve } from "../../../../src/engine/bench/changed-curve.ts";
import { createSolver } from "../../../../src/engine/equilibrium/solve.ts";
import { procedure } from "../../../../src/engine/practical.ts";

const [part] = procedure.parse([
  {
    label: "a",
    title: "Every kind of step",
    samples: ["S"],
    from: "solution",
    tests: [
      { label: "i", says: "As the paper words it.", steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }] },
      { steps: [{ warm: true }, { testGas: "damp red litmus" }, { boil: "1 min" }, { filter: "residue" }] },
    ],
  },
]);

const asked: CurveQuestion = {
  id: 3,
  source: { sample: "S", given: "solution", part, test: 0 },
  change: { salt: "AlCl3", molPerDm3: 0.1, reagentMolPerDm3: 1 },
};

const refuses = (input: unknown): boolean => !question.safeParse(input).success;

test("a question passes as it is, copied as a worker gets it", () => {
  expect(question.parse(structuredClone(asked))).toEqual(asked);
});

describe("a question is refused", () => {
  const change = (changed: object) => ({ ...asked, change: { ...asked.change, ...changed } });
  const source = (changed: object) => ({ ...asked, source: { ...asked.source, ...changed } });
  test.each([
    ["nothing", undefined],
    ["text", "AlCl3"],
    ["no number", { ...asked, id: undefined }],
    ["a broken number", { ...asked, id: 1.5 }],
    ["an entry nobody knows", { ...asked, hurry: true }],
    ["a strength of nothing", change({ molPerDm3: 0 })],
    ["a negative strength", change({ reagentMolPerDm3: -1 })],
    ["no number for a strength", change({ molPerDm3: Number.NaN })],
    ["a strength in text", change({ molPerDm3: "0.1" })],
    ["stronger than any bottle", change({ molPerDm3: 21 })],
    ["a salt without end", change({ salt: "A".repeat(41) })],
    ["a form nobody gives out", source({ given: "gas" })],
    ["a test the part has not", source({ test: 2 })],
    ["a step that is none", source({ part: { ...part, tests: [{ steps: ["take"] }] } })],
  ])("%s", (_, input) => expect(refuses(input)).toBe(true));
});

describe("an answer", () => {
  test("passes with a curve of the engine's", () => {
    const reply = { id: 3, answer: changedCurve(asked.source, asked.change, createSolver()) };
    expect(reply.answer).toHaveProperty("curve");
    expect(answer.parse(structuredClone(reply))).toEqual(reply);
  });

  test("passes with a reason why there is none", () => {
    const reply = { id: 3, answer: { refused: "it does not dissolve" } };
    expect(answer.parse(reply)).toEqual(reply);
  });

  test.each([
    ["neither", { id: 3, answer: {} }],
    ["a curve without points", { id: 3, answer: { curve: { x: [] } } }],
    ["no number", { answer: { refused: "it does not dissolve" } }],
  ])("is refused with %s", (_, input) => expect(answer.safeParse(input).success).toBe(false));
});
