/** A solver that remembers says what the solver itself says, solves nothing twice, and keeps its answers from those of another solver. */
import { expect, test } from "vitest";
import { remembering } from "../../../src/engine/equilibrium/remembering.ts";
import {
  createSolver,
  type EquilibriumResult,
  type Solver,
  type Start,
} from "../../../src/engine/equilibrium/solve.ts";
import { compileDatabase } from "../../../src/engine/equilibrium/species.ts";

const plain = createSolver();

function solved(solve: Solver, hydroxide: number, start?: Start): EquilibriumResult {
  const totals = { "Zn^2+": 1e-4, "NO3-": 2e-4, "Na+": hydroxide, "H+": -hydroxide };
  const found = solve({ totals, waterKg: 0.001 }, {}, start);
  if (!found.converged) throw new Error(found.reason);
  return found;
}

test("the second time round there are the same answers and nothing is solved", () => {
  let count = 0;
  const solve = remembering((...asked) => {
    count++;
    return plain(...asked);
  });
  const course = () => {
    const first = solved(solve, 1e-4);
    return [first, solved(solve, 2e-4, first.start), solved(solve, 3e-4, first.start)];
  };
  const once = course();
  expect(course()).toEqual(once);
  expect(count).toBe(3);
  const [first, ...others] = once;
  const again = solved(plain, 1e-4);
  expect([first, ...others].map(({ pH }) => pH)).toEqual(
    [again, solved(plain, 2e-4, again.start), solved(plain, 3e-4, again.start)].map(({ pH }) => pH),
  );
});

test("another solver that goes on from the same starting point finds its own answers", () => {
  const database = compileDatabase();
  const harder = database.phases.map((phase) => ({ ...phase, logK: phase.logK - 1 }));
  const other = remembering(createSolver({ ...database, phases: harder }));
  const solve = remembering(plain);
  const { start } = solved(solve, 1e-4);
  const own = solved(solve, 2e-4, start);
  expect(solved(other, 2e-4, start).pH).not.toBeCloseTo(own.pH, 2);
});
