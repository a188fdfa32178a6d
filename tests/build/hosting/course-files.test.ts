import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { courseFile, courseList, editionOf, isKept } from "../../../src/build/hosting/course-files.ts";
import { isCourseList, isEdition } from "../../../src/components/keep/course-edition.ts";

const content = (text: string) => new TextEncoder().encode(text);

test.each([
  ["index.html", true],
  ["practicals/shed-two-tins/index.html", true],
  ["_astro/page.css", true],
  ["pagefind/index/en_1.pf_index", true],
  ["_headers", false],
  ["sitemap-0.xml", false],
  ["embed/shed-two-tins/record/index.html", false],
  ["take-away/shed-two-tins.html", false],
  ["sw.js", false],
  ["edition.json", false],
  ["course-files.json", false],
])("%s is kept: %s", (file, kept) => {
  expect(isKept(file)).toBe(kept);
});

describe("the list", () => {
  const files = [
    courseFile("method/index.html", content("<h1>Method</h1>")),
    courseFile("index.html", content("abc")),
    courseFile("404.html", content("")),
  ];

  test("names pages by the address they are asked for, with hash and size, in order", () => {
    const { list, files: count, bytes } = courseList(files);
    expect(list.map(({ path }) => path)).toEqual(["", "404.html", "method/"]);
    expect([count, bytes]).toEqual([3, 18]);
    // SHA-256 of "abc" in base 64: FIPS 180-2, appendix B.1, gives ba7816bf ... f20015ad.
    const abc = Buffer.from("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", "hex");
    expect(list[0].hash).toBe(`sha256-${abc.toString("base64")}`);
  });

  test("is another edition as soon as one file is another, and the same for the same files in any order", () => {
    const { version } = courseList(files);
    expect(courseList(files.toReversed()).version).toBe(version);
    expect(courseList([...files.slice(1), courseFile("method/index.html", content("x"))]).version).not.toBe(version);
    expect(courseList(files.slice(1)).version).not.toBe(version);
  });

  test("passes the guards that a browser holds it against, which refuse one that was tampered with", () => {
    const list = courseList(files);
    expect(isCourseList(JSON.parse(JSON.stringify(list)))).toBe(true);
    expect(isEdition(editionOf(list))).toBe(true);
    const hash = `sha256-${createHash("sha256").digest("base64")}`;
    for (const path of ["//elsewhere.invalid/", "https://elsewhere.invalid/", "/etc", "a?b", "a#b"]) {
      expect(isCourseList({ ...list, list: [{ path, hash, bytes: 1 }] }), path).toBe(false);
    }
    expect(isEdition({ ...editionOf(list), version: "newest" })).toBe(false);
  });
});
