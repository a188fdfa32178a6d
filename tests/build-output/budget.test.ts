import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { weigh } from "./bytes.ts";
import { builtSite, imaginedSite } from "./pages.ts";

/** For a first visit on a slow school network; raise one only in the change that needs it, with the reason. */
const BUDGET = { total: 40_000, javaScript: 20_000, requests: 8 };

test("every walkthrough stays within its budget of bytes and requests", () => {
  const site = builtSite();
  const walkthroughs = site.pages.filter(({ file }) => /^practicals\/[^/]+\/index\.html$/.test(file));
  expect(walkthroughs.length).toBeGreaterThan(0);
  const over = walkthroughs.flatMap((page) => {
    const weight = weigh(site, page);
    const kinds = (Object.keys(BUDGET) as (keyof typeof BUDGET)[]).filter((kind) => weight[kind] > BUDGET[kind]);
    return kinds.map((kind) => `${page.file}: ${kind} ${weight[kind]}, budget ${BUDGET[kind]}`);
  });
  expect(over).toEqual([]);
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
