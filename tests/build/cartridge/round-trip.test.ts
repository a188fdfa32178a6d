/** What goes into a cartridge comes out of it again. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cartridge } from "../../../src/build/cartridge/cartridge.types.ts";
import { readCartridge } from "../../../src/build/cartridge/read-cartridge.ts";
import { readXml } from "../../../src/build/cartridge/read-xml.ts";
import { writeCartridge } from "../../../src/build/cartridge/write-cartridge.ts";
import { at, element, textOf, writeDocument } from "../../../src/build/cartridge/xml.ts";
import { AWKWARD, HOME, ofCourse } from "./courses.ts";

describe("a cartridge", () => {
  const { cartridge } = ofCourse();

  test.each([
    ["of the course", cartridge],
    ["of awkward texts", AWKWARD],
  ])("%s: links and questions equal what went in", async (_, given: Cartridge) => {
    expect(await readCartridge(writeCartridge(given))).toEqual({ cartridge: given, besides: [] });
  });

  test("the same course gives the same bytes, wherever the clock stands", () => {
    const zone = process.env.TZ;
    const first = writeCartridge(cartridge);
    process.env.TZ = "Pacific/Auckland";
    const second = writeCartridge(cartridge);
    process.env.TZ = zone;
    expect(Buffer.from(second).equals(Buffer.from(first))).toBe(true);
  });

  test("links lead below the course's own address", () => {
    const urls = cartridge.units.flatMap(({ links }) => links.map(({ url }) => url));
    expect(urls.filter((url) => !url.startsWith(`${HOME}practicals/`))).toEqual([]);
    expect(urls).toContain("https://school.example/chemistry/practicals/etching-room/sheets/record/");
    // What names the salts is the teacher's.
    expect(urls.filter((url) => /marks|unknowns|class/.test(url))).toEqual([]);
  });

  test("two parts of one name are refused before anything is written", () => {
    const twice = { ...AWKWARD, units: [...AWKWARD.units, { ...AWKWARD.units[1], title: "Again" }] };
    expect(() => writeCartridge(twice)).toThrow(/would be called practical-c: rename one/);
  });
});

test("any text survives XML, but for the signs XML forbids", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), fc.string({ unit: "binary" }), (text, value) => {
      const kept = (of: string) => of.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "\uFFFD");
      const root = readXml("any.xml", writeDocument(element("a", { b: value }, element("c", {}, text))));
      expect(root.attributes.b).toBe(kept(value));
      expect(textOf(at(root, "c"))).toBe(kept(text));
    }),
    { seed: 7, numRuns: 300 },
  );
});
