/** A walkthrough, an ion test and one's own paper for those who use the keyboard alone, a page twice as large, forced colours, or no script. */
import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { openPage } from "./setup/open-page.ts";

const PAGES = [
  { path: "practicals/lamp-room-shelf/", heading: /lamp room/i },
  { path: "ion-tests/silver-nitrate/", heading: /silver nitrate/i },
  { path: "paper/", heading: /your own paper/i },
];

const open = async (path: string, width = 1280, height = 800) => {
  const { page } = await openPage(path, { width, height });
  await readToTheEnd(page);
  return page;
};

/** Where the focus stands, and what of it a reader would miss. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return undefined;
    const box = at.getBoundingClientRect();
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    const what = `${at.tagName.toLowerCase()} “${(at.getAttribute("aria-label") ?? at.textContent ?? "").trim().slice(0, 40)}”`;
    const faults = [];
    if (outlineStyle === "none" || Number.parseFloat(outlineWidth) < 1) faults.push(`${what} shows no focus`);
    if (box.bottom <= 0 || box.top >= innerHeight) faults.push(`${what} has the focus out of sight`);
    // Counted in the order of the document: a step back is a jump a reader does not expect.
    const order = [...document.querySelectorAll("*")].indexOf(at);
    return { what, faults, order };
  });

describe("by keyboard alone", () => {
  test.each(PAGES)("Tab walks /$path from the skip link to its end, always in sight", async ({ path }) => {
    const page = await open(path);
    await page.keyboard.press("Tab");
    expect((await focused(page))?.what).toContain("Skip to the page");
    const faults: string[] = [];
    let last = -1;
    let steps = 0;
    for (; steps < 600; steps++) {
      const now = await focused(page);
      // After the last stop the focus leaves the page.
      if (!now || (now.order < last && now.what.includes("Skip to the page"))) break;
      faults.push(...now.faults);
      if (now.order <= last) faults.push(`${now.what} stands before what had the focus before it`);
      last = now.order;
      await page.keyboard.press("Tab");
    }
    expect(faults).toEqual([]);
    expect(steps).toBeGreaterThan(10);
    expect(steps).toBeLessThan(600);
  });

  test.each(PAGES)("the skip link of /$path leads past the navigation", async ({ path }) => {
    const page = await open(path);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("content");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.closest("main") !== null)).toBe(true);
  });
});

describe("at 200 %", () => {
  // A window of 1280 by 800 pixels holds half as many twice as large (WCAG 2.2, 1.4.4 and 1.4.10).
  const LARGE = [640, 400] as const;

  test.each(PAGES)("/$path needs no pushing sideways, and none of its text is cut off", async ({ path, heading }) => {
    const page = await open(path, ...LARGE);
    expect(await page.getByRole("heading", { level: 1, name: heading }).isVisible()).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    const cut = await page.locator("main :is(p, li, td, th, h2, h3, button, summary, label)").evaluateAll((all) =>
      all
        .filter(
          (one) => !one.closest(".vh, .scroll, details:not([open])") && getComputedStyle(one).overflow === "hidden",
        )
        .filter((one) => one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1)
        .map((one) => one.textContent?.slice(0, 60)),
    );
    expect(cut).toEqual([]);
  });

  test("a record is changed and concluded from", async () => {
    const page = await open(PAGES[0].path, ...LARGE);
    await page.getByRole("combobox", { name: "c(ii) for R", exact: true }).selectOption({ label: "no visible change" });
    const conclude = page.getByRole("region", { name: /^Conclude/ });
    await expect
      .poll(() => conclude.getByRole("listitem").allTextContents())
      .toContain("R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.");
  });
});

describe("in forced colours", () => {
  /** How many different colours a picture of the element shows: what has vanished shows one. */
  async function colours(page: Page, of: Locator): Promise<number> {
    const picture = (await of.screenshot()).toString("base64");
    return page.evaluate(async (png) => {
      const bytes = Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
      const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext(
        "2d",
      ) as OffscreenCanvasRenderingContext2D;
      context.drawImage(bitmap, 0, 0);
      const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
      return new Set(new Uint32Array(data.buffer)).size;
    }, picture);
  }

  test.each(PAGES)("text and edges of controls on /$path can be seen", async ({ path }) => {
    const page = await open(path);
    await page.emulateMedia({ forcedColors: "active" });
    const controls = page
      .getByRole("main")
      .locator("button:enabled, select:enabled, input:enabled, a")
      .filter({ visible: true });
    const count = await controls.count();
    expect(count).toBeGreaterThan(5);
    for (let at = 0; at < Math.min(count, 12); at++) {
      expect(await colours(page, controls.nth(at)), (await controls.nth(at).textContent()) ?? "").toBeGreaterThan(1);
    }
  });

  test("the marks of the evidence and the drawn tubes keep their shapes", async () => {
    const page = await open(PAGES[0].path);
    await page.emulateMedia({ forcedColors: "active" });
    // A cell that was changed says so in words as well.
    await page.getByRole("combobox", { name: "c(ii) for R", exact: true }).selectOption({ label: "no visible change" });
    await page.getByText("changed", { exact: true }).first().waitFor();
    const grid = page.getByRole("grid", { name: "Evidence for R" });
    for (const name of ["fits", "clashes"]) {
      const mark = grid.getByRole("gridcell", { name }).first();
      expect(await colours(page, mark), name).toBeGreaterThan(1);
    }
    expect(await colours(page, page.locator(".rack svg").first())).toBeGreaterThan(2);
  });
});

describe("without script", () => {
  test("an ion test reads whole, with what every ion shows", async () => {
    const { page } = await openPage(PAGES[1].path, { javaScriptEnabled: false });
    const table = page.getByRole("table").first();
    expect(await table.isVisible()).toBe(true);
    expect((await table.allInnerTexts())[0]).toMatch(/white precipitate/);
    expect(await page.getByRole("main").getByRole("button").count()).toBe(0);
  });

  test("one's own paper says what it needs, and where the same can be read", async () => {
    const { page } = await openPage(PAGES[2].path, { javaScriptEnabled: false });
    const told = page.locator("noscript p", { hasText: "needs JavaScript" });
    expect(await told.isVisible()).toBe(true);
    expect(await told.getByRole("link", { name: "practicals" }).isVisible()).toBe(true);
  });

  test.each(["keep/", "practicals/lamp-room-shelf/link/", "booklet/"])("/%s says so", async (path) => {
    const { page } = await openPage(path, { javaScriptEnabled: false });
    expect(await page.locator("noscript p").first().isVisible()).toBe(true);
  });
});
