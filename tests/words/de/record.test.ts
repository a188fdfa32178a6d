/** The record of a walkthrough in German: the same functions with the words of another language. */
import { expect, test } from "vitest";
import { fromAddress, toAddress } from "../../../src/components/record/address.ts";
import { inWords } from "../../../src/components/record/in-words.ts";
import { SOMETHING_ELSE } from "../../../src/engine/deduction/something-else.ts";

const sheet = {
  samples: [{ label: "K" }],
  cells: [{ id: "a(i)", samples: ["K"], words: ["weißer Niederschlag", "keine sichtbare Veränderung"] }],
};

test("an address holds the record in the words of its page, and is read again", () => {
  const own = { record: { K: { "a(i)": 0 } }, own: true };
  const address = toAddress(sheet, {}, own);
  expect(decodeURIComponent(address)).toBe("record=own&K.a.i=weißer+Niederschlag");
  expect(fromAddress(sheet, {}, address)).toEqual({ ...own, faults: [] });
});

test("what is no sight of the list is said in German", () => {
  expect(fromAddress(sheet, {}, "K.a.i=white+precipitate").faults).toEqual([
    "a(i) für K: gefunden „white precipitate“, erwartet wird eine Beobachtung aus der Liste.",
  ]);
});

test("what was not done, and what is on no list", () => {
  expect(inWords(sheet.cells[0], undefined)).toBe("nicht durchgeführt");
  expect(inWords(sheet.cells[0], SOMETHING_ELSE)).toBe("etwas anderes");
});
