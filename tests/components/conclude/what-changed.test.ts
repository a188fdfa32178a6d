/** What changes of a record come to, over the white precipitates; the record ids behind each sight stand in white-precipitates.ts. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { whatChanged } from "../../../src/components/conclude/what-changed.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { tableWithRecord } from "../../engine/deduction/random-table.ts";
import { recordOf, whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

const ZINC = { "a(i)": "white", "a(ii)": "dissolves", "b(i)": "white", "b(ii)": "dissolves" } as const;
const ALUMINIUM = { ...ZINC, "b(ii)": "remains", e: "none" } as const;
const SULFATE = { c: "none", d: "white" } as const;
const CHLORIDE = { c: "white", d: "none" } as const;

describe("one sample", () => {
  const table = whitePrecipitates(["P"]);
  const given = recordOf({ P: { ...ZINC, ...SULFATE } });
  const changed = (now: Parameters<typeof recordOf>[0]) =>
    whatChanged({ table, names: {}, record: recordOf(now) }, given);

  test("no barium precipitate (Q097): the sulfate falls, and what that test had ruled out comes back", () => {
    expect(changed({ P: { ...ZINC, c: "none", d: "none" } })).toEqual({
      observations: [{ cell: "d", sample: "P", was: "white", now: "none" }],
      samples: [
        {
          sample: "P",
          was: "Zn^2+ SO4^2-",
          now: "Zn^2+ NO3-",
          why: ["SO4^2- is out: at d it would show: white.", "NO3- is possible: d no longer rules it out."],
        },
      ],
      waiting: [],
      unchanged: [],
    });
  });

  test("excess ammonia not added (Q004): aluminium is no longer told from zinc", () => {
    const { "b(ii)": _, ...rest } = ZINC;
    const { observations, samples } = changed({ P: { ...rest, ...SULFATE } });
    expect(observations).toEqual([{ cell: "b(ii)", sample: "P", was: "dissolves", now: "not done" }]);
    expect(samples).toEqual([
      {
        sample: "P",
        was: "Zn^2+ SO4^2-",
        now: "Zn^2+ SO4^2- or Al^3+ SO4^2-",
        why: ["Al^3+ is possible: b(ii) no longer rules it out."],
      },
    ]);
  });

  test("another test with the expected sight changes nothing", () => {
    expect(changed({ P: { ...ZINC, ...SULFATE, e: "none" } })).toEqual({
      observations: [{ cell: "e", sample: "P", was: "not done", now: "none" }],
      samples: [],
      waiting: [],
      unchanged: ["P"],
    });
  });

  test("no precipitate where one dissolved in excess fits nothing: the old salt says what it would have shown", () => {
    const { samples } = changed({ P: { ...ZINC, ...SULFATE, "b(ii)": "none" } });
    expect(samples).toEqual([
      {
        sample: "P",
        was: "Zn^2+ SO4^2-",
        now: "no salt",
        why: ["At b(ii) Zn^2+ SO4^2- would show: dissolves.", "No other salt fits all its tests."],
      },
    ]);
  });
});

describe("several samples", () => {
  test("another sample follows because the paper says they share an ion", () => {
    const table = whitePrecipitates(["P", "Q"], { share: [{ samples: ["P", "Q"], ion: "anion" }] });
    const given = recordOf({ P: { ...ZINC, ...CHLORIDE }, Q: ALUMINIUM });
    const record = recordOf({ P: { ...ZINC, ...SULFATE }, Q: ALUMINIUM });
    const { observations, samples } = whatChanged({ table, names: {}, record }, given);
    expect(observations.map(({ cell, sample }) => `${cell} ${sample}`)).toEqual(["c P", "d P"]);
    expect(samples[1]).toEqual({
      sample: "Q",
      was: "Al^3+ Cl-",
      now: "Al^3+ SO4^2-",
      why: [
        "Cl- is out: its own tests fit, but the paper says: P and Q hold the same anion.",
        "SO4^2- is possible: the paper (P and Q hold the same anion) no longer rules it out.",
      ],
    });
  });

  test("a record at odds with the paper names the statement, and the other sample waits", () => {
    const table = whitePrecipitates(["P", "Q"], { differ: [{ samples: ["P", "Q"], ion: "cation" }] });
    const given = recordOf({ P: { ...ZINC, ...SULFATE }, Q: { ...ALUMINIUM, ...SULFATE } });
    const record = recordOf({ P: { ...ALUMINIUM, ...SULFATE }, Q: { ...ALUMINIUM, ...SULFATE } });
    const { samples, waiting, unchanged } = whatChanged({ table, names: {}, record }, given);
    expect({ samples, waiting, unchanged }).toEqual({
      samples: [
        {
          sample: "P",
          was: "Zn^2+ SO4^2-",
          now: "not decided",
          why: [
            "At b(ii) Zn^2+ SO4^2- would show: dissolves.",
            "Other salts fit its tests, but not what the paper says: P and Q hold different cations.",
          ],
        },
      ],
      waiting: ["Q"],
      unchanged: [],
    });
  });
});

test("any two records of any table can be compared, and every sample is told of once", () => {
  fc.assert(
    fc.property(tableWithRecord, tableWithRecord, ({ table, record: given }, other) => {
      fc.pre(deduce(table, given).assignments > 0);
      const record = Object.fromEntries(
        table.samples.map(({ label }) => [
          label,
          Object.fromEntries(
            Object.entries(other.record[label] ?? {}).filter(([id, reading]) =>
              table.cells.some((cell) => cell.id === id && reading < cell.readings.length),
            ),
          ),
        ]),
      );
      const { observations, samples, waiting, unchanged } = whatChanged({ table, names: {}, record }, given);
      const told = [...samples.map(({ sample }) => sample), ...waiting, ...unchanged];
      expect(told.toSorted()).toEqual(table.samples.map(({ label }) => label).toSorted());
      if (observations.length === 0) expect(unchanged).toHaveLength(table.samples.length);
      expect(JSON.stringify(samples)).not.toContain("undefined");
      if (deduce(table, record).assignments > 0) expect(waiting).toEqual([]);
    }),
    { seed: 21, numRuns: 400 },
  );
});
