/** Every state that a link carries behind its question mark: whatever stands there, the page has a state it could have chosen itself. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as choose from "../../src/components/choose/choice-address.ts";
import * as classes from "../../src/components/class/class-address.ts";
import { readSeed } from "../../src/components/practise/seed.ts";
import * as order from "../../src/components/prepare/order/order-choice.ts";
import { kindsOf } from "../../src/components/prepare/rack.ts";
import * as tubes from "../../src/components/prepare/tube-address.ts";
import * as record from "../../src/components/record/address.ts";
import { GREATEST_SEED } from "../../src/engine/deduction/drawn-set.ts";
import { whitePrecipitates } from "../engine/deduction/white-precipitates.ts";
import { anyText, HOSTILE, untouched } from "./hostile.ts";

const table = whitePrecipitates(["P", "Q"]);
const CELL = table.cells[0].id;
const GIVEN = { P: { [CELL]: 0 }, Q: {} };
const OFFER: order.Offer = {
  people: { least: 1, most: 2, usual: 1 },
  places: { least: 2, most: 12, usual: 12 },
  free: { least: 0, most: 1, usual: 0 },
};
const SIZES = ["test-tube-125x16", "boiling-tube-150x25"];
const KINDS = kindsOf(SIZES.map((size) => ({ labels: [size], marks: [], size })));
const SALTS = { store: table.salts.map((_, index) => index).slice(0, 2), samples: 2 };
const OWN = { groups: 12, sparePercent: 30, sampleCm3: 6 };

/** One island's part of an address. */
interface Door {
  /** Entries it reads. */
  names: string[];
  /** The state of the page without an address. */
  usual: unknown;
  read(search: string): { state: unknown; faults: string[] };
  write(state: never): string;
}

const DOORS: Readonly<Record<string, Door>> = {
  record: {
    names: ["record", `P.${CELL}`, "Q.z", "P.a.ii"],
    usual: { record: GIVEN, own: false },
    read: (search) => {
      const { faults, ...state } = record.fromAddress(table, GIVEN, search);
      return { state, faults };
    },
    write: (state) => record.toAddress(table, GIVEN, state),
  },
  "order of work": {
    names: ["people", "places", "free"],
    usual: order.usualChoice(OFFER),
    read: (search) => {
      const { choice, faults } = order.fromAddress(search, OFFER);
      return { state: choice, faults };
    },
    write: (state) => order.toAddress(state, OFFER),
  },
  class: {
    names: ["groups", "spare", "sample"],
    usual: OWN,
    read: (search) => {
      const { size, faults } = classes.fromAddress(search, OWN);
      return { state: size, faults };
    },
    write: (state) => classes.toAddress(state, OWN),
  },
  "sizes of tubes": {
    names: ["test-tube-size", "boiling-tube-size"],
    usual: SIZES,
    read: (search) => {
      const { chosen, faults } = tubes.fromAddress(search, KINDS, SIZES);
      return { state: chosen, faults };
    },
    write: (state) => tubes.toAddress(state, KINDS, SIZES, ""),
  },
  "a teacher's choice of salts": {
    names: ["samples"],
    usual: SALTS,
    read: (search) => {
      const { faults, ...state } = choose.fromAddress(table, SALTS, SALTS.store, 8, search);
      return { state, faults };
    },
    write: (state) => choose.toAddress(table, SALTS, state),
  },
};

/** Sentences under a form: few, short, and of one line. */
function areTold(faults: readonly string[]): void {
  expect(faults.length).toBeLessThanOrEqual(8);
  for (const fault of faults) {
    expect(fault.length).toBeGreaterThan(10);
    expect(fault.length).toBeLessThan(300);
  }
}

describe.each(Object.entries(DOORS))("the address of %s", (_, { names, usual, read, write }) => {
  test.each(names)("what cannot be %s is told, and what was there stays", (name) => {
    for (const text of HOSTILE) {
      const { state, faults } = read(`?${new URLSearchParams({ [name]: text })}`);
      expect(state).toEqual(usual);
      // Places that a record does not have may belong to somebody else.
      if (!name.includes(".")) expect(faults.length, text.slice(0, 20)).toBeGreaterThan(0);
      areTold(faults);
    }
    expect(untouched()).toBe(true);
  });

  test("anything at all gives a state that the page could have chosen itself", () => {
    const entry = fc.tuple(fc.oneof(fc.constantFrom(...names), anyText), anyText);
    const search = fc.oneof(
      anyText,
      fc.array(entry, { maxLength: 40 }).map((entries) => `?${new URLSearchParams(entries)}`),
    );
    fc.assert(
      fc.property(search, (text) => {
        const { state, faults } = read(text);
        areTold(faults);
        expect(read(write(state as never))).toEqual({ state, faults: [] });
      }),
      { numRuns: 400, seed: 21 },
    );
    expect(untouched()).toBe(true);
  });

  test("of a hundred thousand entries the page is told in a few sentences", () => {
    areTold(read(`?${`${names[0]}=x&`.repeat(100_000)}`).faults);
  });
});

test("the number of a practice is a number of a set, or a sentence", () => {
  for (const text of HOSTILE) expect(readSeed(text)).toMatch(/expected a whole number from 1 to/);
  fc.assert(
    fc.property(anyText, (text) => {
      const seed = readSeed(text);
      if (typeof seed === "number") expect(seed).toBeLessThanOrEqual(GREATEST_SEED);
      else areTold([seed]);
    }),
    { numRuns: 400, seed: 22 },
  );
});
