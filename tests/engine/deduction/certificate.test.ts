/** What decides a record, against leaving out each line and writing down every assignment. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { certificate } from "../../../src/engine/deduction/certificate.ts";
import type { Place } from "../../../src/engine/deduction/conclusion.ts";
import { allowed, choose, couldGive, placesOf, saltsLeft, without } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";

/** Observations that another assignment the paper allows would have to clash with, one number for each of the others. */
function distances(table: PredictionTable, record: TableRecord, answer: number[]): number[] {
  return allowed(table, {})
    .filter((way) => way.some((salt, s) => salt !== answer[s]))
    .map((way) => placesOf(table, record).filter((place) => !agrees(table, record, way, place)).length);
}

function agrees({ cells, samples, sets }: PredictionTable, record: TableRecord, way: number[], place: Place): boolean {
  const s = samples.findIndex(({ label }) => label === place.sample);
  const c = cells.findIndex(({ id }) => id === place.cell);
  const set = sets[samples[s].set];
  return couldGive(set.accepts[set.salts.indexOf(way[s])][c], cells[c], record[place.sample][place.cell]);
}

test("how near another answer comes", () => {
  const seen = { one: 0, more: 0, none: 0, tied: 0 };
  fc.assert(
    fc.property(tableWithRecord, ({ table, record }) => {
      const ways = allowed(table, record);
      const { nearest } = certificate(table, record);
      expect(nearest !== undefined).toBe(ways.length === 1);
      if (!nearest) return;
      const others = distances(table, record, ways[0]);
      const least = Math.min(...others);
      expect(nearest).toEqual({
        observations: least,
        assignments: others.filter((distance) => distance === least).length,
      });
      seen[least === 1 ? "one" : others.length > 0 ? "more" : "none"]++;
      if (table.samples.length > 1 && least > 1 && others.length > 0) seen.tied++;
      // As many observations as that must be repeated and found otherwise, and no fewer, before anything else fits.
      const places = placesOf(table, record);
      const fewest = places.findIndex((_, size) =>
        choose(places, size).some((set) => allowed(table, without(record, set)).length > 1),
      );
      if (others.length > 0) expect(fewest < 0 ? places.length : fewest).toBe(least);
    }),
    { seed: 516, numRuns: 3000 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(10);
});

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
