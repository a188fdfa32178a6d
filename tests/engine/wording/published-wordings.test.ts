/** The words of the boards' published tables are read as what the same tables say as data (tests/reference/qualitative-tables.json). */
import { expect, test } from "vitest";
import {
  compareWordings,
  misread,
  type PublishedWording,
  publishedWordings,
} from "../../verification/published-wordings.ts";
import { publishedRows } from "../../verification/qualitative-rows.ts";

const wordings = publishedWordings();

/** Advice; gases without the words of a sign; sights of an organic layer or of a ring, which a record has no place for. */
const WORDLESS = ["Q078", "Q081", "Q091", "Q095", "Q096", "Q100", "Q113", "Q114", "Q117", "Q250"];

test("all but a few rows have words for a sight", () => {
  const worded = new Set(wordings.map(({ id }) => id));
  expect(publishedRows.filter(({ id }) => !worded.has(id)).map(({ id }) => id)).toEqual(WORDLESS);
  expect(wordings.length).toBeGreaterThan(350);
});

test("every wording that is not read has a written reason", () => {
  const { compared, agreed, misses } = compareWordings();
  expect(misses.filter(({ reason }) => reason === undefined)).toEqual([]);
  expect(agreed + misses.length).toBe(compared);
  expect(misses.length).toBeLessThan(compared / 20);
});

test("the comparison itself notices a reading that says another thing", () => {
  const wrong = wordings.flatMap((wording): PublishedWording[] =>
    wording.means.precipitate
      ? [{ ...wording, standsFor: [], means: { ...wording.means, precipitate: { colour: "black", slight: false } } }]
      : wording.means.flame
        ? [{ ...wording, standsFor: [], means: { flame: "black" } }]
        : [],
  );
  expect(wrong.length).toBeGreaterThan(100);
  expect(wrong.filter((wording) => misread(wording) === undefined)).toEqual([]);
});
