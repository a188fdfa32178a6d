import { describe, expect, test } from "vitest";
import { brokenLinks } from "./links.ts";
import { builtSite, imaginedSite } from "./pages.ts";

test("every link and anchor inside the built site leads somewhere", () => {
  const site = builtSite();
  expect(site.pages.length).toBeGreaterThan(1);
  expect(brokenLinks(site)).toEqual([]);
});

describe("the check itself", () => {
  const other = '<h2 id="waste">Waste</h2>';
  const of = (body: string) =>
    brokenLinks(imaginedSite("/lab/", { "a/index.html": body, "b/index.html": other, "style.css": "" }));

  test.each([
    ["/lab/c/", "leads to no page or file."],
    ["../c/", "leads to no page or file."],
    ["/lab/b", "lacks its closing slash."],
    ["/b/", "leaves the site's base path /lab/."],
    ["/lab/b/#burner", 'leads to a page without an element of id "burner".'],
    ["#waste", 'leads to a page without an element of id "waste".'],
    ["http://[", "is no address."],
  ])("reports %s", (address, fault) => {
    expect(of(`<a href="${address}">x</a>`)).toEqual([`a/index.html: "${address}" ${fault}`]);
  });

  test("reports a missing script of an island", () => {
    expect(of('<astro-island component-url="/lab/gone.js"></astro-island>')).toHaveLength(1);
  });

  test.each(["/lab/b/#waste", "../b/", "#", "/lab/style.css", "https://elsewhere.invalid/", "mailto:a@b.invalid"])(
    "is content with %s",
    (address) => {
      expect(of(`<a href="${address}">x</a>`)).toEqual([]);
    },
  );
});
