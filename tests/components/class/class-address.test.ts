import { expect, test } from "vitest";
import { fromAddress, toAddress } from "../../../src/components/class/class-address.ts";
import type { ClassSize } from "../../../src/engine/planning/class/class-size.ts";

const OWN: ClassSize = { groups: 12, sparePercent: 30, sampleCm3: 6 };

test.each<[Partial<ClassSize>, string]>([
  [{}, ""],
  [{ groups: 15 }, "groups=15"],
  [{ groups: 8, sparePercent: 12.5, sampleCm3: 4 }, "groups=8&spare=12.5&sample=4"],
])("%o goes into the address and comes out of it", (change, address) => {
  const size = { ...OWN, ...change };
  expect(toAddress(size, OWN)).toBe(address);
  expect(fromAddress(`?${address}`, OWN)).toEqual({ size, faults: [] });
});

test("entries of somebody else stay", () => {
  expect(toAddress({ ...OWN, groups: 3 }, OWN, "?groups=9&spare=50&R.a=x")).toBe("groups=3&R.a=x");
});

test.each([
  ["groups=0", "In the link, number of groups: found “0”, expected a whole number from 1 to 60."],
  ["groups=10000", "In the link, number of groups: found “10000”, expected a whole number from 1 to 60."],
  ["spare=NaN", "In the link, spare: found “NaN”, expected a number from 0 to 200 %."],
  [
    "sample=<script>alert(1)</script>",
    "In the link, volume of each sample for a group: found “<script>alert(1)</sc…”, expected a number from 1 to 500 cm3.",
  ],
])("%s is refused, and the class stays the page's own", (search, fault) => {
  expect(fromAddress(search, OWN)).toEqual({ size: OWN, faults: [fault] });
});

test("one bad entry does not spoil the others, and an entry the page has no field for is left alone", () => {
  expect(fromAddress("?groups=many&spare=50&solid=9", OWN)).toEqual({
    size: { ...OWN, sparePercent: 50 },
    faults: [expect.stringContaining("found “many”")],
  });
});
