/** What decides a record, against leaving out each line and writing down every assignment. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { certificate } from "../../../src/engine/deduction/certificate.ts";
import { allowed, placesOf, saltsLeft } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";

test("lines that cannot be spared, what they would leave, and a proof where all is decided", () => {
  let needed = 0;
  let decided = 0;
  fc.assert(
    fc.property(tableWithRecord, ({ table, record }) => {
      const ways = allowed(table, record);
      if (ways.length === 0) return;
      const found = certificate(table, record);
      const left = saltsLeft(table, record);
      expect(found.proof !== undefined).toBe(ways.length === 1);
      if (found.proof) {
        decided++;
        for (const place of found.proof.places) expect(placesOf(table, record)).toContainEqual(place);
      }
      const expected = table.cells.flatMap(({ id }) => {
        const fewer = Object.fromEntries(
          Object.entries(record).map(([label, row]) => [
            label,
            Object.fromEntries(Object.entries(row).filter(([cell]) => cell !== id)),
          ]),
        );
        const then = Object.entries(saltsLeft(table, fewer)).filter(
          ([label, salts]) => salts.length > left[label].length,
        );
        return then.length > 0 ? [{ cell: id, left: Object.fromEntries(then) }] : [];
      });
      expect(found.needed).toEqual(expected);
      needed += expected.length;
    }),
    { seed: 515, numRuns: 1000 },
  );
  expect(needed).toBeGreaterThan(100);
  expect(decided).toBeGreaterThan(30);
});
