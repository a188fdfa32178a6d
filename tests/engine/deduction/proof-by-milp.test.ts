/**
 * That no smaller set of observations proves an ion, by a general-purpose solver of integer programmes (HiGHS): as few observations as
 * possible, of which every assignment without the ion, all written down, clashes with one.
 */
import fc from "fast-check";
import load from "highs";
import { expect, test } from "vitest";
import { proofOfIon } from "../../../src/engine/deduction/proof.ts";
import { allowed, placesOf } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";

/** Least number of variables among 0 and 1 that covers every row. */
function leastCover(highs: Awaited<ReturnType<typeof load>>, rows: readonly number[][]): number {
  const used = [...new Set(rows.flat())];
  if (used.length === 0) return 0;
  const model = [
    "Minimize",
    ` obj: ${used.map((x) => `x${x}`).join(" + ")}`,
    "Subject To",
    ...rows.map((row, r) => ` r${r}: ${row.map((x) => `x${x}`).join(" + ")} >= 1`),
    "Binary",
    ` ${used.map((x) => `x${x}`).join(" ")}`,
    "End",
  ].join("\n");
  const { Status, ObjectiveValue } = highs.solve(model);
  expect(Status).toBe("Optimal");
  return Math.round(ObjectiveValue);
}

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
      const places = placesOf(table, record);
      const clashes = allowed(table, {})
        .filter((way) => !table.salts[way[s]].cations.includes(ion))
        .map((way) =>
          places.flatMap(({ sample, cell }, p) => {
            const at = table.samples.findIndex(({ label }) => label === sample);
            const set = table.sets[table.samples[at].set];
            const c = table.cells.findIndex(({ id }) => id === cell);
            const mayShow = set.accepts[set.salts.indexOf(way[at])][c];
            return mayShow === 0 || mayShow & table.cells[c].agrees[record[sample][cell]] ? [] : [p];
          }),
        );
      expect(proof?.places.length).toBe(leastCover(highs, clashes));
      confirmed++;
    }),
    { numRuns: 1500, seed: 77 },
  );
  expect(confirmed).toBeGreaterThanOrEqual(200);
});
