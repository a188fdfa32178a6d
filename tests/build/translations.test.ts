/** Practicals in other languages: each stands in for one of ours, with its chemistry to the last drop, and says all of it anew. */
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { foreignLanguage } from "../../src/build/languages.ts";
import { readPage, readPracticalFile } from "../../src/build/practical-files.ts";
import { practicalName, practicalPaths, SHIPPED, translatedFolder } from "../../src/build/practical-paths.ts";
import type { Practical } from "../../src/engine/practical.ts";
import { TAGS } from "../../src/words/tags.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const translated = TAGS.slice(1).flatMap((tag) => practicalPaths(ROOT, translatedFolder(tag)));

function practicalIn(path: string): Practical {
  const file = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in file) throw new Error(`${path} cannot be read`);
  return file.practical;
}

/** What is said in words; the rest is the language of practicals, the same in every tongue. */
const SAID = ["title", "summary", "note", "says", "closing"];
const withoutWords = (practical: Practical): unknown =>
  JSON.parse(JSON.stringify(practical, (key, value) => (SAID.includes(key) ? undefined : value)));
const words = (practical: Practical): string[] => {
  const found: string[] = [];
  JSON.stringify(practical, (key, value) => {
    if (SAID.includes(key)) found.push(value);
    return value;
  });
  return found;
};

test("there is one at least", () => {
  expect(translated).not.toEqual([]);
});

describe.each(translated)("%s", (path) => {
  const ours = practicalIn(`${SHIPPED}/${practicalName(path)}.mdx`);
  const own = practicalIn(path);

  test("is the same practical", () => {
    expect(withoutWords(own)).toEqual(withoutWords(ours));
  });

  test("says everything in its own words", () => {
    expect(words(own)).toHaveLength(words(ours).length);
    expect(words(own).filter((text) => words(ours).includes(text))).toEqual([]);
  });
});

test("in the language of the course nothing is foreign", () => {
  expect(foreignLanguage("src/content/method/recording.mdx")).toBeUndefined();
  expect(foreignLanguage(undefined)).toBeUndefined();
});
