import { gzipSync } from "node:zlib";
import { describe, expect, inject, test } from "vitest";
import { weighEngine } from "../../scripts/engine-weight.ts";
import { weigh } from "./bytes.ts";
import { builtSite, imaginedSite } from "./pages.ts";

/** For a first visit on a slow school network; raise one only in the change that needs it, with the reason. */
const BUDGET = { total: 40_000, javaScript: 20_000, requests: 8 };

test("every walkthrough stays within its budget of bytes and requests", () => {
  const site = builtSite();
  const walkthroughs = site.pages.filter(({ file }) => /^practicals\/(?!map\/)[^/]+\/index\.html$/.test(file));
  expect(walkthroughs.length).toBeGreaterThan(0);
  const over = walkthroughs.flatMap((page) => {
    const weight = weigh(site, page);
    const kinds = (Object.keys(BUDGET) as (keyof typeof BUDGET)[]).filter((kind) => weight[kind] > BUDGET[kind]);
    return kinds.map((kind) => `${page.file}: ${kind} ${weight[kind]}, budget ${BUDGET[kind]}`);
  });
  expect(over).toEqual([]);
});

/** The engine that draws a changed curve, loaded when a reader first changes one: the worker, and the page's own end of the talk. */
const ENGINE_BUDGET = { worker: 70_000, desk: 9_000 };

test("the engine in its worker stays within its budget", () => {
  const weight = weighEngine(inject("builtSite").dist);
  expect(weight.worker).toBeLessThanOrEqual(ENGINE_BUDGET.worker);
  expect(weight.desk).toBeLessThanOrEqual(ENGINE_BUDGET.desk);
});

/** A page of curves is read by those who ask why: the longest papers of the course draw seven, each some 3 kB of points and figures. */
const CURVES_TOTAL = 46_000;

/**
 * The order of work by itself, in script and requests: 22 012 B and 9 now, what draws and times it at once among them. It is above a
 * walkthrough's own budget since its words were set apart by language and it tells what of a plan is explosive or emptied with another reagent.
 */
const ORDER_BUDGET = { javaScript: 22_300, requests: 9 };

test("the map of practicals, with its marks of what has been practised, stays light too", () => {
  const site = builtSite();
  const [map] = site.pages.filter(({ file }) => file === "practicals/map/index.html");
  const weight = weigh(site, map);
  expect(weight.total).toBeLessThanOrEqual(BUDGET.total);
  expect(weight.javaScript).toBeLessThanOrEqual(BUDGET.javaScript);
  // Two more than a walkthrough: the marks are small scripts of their own.
  expect(weight.requests).toBeLessThanOrEqual(10);
});

test.each(["curves", "order", "class", "unknowns"])(
  "a page of %s loads little more than a walkthrough before it is touched",
  (kind) => {
    const site = builtSite();
    const pages = site.pages.filter(
      ({ file }) => file.startsWith("practicals/") && file.endsWith(`/${kind}/index.html`),
    );
    expect(pages.length).toBeGreaterThan(0);
    for (const page of pages) {
      const weight = weigh(site, page);
      expect.soft(weight.total, page.file).toBeLessThanOrEqual(kind === "curves" ? CURVES_TOTAL : BUDGET.total);
      const { javaScript, requests } = kind === "order" ? ORDER_BUDGET : BUDGET;
      expect.soft(weight.javaScript, page.file).toBeLessThanOrEqual(javaScript);
      expect.soft(weight.requests, page.file).toBeLessThanOrEqual(requests);
    }
  },
);

/** A practice from the first tube to the marks: what starts with the page, and what is fetched to mark it all. */
// 44 676 measured, some 10 500 of them fetched to mark it all. It began with 40 000: since then sentences were set apart by language, the reader
// of records learned to notice hedged answers, contradicting signs of gases, colours that stay or go, and reagents that are named, and what is
// undecided is counted over pairs of partitions where a paper ties many samples together (2 400).
const PRACTICE_BUDGET = { javaScript: 45_000, total: 60_000 };

test("a practice stays within its budget, marking included", () => {
  const site = builtSite();
  const pages = site.pages.filter(({ file }) => /^practicals\/[^/]+\/practice\/index\.html$/.test(file));
  expect(pages.length).toBeGreaterThan(0);
  const marking = [...site.files].filter((file) => /\/Result\.[^/]+\.js$/.test(`/${file}`));
  expect(marking).toHaveLength(1);
  for (const page of pages) {
    const weight = weigh(site, page, marking);
    expect.soft(weight.javaScript, page.file).toBeLessThanOrEqual(PRACTICE_BUDGET.javaScript);
    expect.soft(weight.total, page.file).toBeLessThanOrEqual(PRACTICE_BUDGET.total);
  }
});

describe("the scales themselves", () => {
  const zipped = (text: string) => gzipSync(text).length;
  const files = {
    "a.css": "p{margin:0}",
    "island.js": 'import"./shared.js";const later=()=>import("./later.js");export{later as default}',
    "client.js": 'export{x}from"./shared.js";',
    "shared.js": "export const x=1;",
    "later.js": "export const big=1;",
    "unused.js": "never named",
  };
  const html =
    '<link rel="stylesheet" href="/lab/a.css"><script>start()</script>' +
    '<astro-island component-url="/lab/island.js" renderer-url="/lab/client.js"></astro-island>' +
    '<astro-island component-url="/lab/island.js" renderer-url="/lab/client.js"></astro-island>';

  test("count each file once, follow static imports, and leave out what loads on demand", () => {
    const site = imaginedSite("/lab/", { ...files, "index.html": html });
    const scripts = zipped(files["island.js"]) + zipped(files["client.js"]) + zipped(files["shared.js"]);
    expect(weigh(site, site.pages[0])).toEqual({
      html: zipped(html),
      css: zipped(files["a.css"]),
      javaScript: scripts + zipped("start()"),
      total: zipped(html) + zipped(files["a.css"]) + scripts,
      requests: 5,
    });
  });
});
