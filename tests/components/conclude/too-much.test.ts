/** What a page says of a paper whose statements are too many to follow. */
import { expect, test } from "vitest";
import { TOO_MUCH } from "#words/conclude.ts";
import { changeInWords } from "../../../src/components/conclude/change-in-words.ts";
import { findingOf } from "../../../src/components/conclude/finding.ts";
import { freeTable } from "../../engine/deduction/free-table.ts";
import { HOSTILE, uneven } from "../../engine/deduction/hostile-paper.ts";

test("nothing is found, and the reader is told why and what to do", () => {
  const { ions, said, letters } = HOSTILE;
  const of = { table: freeTable(ions, letters, said, uneven), names: {}, record: {} };
  expect(findingOf(of)).toBeUndefined();
  expect(TOO_MUCH).toMatch(/too many statements .* leave some out/);
  expect(changeInWords(of, { A: {} })).toMatch(/^the paper makes too many statements .*[^.]$/);
});
