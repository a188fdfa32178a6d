import { describe, expect, test } from "vitest";
import {
  type ClassEntry,
  type ClassSize,
  checkClassSize,
  readEntry,
} from "../../../../src/engine/planning/class/class-size.ts";

const SIZE: ClassSize = { groups: 12, sparePercent: 30 };

describe("a class", () => {
  test.each<Partial<ClassSize>>([
    {},
    { groups: 1 },
    { groups: 60 },
    { sparePercent: 0 },
    { sampleCm3: 2.5 },
    { sampleG: 0.3 },
  ])("%o is taken", (change) => {
    expect(() => checkClassSize({ ...SIZE, ...change })).not.toThrow();
  });

  test.each<[Partial<ClassSize>, string]>([
    [{ groups: 0 }, "number of groups: found 0, expected a whole number from 1 to 60"],
    [{ groups: 10000 }, "number of groups: found 10000, expected a whole number from 1 to 60"],
    [{ groups: Number.NaN }, "number of groups: found NaN, expected a whole number from 1 to 60"],
    [{ groups: 2.5 }, "number of groups: found 2.5, expected a whole number from 1 to 60"],
    [{ sparePercent: -1 }, "spare: found -1, expected a number from 0 to 200 %"],
    [{ sparePercent: Number.POSITIVE_INFINITY }, "spare: found Infinity, expected a number from 0 to 200 %"],
    [{ sampleCm3: 0 }, "volume of each sample for a group: found 0, expected a number from 1 to 500 cm3"],
    [{ sampleG: 1e6 }, "mass of each solid sample for a group: found 1000000, expected a number from 0.1 to 50 g"],
  ])("%o is refused", (change, says) => {
    expect(() => checkClassSize({ ...SIZE, ...change })).toThrow(new RangeError(`class size: ${says}`));
  });

  test("every fault is told at once, also of what is missing altogether", () => {
    expect(() => checkClassSize({ groups: 0 } as ClassSize)).toThrow(/number of groups: found 0.*; spare: found NaN/);
  });
});

describe("what somebody types", () => {
  test.each<[ClassEntry, string, number]>([
    ["groups", "15", 15],
    ["groups", " 8 ", 8],
    ["sparePercent", "12.5", 12.5],
    ["sampleCm3", "4", 4],
  ])("%s %s", (entry, text, value) => {
    expect(readEntry(entry, text)).toBe(value);
  });

  test.each<[ClassEntry, string, string]>([
    ["groups", "", "found nothing"],
    ["groups", "0", "found “0”"],
    ["groups", "ten", "found “ten”"],
    ["groups", "1e1", "found “1e1”"],
    ["groups", "0x10", "found “0x10”"],
    ["groups", "7.5", "found “7.5”"],
    ["sparePercent", "-5", "found “-5”"],
    ["sparePercent", "3,5", "found “3,5”"],
    ["sampleCm3", "<img src=x onerror=1>", "found “<img src=x onerror=1…”"],
  ])("%s “%s” is refused", (entry, text, found) => {
    expect(readEntry(entry, text)).toEqual({ fault: expect.stringContaining(`${found}, expected a`) });
  });
});
