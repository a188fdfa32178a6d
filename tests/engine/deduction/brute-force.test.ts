import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deduce, undecided } from "../../../src/engine/deduction/deduce.ts";
import { allowed, easeOfSet, saltsLeft, smallestRepeats, without } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";

const RUNS = { numRuns: 2500, seed: 20260 };

describe("deduce agrees with writing down every assignment", () => {
  test("the count, the salts left and the standing of every ion", () => {
    const seen = { severalIons: 0, same: 0, contains: 0 };
    fc.assert(
      fc.property(tableWithRecord, ({ table, record }) => {
        const conclusion = deduce(table, record);
        const ways = allowed(table, record);
        expect(conclusion.assignments).toBe(ways.length);
        expect(Object.fromEntries(conclusion.samples.map(({ sample, salts }) => [sample, salts]))).toEqual(
          saltsLeft(table, record),
        );
        expect(undecided(table, record)).toEqual(saltsLeft(table, record));
        if (ways.some((way) => way.some((salt) => table.salts[salt].cations.length > 1))) seen.severalIons++;
        for (const kind of ["same", "contains"] as const) {
          const without = { ...table, paper: { ...table.paper, [kind]: [] } };
          if (ways.length > 0 && allowed(without, record).length > ways.length) seen[kind]++;
        }
        conclusion.samples.forEach(({ ions }, s) => {
          for (const { ion, kind, standing, reasons } of ions) {
            const holding = ways.filter((way) => table.salts[way[s]][`${kind}s`].includes(ion)).length;
            const expected = holding === 0 ? "impossible" : holding === ways.length ? "certain" : "possible";
            expect(`${ion} ${standing}`).toBe(`${ion} ${expected}`);
            expect(reasons.length > 0).toBe(standing === "impossible");
          }
        });
      }),
      RUNS,
    );
    // Each must have made a difference often enough.
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(30);
  });

  test("the smallest sets of observations to repeat, where each leads, and papers that contradict themselves", () => {
    const seen = { fits: 0, repeats: 0, several: 0, ranked: 0, contradictions: 0 };
    fc.assert(
      fc.property(tableWithRecord, ({ table, record }) => {
        const { assignments, repeats, moreRepeats, contradiction } = deduce(table, record);
        expect(contradiction !== undefined).toBe(allowed(table, {}).length === 0);
        if (assignments > 0 || contradiction) {
          expect(repeats).toEqual([]);
          seen[contradiction ? "contradictions" : "fits"]++;
          return;
        }
        const inOrder = smallestRepeats(table, record).map((set) => ({ set, ease: easeOfSet(table, record, set) }));
        // Sorting keeps the order of the paper among equals.
        const expected = inOrder.toSorted((a, b) => a.ease - b.ease).map(({ set }) => set);
        const places = repeats.map((repeat) => repeat.places.map(({ sample, cell }) => ({ sample, cell })));
        expect(places).toEqual(expected.slice(0, 24));
        expect(moreRepeats ?? false).toBe(expected.length > 24);
        // What is to be looked for is what some salt it leads to shows, and not what was recorded.
        for (const repeat of repeats) {
          for (const { sample, cell, lookFor } of repeat.places) {
            const s = table.samples.findIndex(({ label }) => label === sample);
            const c = table.cells.findIndex(({ id }) => id === cell);
            const set = table.sets[table.samples[s].set];
            const shown = repeat.leadsTo[sample].map((salt) => set.main[set.salts.indexOf(salt)][c]);
            expect(lookFor.length).toBeGreaterThan(0);
            for (const reading of lookFor) {
              expect(shown).toContain(reading);
              expect(table.cells[c].agrees[record[sample][cell]] & (1 << reading)).toBe(0);
            }
          }
        }
        for (const { places, leadsTo } of repeats) expect(leadsTo).toEqual(saltsLeft(table, without(record, places)));
        seen.repeats++;
        if (expected.length > 1 && expected[0].length > 1) seen.several++;
        if (inOrder.some(({ ease }, i) => ease < inOrder[0].ease && i > 0)) seen.ranked++;
      }),
      RUNS,
    );
    // The tables must reach every branch, or the agreement above says little.
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(30);
  });

  test("every reason against an ion is true", () => {
    fc.assert(
      fc.property(tableWithRecord, ({ table, record }) => {
        const { samples } = deduce(table, record);
        samples.forEach(({ sample, ions }, s) => {
          const set = table.sets[table.samples[s].set];
          const silent = { ...table.paper, inAll: {}, share: [], differ: [], same: [], contains: [] };
          const alone = allowed({ ...table, paper: silent }, record);
          for (const { ion, kind, reasons } of ions) {
            // Blaming the paper is fair only when the ion would stand without its statements.
            const stands = alone.some((way) => table.salts[way[s]][`${kind}s`].includes(ion));
            expect(reasons.some(({ by }) => by === "paper" || by === "not together")).toBe(
              stands && reasons.length > 0,
            );
            const clash = reasons.find((reason) => reason.by === "not together");
            if (clash) {
              expect(allowed(table, record)).toEqual([]);
              expect(alone).not.toEqual([]);
              // Exactly the samples that could mend it alone are named.
              const mending = table.samples.flatMap(({ label }) => {
                const blank = { ...record, [label]: {} };
                return allowed(table, blank).length > 0 ? [label] : [];
              });
              expect(clash.samples).toEqual(mending);
            }
            if (reasons.some(({ by }) => by === "another sample")) expect(alone).toEqual([]);
          }
          for (const reason of ions.flatMap(({ reasons }) => reasons)) {
            if (reason.by !== "observation") continue;
            const c = table.cells.findIndex(({ id }) => id === reason.cell);
            const mayShow = set.accepts[set.salts.indexOf(reason.salt)][c];
            const written = table.cells[c].agrees[record[sample][reason.cell]];
            expect(mayShow & written).toBe(0);
            expect(reason.wouldShow).toBe(set.main[set.salts.indexOf(reason.salt)][c]);
          }
        });
      }),
      RUNS,
    );
  });
});
