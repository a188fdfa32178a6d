import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { builtSite } from "../build-output/pages.ts";
import { openPage } from "./setup/open-page.ts";

const walkthroughs = builtSite().pages.flatMap(
  ({ file }) => file.match(/^practicals\/(?!map\/)[^/]+\/(?=index\.html$)/)?.[0] ?? [],
);

test("there are walkthroughs to print", () => {
  expect(walkthroughs.length).toBeGreaterThanOrEqual(2);
});

test.each(walkthroughs)("/%s prints", async (path) => {
  const { page } = await openPage(path);
  await readToTheEnd(page);
  const paper = await page.pdf({ preferCSSPageSize: true });
  expect(paper.subarray(0, 5).toString()).toBe("%PDF-");
  const sheets = paper.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
  expect(sheets).toBeGreaterThan(1);
  // The longest, with a note beside every part, takes 17 sheets; more than that nobody would print.
  expect(sheets).toBeLessThan(18);
});

test.each(walkthroughs)("/%s is a sheet of paper: no navigation, the record in words, whole rows", async (path) => {
  const { page } = await openPage(path);
  await readToTheEnd(page);
  for (const name of ["Site", "Parts of the job"]) {
    expect(await page.getByRole("navigation", { name }).isVisible()).toBe(true);
  }
  expect(await page.getByRole("button").count()).toBeGreaterThan(0);

  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("navigation").count()).toBe(0);
  expect(await page.getByRole("button").count()).toBe(0);
  expect(await page.getByRole("combobox").count()).toBe(0);

  const record = page.getByRole("region", { name: /^Record/ }).getByRole("table");
  expect(await record.isVisible()).toBe(true);
  expect((await record.allInnerTexts())[0]).toMatch(/precipitate|effervescence/);
  const rows = page.locator("tr");
  expect(await rows.count()).toBeGreaterThan(20);
  const breaks = await rows.evaluateAll((all) => [...new Set(all.map((row) => getComputedStyle(row).breakInside))]);
  expect(breaks).toEqual(["avoid"]);
});
