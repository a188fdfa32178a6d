/** The record in an address, over random tables without chemistry: what is put in comes out, and nothing else gets in. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { behindTheMark, fromAddress, toAddress } from "../../../src/components/record/address.ts";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { SOMETHING_ELSE } from "../../../src/engine/deduction/something-else.ts";
import { tableWithRecord } from "../../engine/deduction/random-table.ts";

/** Only places a test is done on, as a page's own record has them. */
function asked({ cells }: PredictionTable, record: TableRecord): TableRecord {
  const entries = Object.entries(record).map(([sample, row]): [string, Record<string, number>] => [
    sample,
    Object.fromEntries(
      Object.entries(row).filter(([id]) => cells.some((c) => c.id === id && c.samples.includes(sample))),
    ),
  ]);
  return Object.fromEntries(entries.filter(([, row]) => Object.keys(row).length > 0));
}
const bare = (record: TableRecord) =>
  Object.fromEntries(Object.entries(record).filter(([, row]) => Object.keys(row).length > 0));

test.each([
  ["#record=own", 1],
  ["#record=%3Cscript%3E", 1],
  ["#R.a.ii=white+precipitate", 1],
  ["#record", 0],
  ["#carry-out", 0],
  ["", 0],
])("%s behind the mark is refused %i times", (hash, times) => {
  expect(behindTheMark(hash)).toHaveLength(times);
});

test("a record goes into an address and comes out of it, changed or begun empty", () => {
  fc.assert(
    fc.property(tableWithRecord, tableWithRecord, fc.boolean(), ({ table, record: one }, other, own) => {
      const given = asked(table, one);
      const record = asked(table, other.record);
      const read = fromAddress(table, given, toAddress(table, given, { record, own }));
      expect({ ...read, record: bare(read.record) }).toEqual({ record, own, faults: [] });
    }),
    { seed: 11, numRuns: 500 },
  );
});

/** A table of two samples and one test, and its record as given. */
const small = {
  samples: [{ label: "P" }, { label: "Q" }],
  cells: [
    { id: "a(i)", samples: ["P", "Q"], words: ["white precipitate", "no visible change"] },
    { id: "b", samples: ["P"], words: ["red flame", "no colour"] },
  ],
};
const asGiven = { P: { "a(i)": 0, b: 0 }, Q: { "a(i)": 1 } };

test("a spoilt link is answered entry by entry, and what can be read of it is taken", () => {
  const search = new URLSearchParams([
    ["P.a.i", "no visible change"],
    ["P.b", "<b>green</b> flame"],
    ["q.a(i)", "white precipitate"],
    ["Q.b", "red flame"],
    ["Q.a.i", "white precipitate"],
    ["Q.a.i", "no visible change"],
    ["record", "mine"],
    ["utm_source", "post"],
  ]);
  const { record, own, faults } = fromAddress(small, asGiven, `${search}`);
  expect({ record, own }).toEqual({ record: { ...asGiven, P: { "a(i)": 1, b: 0 } }, own: false });
  expect(faults).toEqual([
    "record: found “mine”; only own is understood there.",
    "b for P: found “<b>green</b> flame”, expected an observation of its list.",
    "q.a(i): found no such place in this record, expected one such as P.a.i.",
    "Q.b: found no such place in this record, expected one such as P.a.i.",
    "a(i) for Q: found 2 entries, expected one.",
  ]);
});

test("what was meant as a place goes from the address with the next change, what belongs to others stays", () => {
  const before = "q.a(i)=white&P.c=white&utm_source=post";
  expect(toAddress(small, asGiven, { record: asGiven, own: false }, before)).toBe("utm_source=post");
});

test("junk never throws, and every entry that is read is one of the list", () => {
  const entry = fc.tuple(fc.constantFrom("P.a", "Q.b", "R.z", "P.a.ii", "record", "x", "__proto__"), fc.string());
  fc.assert(
    fc.property(
      tableWithRecord,
      fc.oneof(
        fc.string(),
        fc.array(entry).map((all) => `${new URLSearchParams(all)}`),
      ),
      ({ table }, junk) => {
        const { record, faults } = fromAddress(table, {}, junk);
        expect(record).toEqual({});
        for (const fault of faults) expect(fault.length).toBeLessThan(200);
      },
    ),
    { seed: 12, numRuns: 500 },
  );
});

describe("an address by hand", () => {
  const cell = (id: string, samples: string[]) => ({
    id,
    samples,
    readings: [],
    words: ["white precipitate", "no visible change"],
    agrees: [],
    comesOff: [],
  });
  const table = {
    samples: [
      { label: "P", set: 0 },
      { label: "Q", set: 0 },
    ],
    cells: [cell("a(ii)", ["P", "Q"]), cell("b", ["P"])],
  } as unknown as PredictionTable;
  const given = { P: { "a(ii)": 0, b: 0 } };

  test("tells only what differs from the walkthrough, in words", () => {
    const record = { P: { "a(ii)": 1 }, Q: { "a(ii)": 0 } };
    expect(toAddress(table, given, { record, own: false })).toBe(
      "P.a.ii=no+visible+change&P.b=not+done&Q.a.ii=white+precipitate",
    );
    expect(toAddress(table, given, { record: given, own: false })).toBe("");
    expect(toAddress(table, given, { record: {}, own: true })).toBe("record=own");
  });

  test("tells of something else than the list in words of its own, and of no other", () => {
    const record = { P: { "a(ii)": SOMETHING_ELSE, b: 0 } };
    expect(toAddress(table, given, { record, own: false })).toBe("P.a.ii=something+else");
    expect(fromAddress(table, given, "P.a.ii=something+else")).toEqual({ record, own: false, faults: [] });
    for (const near of ["-1", "Something else", "something"]) {
      expect(fromAddress(table, given, `P.a.ii=${near}`)).toEqual({
        record: given,
        own: false,
        faults: [`a(ii) for P: found “${near}”, expected an observation of its list.`],
      });
    }
  });

  test("is refused entry by entry, and the rest is kept", () => {
    const read = fromAddress(
      table,
      given,
      "P.a.ii=green&P.b=no visible change&Q.b=not done&P.z=x&utm_source=y&record=mine",
    );
    expect(read.record).toEqual({ P: { "a(ii)": 0, b: 1 } });
    expect(read.faults).toEqual([
      "record: found “mine”; only own is understood there.",
      "a(ii) for P: found “green”, expected an observation of its list.",
      "Q.b: found no such place in this record, expected one such as P.a.ii.",
      "P.z: found no such place in this record, expected one such as P.a.ii.",
    ]);
  });

  test("is refused where a place is given twice, for nobody can say which was meant", () => {
    expect(fromAddress(table, given, "P.b=no visible change&P.b=not done&P.a.ii=not done")).toEqual({
      record: { P: { b: 0 } },
      own: false,
      faults: ["b for P: found 2 entries, expected one."],
    });
    expect(fromAddress(table, given, "record=own&record=own")).toEqual({
      record: given,
      own: false,
      faults: ["record: found 2 entries, expected one."],
    });
  });

  test("keeps the entries of others, and replaces its own", () => {
    const before = "?utm_source=y&P.b=not+done&record=own";
    expect(toAddress(table, given, { record: { ...given, P: { "a(ii)": 1, b: 0 } }, own: false }, before)).toBe(
      "utm_source=y&P.a.ii=no+visible+change",
    );
  });

  test("tells the first faults and counts the others", () => {
    const many = Array.from({ length: 50 }, (_, n) => `P${n % 10}.${"abcde"[Math.floor(n / 10)]}=x`).join("&");
    const { faults } = fromAddress(table, given, many);
    expect(faults).toHaveLength(7);
    expect(faults.at(-1)).toBe("And 44 more like these.");
  });

  test("of any length is refused as a whole", () => {
    const read = fromAddress(table, given, "P.b=no visible change&x=".padEnd(30_000, "y"));
    expect(read).toMatchObject({ record: given, own: false });
    expect(read.faults).toEqual(["The link is 30000 characters long, expected at most 20000."]);
  });
});
