/** The catalogue: every language has every entry, of the same kind, in words of its own. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CATALOGUES } from "../../src/words/languages.ts";
import { LANGUAGES, TAGS } from "../../src/words/tags.ts";
import { ROOT } from "../architecture/source-files.ts";

const FOLDER = join(ROOT, "src/words");

test("each language has its folder, its catalogue and its condition in package.json", async () => {
  const folders = readdirSync(FOLDER, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []));
  expect(folders.sort()).toEqual([...TAGS].sort());
  expect(Object.keys(CATALOGUES).sort()).toEqual([...TAGS].sort());
  const { imports } = (await import("../../package.json")).default;
  const [first, ...others] = TAGS;
  expect(imports["#words/*"]).toEqual({
    ...Object.fromEntries(others.map((tag) => [tag, `./src/words/${tag}/*`])),
    default: `./src/words/${first}/*`,
  });
});

test("tags and names are those of the Unicode locale data", () => {
  for (const tag of TAGS) {
    expect(Intl.getCanonicalLocales(tag)).toEqual([tag]);
    const named = new Intl.DisplayNames([tag], { type: "language", languageDisplay: "standard" }).of(tag.split("-")[0]);
    expect(LANGUAGES[tag].name).toBe(named);
  }
});

/** What each language says, one entry a line: the room, the entry and its text, or the names of what a function takes. */
function entries(tag: keyof typeof CATALOGUES): Map<string, unknown> {
  const found = new Map<string, unknown>();
  const walk = (path: string, value: unknown): void => {
    if (typeof value === "object" && value !== null && !(value instanceof RegExp)) {
      for (const [key, inner] of Object.entries(value)) walk(`${path}.${key}`, inner);
    } else found.set(path, value);
  };
  for (const [room, words] of Object.entries(CATALOGUES[tag])) walk(room, { ...words });
  return found;
}

describe.each(TAGS)("%s", (tag) => {
  test("lists every room, each a file of its folder", () => {
    // A language may need more files than rooms: German a list of what its words mean to the reader of records.
    const files = readdirSync(join(FOLDER, TAGS[0])).filter((name) => name !== "index.ts");
    expect(readdirSync(join(FOLDER, tag))).toEqual(expect.arrayContaining(files));
    const rooms = Object.keys(CATALOGUES[tag]).map(
      (room) => `${room.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}.ts`,
    );
    expect(rooms.sort()).toEqual(files.sort());
  });

  test("has every entry that English has, tables with as many rows", () => {
    const own = entries(tag);
    expect([...entries(TAGS[0]).keys()].filter((entry) => !own.has(entry))).toEqual([]);
  });

  test("no text is empty, doubled in its spaces or wrapped in tags", () => {
    for (const [entry, text] of entries(tag)) {
      if (typeof text !== "string") continue;
      expect.soft(text, entry).not.toMatch(/ {2}|^$|<\/?[a-z]/);
    }
  });
});
