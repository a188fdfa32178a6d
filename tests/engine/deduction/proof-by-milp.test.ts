/**
 * That no smaller set of observations proves an ion, by a general-purpose solver of integer programmes (HiGHS).
 */
import fc from "fast-check";
import load from "highs";
import { expect, test } from "vitest";
import { proofOfIon } from "../../../src/engine/deduction/proof.ts";
import { allowed } from "./brute-force.ts";
import { clashesWithout, coverModel, leastCover } from "./least-cover.ts";
import { tableWithRecord } from "./random-table.ts";

test("on 200 and more proofs", async () => {
  const highs = await load();
  let confirmed = 0;
  fc.assert(
    fc.property(tableWithRecord, fc.nat(2), fc.nat(3), ({ table, record }, which, pick) => {
      const s = which % table.samples.length;
      const held = new Set(allowed(table, record).map((way) => table.salts[way[s]].cations.join()));
      if (held.size !== 1) return;
      const [cations] = [...held].map((text) => text.split(","));
      const ion = cations[pick % cations.length];
      const proof = proofOfIon(table, record, s, "cations", ion);
      const model = coverModel(clashesWithout(table, record, s, "cations", ion));
      expect(proof?.places.length).toBe(model === undefined ? 0 : leastCover(highs, model));
      confirmed++;
    }),
    { numRuns: 1500, seed: 77 },
  );
  expect(confirmed).toBeGreaterThanOrEqual(200);
});
