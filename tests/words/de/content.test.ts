/** Which pages a German site shows: German where there is one, else English, which says so. */
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { coursePaths, leftOut } from "../../../src/build/department/course.ts";
import { foreignLanguage } from "../../../src/build/languages.ts";
import { practicalName } from "../../../src/build/practical-paths.ts";

const ROOT = resolve(import.meta.dirname, "../../..");

test("a practical in German stands in for ours of its name, the others stay", () => {
  const paths = coursePaths(ROOT);
  expect(paths).toContain("src/content/de/practicals/shed-two-tins.mdx");
  expect(paths).toContain("src/content/practicals/lamp-room-shelf.mdx");
  expect(leftOut(ROOT)).toEqual(["src/content/practicals/shed-two-tins.mdx"]);
  const names = paths.map(practicalName);
  expect(new Set(names).size).toBe(names.length);
});

test.each([
  ["src/content/practicals/lamp-room-shelf.mdx", "en-GB"],
  ["src/content/de/practicals/shed-two-tins.mdx", undefined],
  ["department/practicals/quay-store.mdx", undefined],
])("%s is in %s", (file, language) => {
  expect(foreignLanguage(file)).toBe(language);
});
