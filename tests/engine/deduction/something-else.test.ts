/** A sight that no allowed salt shows, recorded as such: over the white precipitates (record ids in white-precipitates.ts) and random tables. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { nextTests } from "../../../src/engine/deduction/next-test.ts";
import { SOMETHING_ELSE } from "../../../src/engine/deduction/something-else.ts";
import { allowed, placesOf, saltsLeft, smallestRepeats } from "./brute-force.ts";
import { tableWithRecord } from "./random-table.ts";
import { readingOf, recordOf, saltNamed, whitePrecipitates } from "./white-precipitates.ts";

const ZINC_CHLORIDE = { "a(ii)": "dissolves", "b(ii)": "dissolves", c: "white" } as const;

describe("something else", () => {
  const record = recordOf({ P: ZINC_CHLORIDE });
  record.P["a(i)"] = SOMETHING_ELSE;

  test("agrees with no salt, and is what to repeat: all that is left shows one sight there (Q040)", () => {
    const { assignments, repeats } = deduce(whitePrecipitates(["P"]), record);
    expect(assignments).toBe(0);
    expect(repeats).toEqual([
      {
        places: [{ sample: "P", cell: "a(i)", lookFor: [readingOf("white")] }],
        leadsTo: { P: [saltNamed("Zn^2+", "Cl-")] },
      },
    ]);
  });

  test("stands in every smallest set when other observations are wrong too, and does not change which of these comes first", () => {
    const table = whitePrecipitates(["P"]);
    // Excess ammonia dissolves zinc's hydroxide alone (Q043), potassium iodide finds lead (Q196): one of them is wrong.
    const odd = recordOf({ P: { ...ZINC_CHLORIDE, e: "yellow" } });
    const setsOf = ({ repeats }: ReturnType<typeof deduce>) =>
      repeats.map(({ places }) => places.map(({ cell }) => cell));
    const without = setsOf(deduce(table, odd));
    expect(without.length).toBeGreaterThan(0);
    odd.P["a(i)"] = SOMETHING_ELSE;
    expect(setsOf(deduce(table, odd))).toEqual(without.map((cells) => ["a(i)", ...cells]));
  });

  test("a salt without a prediction there is not ruled out by it", () => {
    const table = whitePrecipitates(["P"]);
    const [{ salts, accepts, main }] = table.sets;
    const row = salts.indexOf(saltNamed("Zn^2+", "Cl-"));
    accepts[row][0] = 0;
    main[row][0] = -1;
    const { samples, repeats } = deduce(table, record);
    expect(samples[0].salts).toEqual([saltNamed("Zn^2+", "Cl-")]);
    expect(repeats).toEqual([]);
  });

  test("counts as done, so that the test is not proposed next", () => {
    const seen = recordOf({ P: {} });
    seen.P.c = SOMETHING_ELSE;
    const table = whitePrecipitates(["P"]);
    for (const row of table.sets[0].accepts) row[4] = 0;
    const cells = nextTests(table, seen).map(({ cell }) => cell);
    expect(cells).toContain("a(ii)");
    expect(cells).not.toContain("c");
  });

  test("no other number out of the list is taken", () => {
    const table = whitePrecipitates(["P"]);
    for (const reading of [-2, 6, 9, 0.5]) {
      expect(() => deduce(table, { P: { c: reading } })).toThrow(
        `Record of P at c: found reading ${reading}, expected 0 to 5, or -1 for something else.`,
      );
    }
  });
});

test("in random records with one such place or two, against writing down every assignment", () => {
  const seen = { fits: 0, repeats: 0 };
  fc.assert(
    fc.property(tableWithRecord, fc.nat(), fc.nat(), ({ table, record }, ...picks) => {
      const places = placesOf(table, record);
      if (places.length === 0 || allowed(table, {}).length === 0) return;
      for (const pick of picks) {
        const { sample, cell } = places[pick % places.length];
        record[sample][cell] = SOMETHING_ELSE;
      }
      const { assignments, samples, repeats } = deduce(table, record);
      expect(assignments).toBe(allowed(table, record).length);
      expect(Object.fromEntries(samples.map(({ sample, salts }) => [sample, salts]))).toEqual(saltsLeft(table, record));
      seen[assignments > 0 ? "fits" : "repeats"]++;
      if (assignments > 0) return;
      const sets = repeats.map((repeat) => repeat.places.map(({ sample, cell }) => ({ sample, cell })));
      const expected = smallestRepeats(table, record);
      expect(sets).toHaveLength(Math.min(24, expected.length));
      for (const set of sets) expect(expected).toContainEqual(set);
    }),
    { seed: 15, numRuns: 400 },
  );
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(10);
});
