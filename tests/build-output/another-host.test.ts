/** The site once more, as a department hosts it at the root of a host of its own: no base path, and the host known at build. */
import { join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { type ServedSite, serve } from "../../scripts/serve.ts";
import { buildApart } from "../browser/setup/build-apart.ts";
import { openPage } from "../browser/setup/open-page.ts";
import { brokenLinks } from "./links.ts";
import { markupFaults } from "./markup.ts";
import { addressOf, type BuiltPage, builtSite, type Site } from "./pages.ts";

const FOLDER = join(".cache", "site-at-root");
const HOST = "https://school.example";

let site: Site;
let served: ServedSite;
beforeAll(async () => {
  await buildApart(FOLDER, { IONWRIGHT_BASE: "/", IONWRIGHT_SITE: HOST, IONWRIGHT_DEPARTMENT: "" });
  const dist = resolve(FOLDER);
  site = builtSite({ base: "/", dist });
  served = await serve({ port: 0, base: "/", dist });
}, 600_000);
afterAll(() => served?.close());

const isFramed = ({ file }: BuiltPage) => file.startsWith("embed/");
const indexed = () => site.pages.filter((page) => page.file !== "404.html" && !isFramed(page));

test("links and markup hold at the root as they do under a base path", () => {
  expect(brokenLinks(site)).toEqual([]);
  expect(markupFaults(site)).toEqual([]);
});

test("every page but the one for lost addresses says its one address, and the sitemap lists just these", () => {
  const canonical = indexed().map(({ document }) =>
    document.querySelector('link[rel="canonical"]')?.getAttribute("href"),
  );
  const expected = indexed().map((page) => HOST + addressOf(site, page).pathname);
  expect(canonical).toEqual(expected);
  expect(
    site.pages.find(({ file }) => file === "404.html")?.document.querySelector('link[rel="canonical"]'),
  ).toBeNull();

  const listed = [
    ...site
      .read("sitemap-0.xml")
      .toString()
      .matchAll(/<loc>([^<]+)<\/loc>/g),
  ].map(([, address]) => address);
  expect(listed.sort()).toEqual(expected.sort());
  expect(site.read("sitemap-index.xml").toString()).toContain(`${HOST}/sitemap-0.xml`);
});

test("a page for frames keeps out of search engines and names the walkthrough as the place to go", () => {
  const framed = site.pages.filter(isFramed);
  expect(framed.length).toBeGreaterThan(10);
  for (const { file, document } of framed) {
    expect(document.querySelector('meta[name="robots"]')?.getAttribute("content"), file).toBe("noindex");
    const practical = file.split("/")[1];
    const canonical = document.querySelector('link[rel="canonical"]')?.getAttribute("href");
    expect(canonical, file).toBe(`${HOST}/practicals/${practical}/`);
  }
});

test("a record is changed and concluded from, and search answers", async () => {
  const { page } = await openPage("practicals/lamp-room-shelf/", { site: served.address });
  await readToTheEnd(page);
  await page.getByRole("combobox", { name: "c(ii) for R", exact: true }).selectOption({ label: "no visible change" });
  const conclude = page.getByRole("region", { name: /^Conclude/ });
  await expect
    .poll(() => conclude.getByRole("listitem").allTextContents())
    .toContain("R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.");

  const { page: search } = await openPage("search/", { site: served.address });
  await search.getByRole("combobox", { name: /^A word/ }).fill("silver nitrate");
  await search.keyboard.press("Enter");
  await search.getByRole("status").filter({ hasText: "silver nitrate" }).waitFor();
  expect(await search.getByRole("status").textContent()).toMatch(/^\d+ pages for/);
});

test("the headers of the host go with every answer", async () => {
  const home = await fetch(served.address);
  expect(home.headers.get("content-security-policy")).toBe("frame-ancestors 'self'");
  expect(home.headers.get("referrer-policy")).toBe("no-referrer");
  expect(site.read("_headers").toString()).toContain(
    "/practicals/*\n  Content-Security-Policy: frame-ancestors 'self'",
  );
  const framed = await fetch(new URL("embed/lamp-room-shelf/record/", served.address));
  expect(framed.status).toBe(200);
  expect(framed.headers.get("content-security-policy")).toBeNull();
  const lost = await fetch(new URL("nowhere/", served.address));
  expect(lost.status).toBe(404);
  expect(lost.headers.get("x-content-type-options")).toBe("nosniff");
});
