/** Results kept on disk: what comes back is what was put in, and whatever is wrong with a file only costs the time to make it again. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { cacheIn, openCache } from "../../../src/build/cache/cache.ts";
import { fileFor } from "../../../src/build/cache/files.ts";
import { prune } from "../../../src/build/cache/prune.ts";
import { keptMemory } from "../../../src/build/cache/shelves.ts";
import { programVersion } from "../../../src/build/cache/version.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "results-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const filesIn = (path: string) =>
  readdirSync(path, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".bin"));

const VALUES = {
  "a number to its last bit": 0.1 + 0.2,
  "what JSON has no word for": [undefined, Number.NaN, -0, Number.POSITIVE_INFINITY],
  "maps in maps": new Map([["a", new Map([["b", { c: undefined }]])]]),
  nothing: undefined,
};

test.each(Object.entries(VALUES))("%s comes back as it was", (name, value) => {
  const cache = cacheIn(folder);
  expect(cache.recall(name, "input", () => value)).toStrictEqual(value);
  expect(cacheIn(folder).recall(name, "input", () => expect.unreachable("made twice"))).toStrictEqual(value);
});

test("the same object twice in a result is one object when it comes back", () => {
  const shared = { ion: "Zn^2+" };
  cacheIn(folder).write("pair", "", [shared, shared]);
  const [one, other] = cacheIn(folder).read<[object, object]>("pair", "") ?? [{}, {}];
  expect(one).toBe(other);
});

test("another input, another name or another version is another result", () => {
  const cache = cacheIn(folder);
  cache.write("a", "1", "kept");
  expect(cache.read("a", "2")).toBeUndefined();
  expect(cache.read("b", "1")).toBeUndefined();
  expect(cacheIn(join(folder, "later")).read("a", "1")).toBeUndefined();
});

test.each([
  ["empty", () => Buffer.alloc(0)],
  ["cut short", (whole: Buffer) => whole.subarray(0, -1)],
  ["one bit changed", (whole: Buffer) => Buffer.from(whole.map((byte, at) => (at === 40 ? byte ^ 1 : byte)))],
  ["foreign", () => Buffer.from("<html>not found</html>, and more than a sum's worth of it")],
])("a file that is %s is ignored and written anew", (_, spoil) => {
  const cache = cacheIn(folder);
  cache.write("a", "1", { right: true });
  const file = fileFor(folder, "a", "1");
  const whole = readFileSync(file);
  writeFileSync(file, spoil(whole));
  expect(cache.recall("a", "1", () => ({ right: true }))).toEqual({ right: true });
  expect(readFileSync(file)).toEqual(whole);
});

test("a disk that takes nothing keeps nobody from the result", () => {
  // A file stands where the folder should be.
  writeFileSync(join(folder, "full"), "");
  const cache = cacheIn(join(folder, "full"));
  expect(cache.recall("a", "1", () => 7)).toBe(7);
});

test("a result is there whole or not at all: no draft is left beside it", () => {
  cacheIn(folder).write("a", "1", "x".repeat(1000));
  const names = readdirSync(dirname(fileFor(folder, "a", "1")));
  expect(names).toHaveLength(1);
});

test("without a project named, everything is computed", () => {
  const cache = openCache(undefined);
  let made = 0;
  const make = () => {
    made += 1;
    return made;
  };
  expect([cache.recall("a", "1", make), cache.recall("a", "1", make)]).toEqual([1, 2]);
});

test("old versions go, and of the rest the oldest results until it is small enough", () => {
  for (const [age, version] of ["now", "before", "long ago"].entries()) {
    cacheIn(join(folder, version)).write("a", version, "x".repeat(900));
    const time = new Date(2020, 0, 10 - age);
    for (const name of filesIn(join(folder, version))) utimesSync(join(folder, version, name), time, time);
    utimesSync(join(folder, version), time, time);
  }
  prune(folder, "now", 1500);
  expect(readdirSync(folder).sort()).toEqual(["before", "now"]);
  expect(cacheIn(join(folder, "now")).read("a", "now")).toBeDefined();
  expect(filesIn(join(folder, "before"))).toEqual([]);
});

test("the version changes with the engine's source and with nothing beside it", () => {
  mkdirSync(join(folder, "src/engine/constants"), { recursive: true });
  mkdirSync(join(folder, "src/build"), { recursive: true });
  mkdirSync(join(folder, "src/words"), { recursive: true });
  writeFileSync(join(folder, "package-lock.json"), '{"lockfileVersion":3}');
  const row = join(folder, "src/engine/constants/log-k.ts");
  writeFileSync(row, "logK: 9.75");
  const before = programVersion(folder);
  writeFileSync(join(folder, "README.md"), "other");
  expect(programVersion(folder)).toBe(before);
  writeFileSync(row, "logK: 9.76");
  expect(programVersion(folder)).not.toBe(before);
});

test("a memory is kept by part, and two writers lose nothing of each other", () => {
  const [one, other] = [keptMemory<number>(cacheIn(folder), "m"), keptMemory<number>(cacheIn(folder), "m")];
  one.set("a", "ZnCl2", 1);
  other.set("a", "CuSO4", 2);
  other.set("b", "CuSO4", 3);
  one.keep();
  other.keep();
  const later = keptMemory<number>(cacheIn(folder), "m");
  expect([later.get("a", "ZnCl2"), later.get("a", "CuSO4"), later.get("b", "CuSO4")]).toEqual([1, 2, 3]);
  expect(later.get("b", "ZnCl2")).toBeUndefined();
});
