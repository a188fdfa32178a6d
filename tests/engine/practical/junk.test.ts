/** Whatever comes in (a link, a file, a slip of the pen), reading never throws, never hangs and never lets a name of the language through. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readPractical } from "../../../src/engine/practical/faults.ts";
import { observation, statement, step } from "../../../src/engine/practical.ts";
import { changed, faultsOf, faultsWith, sound } from "./sound.ts";

const PLACES: (string | number)[][] = [
  ["title"],
  ["level"],
  ["samples"],
  ["samples", 0],
  ["samples", 0, "label"],
  ["samples", 0, "salt"],
  ["samples", 0, "concentration"],
  ["paper"],
  ["paper", "cations"],
  ["paper", "share"],
  ["parts"],
  ["parts", 0],
  ["parts", 0, "tests"],
  ["parts", 0, "tests", 0, "steps", 0],
  ["record"],
  ["record", "P"],
  ["record", "P", "a(i)"],
  ["record", "P", "a(i)", "precipitate"],
  ["undecided"],
];

const junk = fc.anything({ withBigInt: true, withDate: true, withMap: true, withSet: true, withNullPrototype: true });

test("anything at all is read as a practical or told its faults", () => {
  fc.assert(
    fc.property(junk, (input) => {
      const read = readPractical(input);
      expect("faults" in read && read.faults.length > 0).toBe(true);
    }),
    { numRuns: 500, seed: 1 },
  );
});

test("anything at any place of a sound practical", () => {
  fc.assert(
    fc.property(fc.constantFrom(...PLACES), junk, (path, value) => {
      const read = readPractical(changed(path, value));
      if ("faults" in read) for (const { message } of read.faults) expect(message).not.toBe("");
      else expect(read.practical.samples).toHaveLength(2);
    }),
    { numRuns: 1500, seed: 2 },
  );
});

test("anything as a step, an observation or a statement", () => {
  fc.assert(
    fc.property(junk, (input) => {
      for (const schema of [step, observation, statement]) schema.safeParse(input);
    }),
    { numRuns: 500, seed: 3 },
  );
});

describe.each(["__proto__", "constructor", "toString", "hasOwnProperty", "prototype"])("%s", (name) => {
  test.each([
    ["a sample letter", ["samples", 0, "label"], name],
    ["a unit", ["samples", 0, "concentration"], `0.1 ${name}`],
    ["a salt", ["samples", 0, "salt"], name],
    ["a colour", ["record", "P", "a(i)"], { precipitate: name }],
    ["a gas", ["record", "P", "a(i)"], { gas: name }],
    ["a cation", ["paper", "cations", 0], name],
    ["a step", ["parts", 0, "tests", 0, "steps", 0], Object.fromEntries([[name, true]])],
    ["a way of testing a gas", ["parts", 0, "tests", 0, "steps", 0], { testGas: name }],
  ])("is no %s", (_, path, value) => {
    expect(faultsWith(path, value)).toContain("found");
  });

  test("is no test of the record", () => {
    const faults = faultsWith(["record", "P", name], "no visible change");
    // The reader leaves an entry called __proto__ out of any table of entries; nothing of it may be left.
    if (name === "__proto__") expect(recordOf(["record", "P", name])).toEqual(["a(i)", "a(ii)"]);
    else expect(faults).toContain(`found test ${name}`);
  });

  test("is no sample of the record", () => {
    if (name === "__proto__") expect(recordOf(["record", name])).toEqual(["a(i)", "a(ii)"]);
    else expect(faultsWith(["record", name], { b: "no visible change" })).not.toBe("no fault");
  });

  test("is no entry of a practical", () => {
    expect(faultsWith([name], 1)).toContain(name);
  });
});

/** Tests recorded for P with an observation at the path, when the practical is read. */
function recordOf(path: string[]): string[] {
  const value = path.length === 2 ? { b: "no visible change" } : "no visible change";
  const read = readPractical(changed(path, value));
  if ("faults" in read) return ["a(i)", "a(ii)"];
  expect(({} as Record<string, unknown>).b).toBeUndefined();
  expect(Object.keys(read.practical.record)).toEqual(["P", "Q"]);
  return Object.keys(read.practical.record.P);
}

// What hangs is ended by the time a test is given; a time asserted here would only measure the machine.
describe("sizes", () => {
  const long = 10_000;

  test.each([
    ["letters", "x".repeat(long)],
    ["digits", "1".repeat(long)],
    ["spaces before a unit", `1 x${" ".repeat(long)}y`],
    ["opening brackets", "(".repeat(long)],
    ["nested groups", `${"(".repeat(long)}H${")2".repeat(long)}`],
    ["elements", "H".repeat(long)],
    ["waters", `CuSO4${"*H2O".repeat(long)}`],
    ["a zero byte", "\0".repeat(long)],
  ])("ten thousand %s, anywhere", (_, text) => {
    for (const path of PLACES) expect(() => readPractical(changed(path, text))).not.toThrow();
  });

  test("a hundred thousand levels", () => {
    let deep: unknown = "x";
    for (let level = 0; level < 100_000; level++) deep = level % 2 ? [deep] : { a: deep };
    for (const path of PLACES) expect(() => readPractical(changed(path, deep))).not.toThrow();
  });

  test.each([1e308, Number.POSITIVE_INFINITY, Number.NaN, -0, 2 ** 53])("the number %s", (number) => {
    for (const path of [["minutes"], ["order"], ["parts", 0, "tests", 0, "steps", 1, "drops"]]) {
      expect(faultsOf(changed(path, number))).toContain(`${path.join(" > ")}: found the number`);
    }
  });

  test("an amount of four hundred digits is more than a bench uses, one of four hundred noughts is nothing", () => {
    const at = ["samples", 0, "concentration"];
    expect(faultsWith(at, `${"9".repeat(400)} mol/dm3`)).toContain("more than any school bench uses");
    expect(faultsWith(at, `0.${"0".repeat(400)}1 mol/dm3`)).toContain("expected more than nothing");
  });

  test("a list of ten thousand samples", () => {
    const many = sound();
    many.samples = Array.from({ length: long }, () => many.samples[0]);
    expect(faultsOf(many)).toContain("expected at most 8 entries");
  });
});

test("nothing read ever changes what all objects share", () => {
  const input = JSON.parse('{"__proto__": {"found": 1}, "constructor": {"prototype": {"found": 1}}}');
  readPractical(input);
  for (const path of PLACES) readPractical(changed(path, input));
  expect(({} as Record<string, unknown>).found).toBeUndefined();
});
