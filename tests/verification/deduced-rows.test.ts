/** What the boards' rows leave, ion by ion, where anyone can say it: the pairs every class meets. */
import { describe, expect, test } from "vitest";
import { type Deduced, deduced, EXAMPLES, type Example } from "./deduced-rows.ts";

const example = (name: string): Example => {
  const found = EXAMPLES.find((one) => one.name === name);
  if (!found) throw new RangeError(`no example ${name}`);
  return found;
};

/** Each example is worked out once: all its salts are taken through all its tests. */
const known = new Map<string, Deduced[]>();
function worked(name: string): Deduced[] {
  const found = known.get(name) ?? deduced(example(name));
  known.set(name, found);
  return found;
}

/** Ions left by deduction for each recorded variant of an ion. */
const left = (name: string, ion: string): string[][] =>
  worked(name)
    .filter(({ variant }) => variant.ion === ion)
    .map(({ verdicts }) => verdicts.flatMap((one) => (one.left ? [one.ion] : [])));

describe("aluminium and lead", () => {
  // Q241: identical with both alkalis, need iodide, chromate, hydrochloric or sulfuric acid.
  test("both alkalis leave both", () => {
    expect(left("alkalis, school list", "Al^3+")).toEqual([["Al^3+", "Pb^2+"]]);
    expect(left("alkalis, school list", "Pb^2+")).toEqual([["Al^3+", "Pb^2+"]]);
  });

  // Q196 and Q200; both wordings of lead iodide's yellow.
  test("potassium iodide tells them apart", () => {
    expect(left("alkalis and iodide, school list", "Al^3+")).toEqual([["Al^3+"]]);
    expect(left("alkalis and iodide, school list", "Pb^2+")).toEqual([["Pb^2+"], ["Pb^2+"]]);
  });

  // Q219; no row on aluminium, whose sulfate dissolves (common practice, no source).
  test("so does the white precipitate with sulfuric acid", () => {
    expect(left("alkalis and sulfuric acid, school list", "Pb^2+")).toEqual([["Pb^2+"]]);
  });
});

// Q040 to Q043: alone of the school list's white hydroxides to dissolve in both alkalis.
test("zinc is left alone by both alkalis", () => {
  expect(left("alkalis, school list", "Zn^2+")).toEqual([["Zn^2+"]]);
});

// Q086 prints cream, Q088 yellow; both credit pale yellow, which the boards' synonyms also call cream.
test("cream or pale yellow leaves bromide and iodide, yellow leaves iodide", () => {
  const name = "anion tests of one board, school list";
  expect(left(name, "Br-")).toEqual([
    ["Br-", "I-"],
    ["Br-", "I-"],
  ]);
  expect(left(name, "I-")).toEqual([["I-"], ["Br-", "I-"]]);
});
