import { describe, expect, test } from "vitest";
import { editionFolder, editionsOf, siteLanguages } from "../../src/build/languages.ts";

describe("the languages of a site", () => {
  test("are the department's, unless the environment names one", () => {
    expect(siteLanguages({}, { languages: ["de", "en-GB"] })).toEqual(["de", "en-GB"]);
    expect(siteLanguages({ IONWRIGHT_LANGUAGE: "" }, { languages: ["en-GB"] })).toEqual(["en-GB"]);
    expect(siteLanguages({ IONWRIGHT_LANGUAGE: "de" }, { languages: ["en-GB"] })).toEqual(["de"]);
  });

  test.each(["fr", "EN-GB", "de-AT", "constructor"])("%s is refused, with those there are", (tag) => {
    expect(() => siteLanguages({ IONWRIGHT_LANGUAGE: tag }, { languages: ["en-GB"] })).toThrow(
      `IONWRIGHT_LANGUAGE is "${tag}". Give one of en-GB, de.`,
    );
  });
});

test("the first stands at the base, the others in a folder of their tag", () => {
  expect(editionFolder("en-GB", ["en-GB", "de"])).toBe("");
  expect(editionFolder("de", ["en-GB", "de"])).toBe("de/");
  expect(editionFolder("de", ["de"])).toBe("");
});

describe("a page in every language", () => {
  const both = [
    { language: "en-GB", name: "English", path: "/lab/ions/zinc/" },
    { language: "de", name: "Deutsch", path: "/lab/de/ions/zinc/" },
  ];

  test.each([
    ["en-GB", "/lab", "/lab/ions/zinc/"],
    ["en-GB", "/lab/", "/lab/ions/zinc/"],
    ["de", "/lab/de/", "/lab/de/ions/zinc/"],
  ] as const)("from %s under %s", (language, base, path) => {
    expect(editionsOf(path, base, ["en-GB", "de"], language)).toEqual(
      both.map((one) => ({ ...one, here: one.language === language })),
    );
  });

  test("is told of only where there are several", () => {
    expect(editionsOf("/ions/zinc/", "/", ["de"], "de")).toEqual([]);
  });
});
