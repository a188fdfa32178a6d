/** The solver alone, and the linear system by which its time can be held against another machine's. */
import { solveLinear } from "../../src/engine/equilibrium/linear-system.ts";
import { createSolver } from "../../src/engine/index.ts";
import {
  conditionsOf,
  equilibriumReference,
  referenceDatabase,
  totalsOf,
} from "../../tests/verification/equilibrium.ts";
import { median, quantile, rounded, say, times } from "./timing.ts";

const ROUNDS = 101;
const LINEAR_ROUNDS = 201;
/** Linear systems solved between two looks at the clock, which is too coarse for one. */
const LINEAR_BATCH = 500;
const LINEAR_SIZE = 12;

export function benchEquilibrium() {
  say("equilibrium: 60 mixtures, cold");
  const solve = createSolver(referenceDatabase());
  const calls = equilibriumReference.mixtures.map((mixture) => {
    const problem = { totals: totalsOf(mixture), waterKg: 1 };
    const conditions = conditionsOf(mixture);
    return () => {
      const found = solve(problem, conditions);
      if (!found.converged) throw new Error(`mixture ${mixture.id}: ${found.reason}`);
    };
  });
  const each = times(ROUNDS, calls);
  const ratio = median(each) / linearSolveMs();
  return {
    medianMs: rounded(median(each)),
    p99Ms: rounded(quantile(each, 0.99)),
    ratioToLinearSolve: rounded(ratio),
  };
}

/** Median time of one fixed dense system, ms; making a fresh copy of it, which the solver overwrites, is part of the time. */
export function linearSolveMs(): number {
  const n = LINEAR_SIZE;
  // Full, well away from singular, and such that rows must be exchanged.
  const matrix = Float64Array.from({ length: n * n }, (_, at) => {
    const [i, j] = [Math.floor(at / n), at % n];
    return 1 / (1 + i + j) + (i + j === n - 1 ? n : 0);
  });
  const right = Float64Array.from({ length: n }, (_, i) => i + 1);
  const A = new Float64Array(n * n);
  const b = new Float64Array(n);
  const batch = () => {
    for (let count = 0; count < LINEAR_BATCH; count++) {
      A.set(matrix);
      b.set(right);
      if (!solveLinear(A, b, n, n)) throw new Error("the fixed linear system was called singular");
    }
  };
  return median(times(LINEAR_ROUNDS, [batch])) / LINEAR_BATCH;
}
