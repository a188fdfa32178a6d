/** Why a mark of the evidence stands where it does, over the white precipitates (record ids in white-precipitates.ts). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { testsOf } from "../../../src/components/conclude/evidence.ts";
import { reasonOfMark } from "../../../src/components/conclude/mark-reason.ts";
import { tableWithRecord } from "../../engine/deduction/random-table.ts";
import { readingOf, recordOf, saltNamed, whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

const SEEN = { "a(i)": "white", "b(ii)": "remains", c: "white", d: "none" } as const;

describe("the reason behind a mark", () => {
  const of = { table: whitePrecipitates(["P"]), names: {}, record: recordOf({ P: SEEN }) };

  test.each([
    // Zinc hydroxide dissolves in excess ammonia (Q043), aluminium's does not (Q004).
    ["Zn^2+", "b(ii)", "clashes", "Seen: remains. With Zn^2+ you would have seen: dissolves."],
    ["Al^3+", "b(ii)", "fits", "Seen: remains. All 3 salts with Al^3+ show that."],
    // Lead chloride hardly dissolves (common practice, no source), so lead is given as its nitrate alone.
    ["Pb^2+", "b(ii)", "fits", "Seen: remains. The one salt with Pb^2+, Pb^2+ NO3-, shows that."],
    ["Pb^2+", "c", "clashes", "Seen: white. With Pb^2+ you would have seen: none."],
    // Silver nitrate finds the chloride (Q084), whatever the cation.
    ["Zn^2+", "c", "fits", "Seen: white. Zn^2+ Cl- shows that, the other 2 salts with Zn^2+ do not."],
    ["Cl-", "c", "fits", "Seen: white. All 4 salts with Cl- show that."],
    ["SO4^2-", "c", "clashes", "Seen: white. With SO4^2- you would have seen: none."],
    // All five hydroxides are white (Q040, Q001, Q036, Q008, Q044).
    ["Zn^2+", "a(i)", "says nothing", "Seen: white. Every salt the paper allows shows that, so it says nothing."],
    [
      "Zn^2+",
      "d",
      "says nothing",
      "Seen: none. With each cation some allowed salt shows that, so it rules no cation out.",
    ],
    ["Zn^2+", "e", "not done", "e for P is not in the record."],
  ])("%s at %s", (ion, cell, word, why) => {
    expect(reasonOfMark(of, "P", ion, cell)).toEqual({ word, why });
  });

  test("a sight at the border only just fits, and the usual one is named (Q012 and Q014: boards differ for calcium)", () => {
    const table = whitePrecipitates(["P"]);
    const set = table.sets[0];
    const cell = table.cells.findIndex(({ id }) => id === "b(i)");
    set.atBorder = ["Cl-", "NO3-"].map((anion) => [
      set.salts.indexOf(saltNamed("Ca^2+", anion)),
      cell,
      1 << readingOf("slight"),
    ]);
    const { word, why } = reasonOfMark(
      { table, names: {}, record: recordOf({ P: { "b(i)": "slight" } }) },
      "P",
      "Ca^2+",
      "b(i)",
    );
    expect(word).toBe("only just fits");
    expect(why).toMatch(/^Seen: slight\. With Ca\^2\+ the usual sight is: none\. This one is seen only where/);
  });

  test("a mark that is not in the table is refused by name", () => {
    expect(() => reasonOfMark(of, "P", "Fe^2+", "a(i)")).toThrow("There is no mark for Fe^2+ at a(i) of P.");
    expect(() => reasonOfMark(of, "Q", "Zn^2+", "a(i)")).toThrow(RangeError);
  });
});

test("every mark of any table has its reason", () => {
  fc.assert(
    fc.property(tableWithRecord, ({ table, record }) => {
      for (const { label } of table.samples) {
        for (const cell of testsOf(table, label)) {
          for (const ion of [...table.paper.cations, ...table.paper.anions]) {
            const { word, why } = reasonOfMark({ table, names: {}, record }, label, ion, table.cells[cell].id);
            expect(why).toMatch(/\.$/);
            expect(why).not.toMatch(/undefined|null/);
            const done = record[label]?.[table.cells[cell].id] !== undefined;
            expect(word === "not done").toBe(!done);
          }
        }
      }
    }),
    { seed: 22, numRuns: 200 },
  );
});
