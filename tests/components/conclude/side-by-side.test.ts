/** The samples side by side, over the white precipitates (record ids in white-precipitates.ts) and over random tables. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { sideBySide } from "../../../src/components/conclude/side-by-side.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { tableWithRecord } from "../../engine/deduction/random-table.ts";
import { recordOf, whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

const compared = (samples: string[], record: Parameters<typeof recordOf>[0]) => {
  const conclusion = deduce(whitePrecipitates(samples), recordOf(record));
  return sideBySide(conclusion.samples, conclusion.assignments);
};

test("an ion has a row while some sample may hold it, and is named below when none can", () => {
  // Zinc's hydroxide dissolves in both alkalis (Q041, Q043), magnesium's in neither (Q045, Q047); aluminium's and lead's only in the first.
  const P = { "a(ii)": "dissolves", "b(ii)": "dissolves" } as const;
  const Q = { "a(ii)": "dissolves", c: "white" } as const;
  expect(compared(["P", "Q"], { P, Q })).toEqual({
    rows: {
      cation: [
        { ion: "Zn^2+", standings: ["certain", "possible"] },
        { ion: "Al^3+", standings: ["out", "possible"] },
      ],
      anion: [
        { ion: "Cl-", standings: ["possible", "certain"] },
        { ion: "SO4^2-", standings: ["possible", "out"] },
        { ion: "NO3-", standings: ["possible", "out"] },
      ],
    },
    // Lead chloride hardly dissolves, so no solution is made of it (common practice, no source).
    outOfAll: ["Pb^2+", "Ca^2+", "Mg^2+"],
  });
});

test("there is nothing to compare in one sample, nor in a record that fits nothing", () => {
  expect(compared(["P"], { P: { c: "white" } })).toBeUndefined();
  expect(compared(["P", "Q"], { P: { c: "yellow" }, Q: { c: "white" } })).toBeUndefined();
});

test("over random records every ion of the paper stands there once for each sample, as it was concluded", () => {
  let met = 0;
  fc.assert(
    fc.property(tableWithRecord, ({ table, record }) => {
      const { samples, assignments } = deduce(table, record);
      const found = sideBySide(samples, assignments);
      if (!found) return;
      met++;
      const rows = [...found.rows.cation, ...found.rows.anion];
      expect([...rows.map(({ ion }) => ion), ...found.outOfAll].sort()).toEqual(
        [...table.paper.cations, ...table.paper.anions].sort(),
      );
      samples.forEach(({ ions }, s) => {
        const called = { certain: "certain", possible: "possible", impossible: "out" };
        for (const { ion, standing } of ions) {
          const row = rows.find((one) => one.ion === ion);
          expect(row?.standings[s] ?? "out").toBe(called[standing]);
        }
      });
      for (const { standings } of rows) expect(standings.some((standing) => standing !== "out")).toBe(true);
    }),
    { seed: 14, numRuns: 800 },
  );
  expect(met).toBeGreaterThan(100);
});
