/** The fewest observations that prove an ion, against trying every set of observations, smallest first. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import type { Place } from "../../../src/engine/deduction/conclusion.ts";
import { proofOfAnswers, proofOfIon } from "../../../src/engine/deduction/proof.ts";
import { allowed, choose, placesOf } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";

const RUNS = { numRuns: 4000, seed: 4141 };

const only = (record: TableRecord, places: readonly Place[]): TableRecord => {
  const kept: TableRecord = {};
  for (const { sample, cell } of places) kept[sample] = { ...kept[sample], [cell]: record[sample][cell] };
  return kept;
};

/** All smallest sets of recorded places that leave only assignments of which `isTrue` is so. */
function smallestProofs(table: PredictionTable, record: TableRecord, isTrue: (way: number[]) => boolean): Place[][] {
  const places = placesOf(table, record);
  for (let size = 0; size <= places.length; size++) {
    const proofs = choose(places, size).filter((set) => allowed(table, only(record, set)).every(isTrue));
    if (proofs.length > 0) return proofs;
  }
  return [];
}

const silent = (table: PredictionTable): PredictionTable => ({
  ...table,
  paper: { ...table.paper, inAll: {}, share: [], differ: [], same: [], contains: [] },
});

test("an ion is proved by as few observations as brute force needs, and it is said whether others would do", () => {
  const seen = { proved: 0, ofSeveral: 0, alone: 0, byStatements: 0, withoutObservation: 0 };
  fc.assert(
    fc.property(tableWithRecord, fc.nat(2), fc.nat(6), ({ table, record }, which, pick) => {
      const s = which % table.samples.length;
      const ways = allowed(table, record);
      const ions = (["cations", "anions"] as const).flatMap((kind) =>
        [...new Set(table.salts.flatMap((salt) => salt[kind]))].map((ion) => ({ kind, ion })),
      );
      const { kind, ion } = ions[pick % ions.length];
      const isTrue = (way: number[]) => table.salts[way[s]][kind].includes(ion);
      const proof = proofOfIon(table, record, s, kind, ion);
      const expected = smallestProofs(table, record, isTrue);
      // From a record that fits nothing nothing is proved.
      expect(proof !== undefined).toBe(ways.length > 0 && ways.every(isTrue));
      if (!proof) return;
      expect(expected).toContainEqual(proof.places);
      expect(proof.several).toBe(expected.length > 1);
      // The statements named must be needed: without any, these observations prove nothing, or none is named.
      const alone = allowed(silent(table), only(record, proof.places)).every(isTrue);
      expect(proof.statement === undefined).toBe(alone);
      seen.proved++;
      if (proof.several) seen.ofSeveral++;
      if (proof.statement) seen.byStatements++;
      if (proof.places.length === 0) seen.withoutObservation++;
      if (proof.places.length > 0 && !proof.several) seen.alone++;
    }),
    RUNS,
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(20);
});

test("all answers together are proved by as few observations as brute force needs", () => {
  let proved = 0;
  fc.assert(
    fc.property(tableWithRecord, ({ table, record }) => {
      const [answers, ...others] = allowed(table, record);
      if (!answers) return;
      const proof = proofOfAnswers(table, record, answers);
      expect(proof !== undefined).toBe(others.length === 0);
      if (!proof) return;
      const expected = smallestProofs(table, record, (way) => way.join() === answers.join());
      expect(expected).toContainEqual(proof.places);
      expect(proof.several).toBe(expected.length > 1);
      proved++;
    }),
    RUNS,
  );
  expect(proved).toBeGreaterThan(50);
});
