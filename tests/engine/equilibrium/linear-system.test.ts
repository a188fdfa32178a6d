import fc from "fast-check";
import { expect, test } from "vitest";
import { solveLinear } from "../../../src/engine/equilibrium/linear-system.ts";

const entry = fc.double({ min: -1, max: 1, noNaN: true });
/** A square system with rows of very different size, as mass balances of 1 mol and of 1e-9 mol are. */
const systems = fc.integer({ min: 1, max: 12 }).chain((n) =>
  fc.record({
    n: fc.constant(n),
    rows: fc.array(fc.array(entry, { minLength: n, maxLength: n }), { minLength: n, maxLength: n }),
    right: fc.array(entry, { minLength: n, maxLength: n }),
    scale: fc.array(fc.integer({ min: -30, max: 30 }), { minLength: n, maxLength: n }),
    spare: fc.integer({ min: 0, max: 3 }),
  }),
);

test("solves random systems to rounding, rows of any size, any stride", () => {
  fc.assert(
    fc.property(systems, ({ n, rows, right, scale, spare }) => {
      const stride = n + spare;
      // A diagonal heavier than its row keeps the system well away from singular (Levy-Desplanques theorem).
      const value = (i: number, j: number) => (rows[i][j] + (i === j ? n + 1 : 0)) * 10 ** scale[i];
      const A = new Float64Array(n * stride).fill(7);
      const x = Float64Array.from(right, (one, i) => one * 10 ** scale[i]);
      const given = Float64Array.from(x);
      for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) A[i * stride + j] = value(i, j);
      expect(solveLinear(A, x, n, stride)).toBe(true);
      for (let i = 0; i < n; i++) {
        let sum = 0;
        for (let j = 0; j < n; j++) sum += value(i, j) * x[j];
        const off = Math.abs(sum - given[i]) / 10 ** scale[i];
        if (!(off < 1e-12)) expect.fail(`row ${i} off by ${off}`);
      }
    }),
    { numRuns: 500, seed: 5 },
  );
});

// By hand: 2x + y = 5, x - y = 1 gives x = 2, y = 1; a zero on the diagonal needs a change of rows: y = 3, x = 4.
test.each([
  { A: [2, 1, 1, -1], b: [5, 1], x: [2, 1] },
  { A: [0, 1, 1, 0], b: [3, 4], x: [4, 3] },
])("$A with $b gives $x", ({ A, b, x }) => {
  const found = Float64Array.from(b);
  expect(solveLinear(Float64Array.from(A), found, 2, 2)).toBe(true);
  expect([...found]).toEqual(x);
});

test.each([
  ["a row twice", [1, 2, 2, 4]],
  ["an empty row", [1, 2, 0, 0]],
  ["no numbers", [Number.NaN, 1, 1, 1]],
])("says no to %s", (_, A) => {
  expect(solveLinear(Float64Array.from(A), Float64Array.from([1, 1]), 2, 2)).toBe(false);
});
