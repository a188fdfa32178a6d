/** What further tests would tell, in sentences. */
import { describe, expect, test } from "vitest";
import type { FurtherList } from "../../../src/components/conclude/further-list.ts";
import { askFirst, warnUnsafe, wordNone, wordOutcome } from "../../../src/components/conclude/further-words.ts";
import type { FurtherTest } from "../../../src/engine/deduction/further-tests.ts";

const formulas = ["ZnSO4", "ZnCl2", "Zn(NO3)2", "AlCl3", "PbCl2"];
const table = { salts: formulas.map((formula) => ({ formula, cations: [], anions: [] })) };
const titles = ["Silver nitrate", "Silver nitrate", "Flame test"];
const further = {
  cells: ["halide(i)", "halide(ii)", "flame"].map((id) => ({ id })),
  tests: titles.map((title) => ({ title, does: "", cautions: [] })),
} as unknown as FurtherList;
const tried = (cell: string, ...outcomes: object[]) => ({ cell, outcomes, atBorder: [] }) as unknown as FurtherTest;

describe("an outcome", () => {
  test("that settles the sample", () => {
    expect(wordOutcome(table, further, "P", { salts: [0] })).toBe("P is ZnSO4.");
  });
  test("after which one test settles it", () => {
    const after = { open: [0, 1], test: tried("flame", { salts: [0] }, { salts: [1] }) };
    expect(wordOutcome(table, further, "P", { salts: [0, 1], after })).toBe(
      "P may be ZnSO4 or ZnCl2. Then flame test: that settles it.",
    );
  });
  test("after which two may be needed, and two lines of one tube are one test", () => {
    const flame = { open: [0, 1], test: tried("flame", { salts: [0] }, { salts: [1] }) };
    const ammonia = { open: [0, 1, 2], test: tried("halide(ii)", { salts: [0, 1], after: flame }, { salts: [2] }) };
    const after = { open: [0, 1, 2, 3, 4], test: tried("halide(i)", { salts: [0, 1, 2], after: ammonia }) };
    expect(wordOutcome(table, further, "P", { salts: [0, 1, 2, 3, 4], after })).toBe(
      "P is still one of 5 salts. Then silver nitrate and, if need be, flame test: that settles it.",
    );
  });
  test("after which nothing helps, or not wholly", () => {
    const stuck = { open: [0, 1] };
    expect(wordOutcome(table, further, "P", { salts: [0, 1], after: stuck })).toBe(
      "P may be ZnSO4 or ZnCl2. No test on our list tells ZnSO4 from ZnCl2.",
    );
    const after = { open: [0, 1, 2], test: tried("flame", { salts: [0, 1], after: stuck }, { salts: [2] }) };
    expect(wordOutcome(table, further, "P", { salts: [0, 1, 2], after })).toBe(
      "P may be ZnSO4, ZnCl2 or Zn(NO3)2. Then flame test; but no test on our list tells ZnSO4 from ZnCl2.",
    );
  });
});

test("where nothing on the list helps at all", () => {
  expect(wordNone(table, further, "P", { open: [0, 1, 2] })).toBe(
    "No test on our list tells ZnSO4, ZnCl2 and Zn(NO3)2 apart, so P stays open.",
  );
});

test("where a test that might help is unsafe on one of the salts, nothing is said of unsafe ones", () => {
  const cells = further.cells.map((cell) => (cell.id === "flame" ? { ...cell, unsafeOn: [4] } : cell));
  const words = (open: number[]) => wordNone(table, { ...further, cells }, "P", { open });
  expect(words([3, 4])).toBe("No test on our list that is safe on both tells AlCl3 from PbCl2, so P stays open.");
  expect(words([0, 3])).toBe("No test on our list tells ZnSO4 from AlCl3, so P stays open.");
});

test("a next test that is unsafe on a salt still possible says so, and on which", () => {
  expect(warnUnsafe(table, { sample: "P", unsafeOn: [4] })).toBe(
    "Ask your teacher before you begin it: P may be PbCl2, on which no class does this test.",
  );
  expect(askFirst({ unsafeOn: [4] })).toBe(" (ask your teacher first)");
  expect(askFirst({})).toBe("");
});
