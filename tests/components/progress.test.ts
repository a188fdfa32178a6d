/** What a reader has practised: what is put in comes out, and a storage that refuses or holds junk breaks nothing. */
import { describe, expect, test } from "vitest";
import {
  clear,
  dayOf,
  exportAll,
  mark,
  type Occasion,
  read,
  readAll,
  type Store,
} from "../../src/components/progress.ts";

/** A storage as browsers have it: text by key. */
function storeWith(entries: Record<string, string> = {}): Store & { entries: Map<string, string> } {
  const held = new Map(Object.entries(entries));
  return {
    entries: held,
    get length() {
      return held.size;
    },
    key: (index) => [...held.keys()][index] ?? null,
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => void held.set(key, value),
    removeItem: (key) => void held.delete(key),
  };
}

const refuse = (): never => {
  throw new DOMException("denied", "SecurityError");
};
const REFUSING: Store = { length: 1, key: refuse, getItem: refuse, setItem: refuse, removeItem: refuse };

const walked: Occasion = { on: "2026-11-30", how: "walkthrough" };
const blind: Occasion = { on: "2026-12-01", how: "blind", seed: 4711, marks: { earned: 9, of: 12 } };

test("what is marked is read again, in order, each practical by itself", () => {
  const store = storeWith({ theme: "dark" });
  expect(mark("salt-works", walked, store)).toBe(true);
  expect(mark("salt-works", blind, store)).toBe(true);
  expect(mark("lamp-room-shelf", walked, store)).toBe(true);
  expect(read("salt-works", store)).toEqual({ version: 1, practical: "salt-works", occasions: [walked, blind] });
  expect(readAll(store).map(({ practical }) => practical)).toEqual(["lamp-room-shelf", "salt-works"]);
  expect(read("shed-two-tins", store)).toBeUndefined();
});

test("the oldest of many occasions is forgotten", () => {
  const store = storeWith();
  for (let seed = 0; seed <= 100; seed++) mark("salt-works", { ...blind, seed }, store);
  const seeds = read("salt-works", store)?.occasions.map(({ seed }) => seed);
  expect(seeds).toHaveLength(100);
  expect(seeds?.[0]).toBe(1);
});

test("clearing forgets one, or all, and nothing of anybody else", () => {
  const store = storeWith({ theme: "dark", "ionwright.practised.junk": "{" });
  mark("salt-works", walked, store);
  mark("lamp-room-shelf", walked, store);
  expect(clear("salt-works", store)).toBe(true);
  expect(readAll(store).map(({ practical }) => practical)).toEqual(["lamp-room-shelf"]);
  expect(clear(undefined, store)).toBe(true);
  expect([...store.entries]).toEqual([["theme", "dark"]]);
});

test("an export holds all that was practised", () => {
  const store = storeWith();
  mark("salt-works", blind, store);
  expect(JSON.parse(exportAll(store))).toEqual({
    version: 1,
    practised: [{ version: 1, practical: "salt-works", occasions: [blind] }],
  });
});

describe("an entry that cannot be read counts as none", () => {
  test.each([
    ["no JSON", "{"],
    ["another version", JSON.stringify({ version: 2, practical: "salt-works", occasions: [walked] })],
    ["another practical", JSON.stringify({ version: 1, practical: "elsewhere", occasions: [walked] })],
    [
      "a day that is none",
      JSON.stringify({ version: 1, practical: "salt-works", occasions: [{ ...walked, on: "x" }] }),
    ],
    ["more than it may hold", JSON.stringify({ version: 1, practical: "salt-works", occasions: [walked], also: 1 })],
  ])("%s", (_, text) => {
    const store = storeWith({ "ionwright.practised.salt-works": text });
    expect(read("salt-works", store)).toBeUndefined();
    expect(readAll(store)).toEqual([]);
  });
});

test("a storage that refuses, or is not there, gives nothing and says so", () => {
  for (const store of [REFUSING, undefined]) {
    expect(read("salt-works", store)).toBeUndefined();
    expect(readAll(store)).toEqual([]);
    expect(mark("salt-works", walked, store)).toBe(false);
    expect(clear(undefined, store)).toBe(false);
    expect(JSON.parse(exportAll(store))).toEqual({ version: 1, practised: [] });
  }
});

test("a day is that of the reader's own clock", () => {
  expect(dayOf(new Date(2026, 0, 5, 23, 59))).toBe("2026-01-05");
});
