import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { builtSite } from "../build-output/pages.ts";
import { openPage } from "./setup/open-page.ts";

const PHONE = { width: 360, height: 740 };

/** How far the page can be pushed sideways, in CSS pixels, after trying. */
const sideways = (page: Page) =>
  page.evaluate(() => {
    window.scrollTo(1000, window.scrollY);
    return Math.max(window.scrollX, document.documentElement.scrollWidth - document.documentElement.clientWidth);
  });

const paths = builtSite().pages.map(({ file }) =>
  file === "404.html" ? "no-such-page/" : file.replace(/index\.html$/, ""),
);

/** Some two hundred pages, one after the other: a second for each leaves room on a slow machine. */
test("no page can be pushed sideways on a narrow phone", { timeout: paths.length * 1000 }, async () => {
  expect(paths.length).toBeGreaterThan(10);
  const [first, ...rest] = paths;
  const { page } = await openPage(first, { ...PHONE, status: first === "no-such-page/" ? 404 : 200 });
  const wide: string[] = [];
  const measure = async (path: string) => {
    await readToTheEnd(page);
    const pixels = await sideways(page);
    if (pixels > 0) wide.push(`/${path}: ${pixels} px`);
  };
  await measure(first);
  for (const path of rest) {
    await page.goto(new URL(path, page.url().replace(/\/any\/where\/.*/, "/any/where/")).href);
    await measure(path);
  }
  expect(wide).toEqual([]);
});

test("nor does using it make a walkthrough wider", async () => {
  const { page } = await openPage("practicals/lamp-room-shelf/", PHONE);
  await readToTheEnd(page);
  for (const summary of await page.locator("summary").all()) await summary.click();
  await page.getByRole("combobox", { name: "b(ii) for R" }).selectOption({ label: "precipitate remains" });
  await page.getByText("Repeat first.").waitFor();
  await page.getByRole("grid", { name: "Evidence for R" }).getByRole("gridcell", { name: "clashes" }).first().click();
  await page.getByText(/ at \S+: clashes\. Seen: /).waitFor();
  expect(await sideways(page)).toBe(0);
});

test("nor does changing a curve make its page wider", async () => {
  const { page } = await openPage("practicals/lamp-room-shelf/curves/", PHONE);
  await readToTheEnd(page);
  const curve = page.locator("figure.curve").first();
  await curve.getByRole("combobox").selectOption("Fe(NO3)3");
  await curve.getByRole("heading", { name: /iron\(III\)/ }).waitFor();
  await curve.getByRole("slider", { name: /^Look along/ }).press("ArrowRight");
  for (const summary of await page.locator("summary").all()) await summary.click();
  expect(await sideways(page)).toBe(0);
});

test("the measure itself notices a page that is too wide", async () => {
  const { page } = await openPage("", PHONE);
  await page.getByRole("heading", { level: 1 }).evaluate((heading) => {
    heading.style.width = "500px";
  });
  expect(await sideways(page)).toBeGreaterThan(100);
});
