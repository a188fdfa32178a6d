/** The whole course as one document: put together in the browser, and printed with page numbers in its contents. */
import { expect, inject, test } from "vitest";
import { pageNumbers } from "../../scripts/booklet/page-numbers.ts";
import { printBooklet } from "../../scripts/booklet.ts";
import { openPage } from "./setup/open-page.ts";

/** A course of two hundred pages is fetched, put together and printed twice. */
const TIMEOUT = 600_000;

test("before it is asked for, the page is its contents, each entry a link to a page", async () => {
  const { page } = await openPage("booklet/");
  const entries = page.getByRole("navigation", { name: "Contents" }).getByRole("link");
  expect(await entries.count()).toBeGreaterThan(50);
  expect(await page.locator("article").count()).toBe(0);
});

test("put together, it holds every page once, and its links lead inside it", { timeout: TIMEOUT }, async () => {
  const { page } = await openPage("booklet/");
  page.setDefaultTimeout(TIMEOUT);
  await page.getByRole("button", { name: "Put all pages together here" }).click();
  await page
    .getByRole("status")
    .filter({ hasText: /^All \d+ pages are here/ })
    .waitFor();
  const entries = page.getByRole("navigation", { name: "Contents" }).getByRole("link");
  expect(await page.locator("article.chapter").count()).toBe(await entries.count());
  const faults = await page.evaluate(() => {
    const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
    const known = new Set(ids);
    const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
    const lost = [...document.querySelectorAll<HTMLAnchorElement>('a[href^="#"]')]
      .map(({ hash }) => decodeURIComponent(hash.slice(1)))
      .filter((id) => id !== "" && !known.has(id));
    const named = [...document.querySelectorAll("[aria-labelledby], [aria-describedby]")].flatMap((one) =>
      `${one.getAttribute("aria-labelledby") ?? ""} ${one.getAttribute("aria-describedby") ?? ""}`.trim().split(/\s+/),
    );
    return {
      twice: [...new Set(twice)],
      lost: [...new Set(lost)],
      unnamed: [...new Set(named.filter((id) => !known.has(id)))],
    };
  });
  expect(faults).toEqual({ twice: [], lost: [], unnamed: [] });
  // A record in words, without what is pressed.
  const lampRoom = page.locator("#practicals-lamp-room-shelf");
  expect(await lampRoom.getByRole("table").first().isVisible()).toBe(true);
  expect(await lampRoom.locator("select, button, astro-island").count()).toBe(0);
});

test("printed, its contents say on which page each chapter begins", { timeout: TIMEOUT }, async () => {
  const { page } = await openPage("");
  const { pdf, numbers } = await printBooklet(page, inject("builtSite").address);
  expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  const shown = await page
    .locator("#contents a")
    .evaluateAll((all) =>
      all.map((one) => [(one as HTMLAnchorElement).hash.slice(1), Number((one as HTMLElement).dataset.page)] as const),
    );
  expect(shown.length).toBeGreaterThan(50);
  // Every chapter begins a page of its own, in the order of the contents, after the contents themselves.
  const pages = shown.map(([, number]) => number);
  expect(pages[0]).toBeGreaterThan(1);
  for (const [at, number] of pages.entries()) if (at > 0) expect(number).toBeGreaterThan(pages[at - 1]);
  expect(shown.map(([name]) => numbers.get(name))).toEqual(pages);
  // The file itself says the same when it is read once more.
  expect(pageNumbers(pdf).get(shown[0][0])).toBe(pages[0]);
});
