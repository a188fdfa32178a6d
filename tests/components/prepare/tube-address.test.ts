import { expect, test } from "vitest";
import { kindsOf, type RackTube } from "../../../src/components/prepare/rack.ts";
import { fromAddress, toAddress } from "../../../src/components/prepare/tube-address.ts";

const tube = (size: string): RackTube => ({ labels: [size], marks: [], size });
const PLANNED = ["test-tube-125x16", "boiling-tube-150x25"];
const KINDS = kindsOf(PLANNED.map(tube));

test.each([
  [PLANNED, ""],
  [["test-tube-100x12", "boiling-tube-150x25"], "test-tube-size=100x12"],
  [["test-tube-150x18", "boiling-tube-200x25"], "test-tube-size=150x18&boiling-tube-size=200x25"],
])("sizes %o stand in the address as %o and come back from it", (chosen, search) => {
  expect(toAddress(chosen, KINDS, PLANNED, "")).toBe(search);
  expect(fromAddress(`?${search}`, KINDS, PLANNED)).toEqual({ chosen, faults: [] });
});

test("entries of others stay, and the planned size takes its own away", () => {
  expect(toAddress(PLANNED, KINDS, PLANNED, "?record=own&test-tube-size=100x12")).toBe("record=own");
});

test.each([
  ["9x9", "“9x9”"],
  ["", "nothing"],
  ["<img onerror=alert(1)>", "“<img onerror=alert(1…”"],
  ["200x25", "“200x25”"],
])("a size that is not there (%o) is told, and the planned one stays", (text, found) => {
  const read = fromAddress(`?test-tube-size=${encodeURIComponent(text)}&boiling-tube-size=150x24`, KINDS, PLANNED);
  expect(read.chosen).toEqual(["test-tube-125x16", "boiling-tube-150x24"]);
  expect(read.faults).toEqual([
    `In the link, test-tubes, kept cold: found ${found}, expected one of 75x10, 75x12, 100x12, 100x16, 125x16, 150x16, 150x18.`,
  ]);
});
