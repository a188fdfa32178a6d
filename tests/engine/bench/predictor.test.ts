/** A predictor that has met a part before: the same answer, and nothing solved. */
import { expect, test } from "vitest";
import { borderline } from "../../../src/engine/bench/borderline.ts";
import { predictSalt, predictSights } from "../../../src/engine/bench/predict.ts";
import { createPredictor } from "../../../src/engine/bench/predictor.ts";
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
const open = { given: "solution", concentration: { molPerDm3: 0.1, about: true } } as const;

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

test("the same sample in the same part is solved once, its borders too", () => {
  const { solve, solved } = counting();
  const { predict, border } = createPredictor(solve);
  const first = predict(zinc, alkali(5));
  const borders = border(saltOf("Zn^2+", "SO4^2-"), open, alkali(5));
  const once = solved();
  expect(once).toBeGreaterThan(0);
  expect(predict(zinc, alkali(5))).toEqual(first);
  expect(border(saltOf("Zn^2+", "SO4^2-"), open, alkali(5))).toEqual(borders);
  expect(solved()).toBe(once);
});

test.each([
  ["another number of drops", zinc, 6],
  ["another strength", { ...zinc, molPerDm3: 0.2 }, 5],
  ["another salt", { ...zinc, ions: saltOf("Al^3+", "SO4^2-").ions }, 5],
] as const)("%s is not the same", (_, salt, drops) => {
  const { solve, solved } = counting();
  const { predict } = createPredictor(solve);
  predict(zinc, alkali(5));
  const before = solved();
  const second = predict(salt, alkali(drops));
  expect(solved()).toBeGreaterThan(before);
  expect(second).toEqual(predictSights(salt, alkali(drops), createSolver()));
});

test("what is remembered is what is worked out anew", () => {
  const { predict, border } = createPredictor(createSolver());
  for (let again = 0; again < 2; again++) {
    expect(predict(zinc, alkali(5))).toEqual(predictSights(zinc, alkali(5), createSolver()));
    expect(border(saltOf("Zn^2+", "SO4^2-"), open, alkali(5))).toEqual(
      borderline(saltOf("Zn^2+", "SO4^2-"), open, alkali(5), createSolver()),
    );
  }
});

test("equations are written where they are asked for, and nothing else hangs on them", () => {
  const equationsOf = (cells: ReturnType<typeof predictSalt>) =>
    [...cells.values()].flatMap(({ events }) => events.flatMap(({ equation }) => equation ?? []));
  const written = predictSalt(zinc, alkali(5), createSolver());
  const plain = predictSights(zinc, alkali(5), createSolver());
  expect(equationsOf(written)).not.toEqual([]);
  expect(equationsOf(plain)).toEqual([]);
  const without = (cells: typeof written) =>
    [...cells].map(([id, { events, ...rest }]) => [
      id,
      rest,
      events.map((event) => ({ ...event, equation: undefined })),
    ]);
  expect(without(plain)).toEqual(without(written));
  expect(createPredictor(createSolver(), undefined, predictSalt).predict(zinc, alkali(5))).toEqual(written);
});
