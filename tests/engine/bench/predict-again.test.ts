/** A solver that has predicted a part before: the same answer, nothing solved, and nobody can change what is remembered. */
import { expect, test } from "vitest";
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { createSolver, type Solver } from "../../../src/engine/equilibrium/solve.ts";
import { procedure } from "../../../src/engine/practical.ts";

const alkali = (drops: number) =>
  procedure.parse([
    {
      label: "a",
      title: "Alkali",
      tests: [
        { steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops }] },
        { steps: [{ add: "NaOH(aq)", until: "in excess" }] },
      ],
    },
  ]);
const zinc = { ions: saltOf("Zn^2+", "SO4^2-").ions, molPerDm3: 0.1 };

function counting(): { solve: Solver; solved: () => number } {
  const inner = createSolver();
  let solved = 0;
  return {
    solve: (...problem) => {
      solved++;
      return inner(...problem);
    },
    solved: () => solved,
  };
}

test("the same sample in the same part is solved once", () => {
  const { solve, solved } = counting();
  const first = predictSalt(zinc, alkali(5), solve);
  const once = solved();
  expect(once).toBeGreaterThan(0);
  expect(predictSalt(zinc, alkali(5), solve)).toEqual(first);
  expect(solved()).toBe(once);
});

test.each([
  ["another number of drops", zinc, 6],
  ["another strength", { ...zinc, molPerDm3: 0.2 }, 5],
  ["another salt", { ...zinc, ions: saltOf("Al^3+", "SO4^2-").ions }, 5],
] as const)("%s is not the same", (_, salt, drops) => {
  const { solve, solved } = counting();
  predictSalt(zinc, alkali(5), solve);
  const before = solved();
  const second = predictSalt(salt, alkali(drops), solve);
  expect(solved()).toBeGreaterThan(before);
  expect(second).toEqual(predictSalt(salt, alkali(drops), createSolver()));
});

test("readings added to an answer are not remembered", () => {
  const solve = createSolver();
  const first = predictSalt(zinc, alkali(5), solve);
  const asked = structuredClone(first);
  first.get("a(i)")?.readings.push({ none: true });
  expect(predictSalt(zinc, alkali(5), solve)).toEqual(asked);
});
