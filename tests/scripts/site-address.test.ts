import { expect, test } from "vitest";
import { siteAddress } from "../../scripts/site-address.ts";

test("without settings the site stands at the root of an unnamed host", () => {
  expect(siteAddress({})).toEqual({ base: "/", site: undefined });
});

test.each([
  ["", "/"],
  ["/", "/"],
  ["chemistry", "/chemistry/"],
  ["/chemistry", "/chemistry/"],
  ["/science/chemistry/", "/science/chemistry/"],
])("the base path %j becomes %s", (given, base) => {
  expect(siteAddress({ IONWRIGHT_BASE: given }).base).toBe(base);
});

test.each(["/a b/", "https://school.example/chemistry", "../up", "/a?b"])("the base path %j is refused", (given) => {
  expect(() => siteAddress({ IONWRIGHT_BASE: given })).toThrow(`IONWRIGHT_BASE is "${given}"`);
});

test("the host is kept without its path", () => {
  expect(siteAddress({ IONWRIGHT_SITE: "https://school.example/x/" }).site).toBe("https://school.example");
});

test.each(["school.example", "ftp://school.example", "//school.example"])("the host %j is refused", (given) => {
  expect(() => siteAddress({ IONWRIGHT_SITE: given })).toThrow(`IONWRIGHT_SITE is "${given}"`);
});
