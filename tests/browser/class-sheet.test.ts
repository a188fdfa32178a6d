/** The preparation sheet as a technician uses it: another class, a link, a slip of the finger, paper. */
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { builtSite } from "../build-output/pages.ts";
import { openPage } from "./setup/open-page.ts";

const SHEET = "practicals/lamp-room-shelf/class/";
const sheets = builtSite().pages.flatMap(
  ({ file }) => file.match(/^practicals\/[^/]+\/class\/(?=index\.html$)/)?.[0] ?? [],
);

/** All words of the page, a no-break space read as a space. */
const words = async (page: Page) => ((await page.locator("main").textContent()) ?? "").replace(/\u00a0/g, " ");

const rowOf = async (page: Page, table: RegExp, row: RegExp) =>
  ((await page.getByRole("table", { name: table }).getByRole("row", { name: row }).textContent()) ?? "").replace(
    /\u00a0/g,
    " ",
  );

test("every practical has its sheet, and its walkthrough leads there", async () => {
  expect(sheets.length).toBeGreaterThanOrEqual(2);
  const { page } = await openPage("practicals/lamp-room-shelf/");
  await page.getByRole("link", { name: /preparation sheet/ }).click();
  await page.getByRole("heading", { level: 1, name: /^Preparation sheet/ }).waitFor();
  const first = await words(page);
  // The word of warning comes before the first salt.
  expect(first.indexOf("names the salts")).toBeGreaterThan(0);
  expect(first.indexOf("names the salts")).toBeLessThan(first.indexOf("zinc sulfate"));
  expect(first.indexOf("risk assessment")).toBeLessThan(first.indexOf("zinc sulfate"));
});

test("another class: the sheet answers at once, nothing is fetched, and the address keeps it", async () => {
  const { page } = await openPage(SHEET);
  // 12 groups x 1 cm3 x 1.3 = 15.6 cm3 wanted, 50 cm3 made: 0.05 x 0.05 x 169.87 = 0.42 g
  expect(await rowOf(page, /^For all bottles/, /silver nitrate/)).toContain("0.42 g");
  // The sheet's own script may still be on its way.
  await page.waitForLoadState("networkidle");
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.getByRole("textbox", { name: /Number of groups/ }).fill("60");
  await page.getByText("60 groups").waitFor();
  // 60 groups: bottles of 2 cm3 take 120, made up to 125: 0.125 x 0.05 x 169.87 = 1.06 g
  expect(await rowOf(page, /^For all bottles/, /silver nitrate/)).toContain("1.06 g");
  expect(await rowOf(page, /^Bottles/, /silver nitrate/)).toContain("60");
  expect(asked).toEqual([]);
  expect(new URL(page.url()).search).toBe("?groups=60");
});

test("a link shows its class again; what in it cannot be is refused in words", async () => {
  const { page } = await openPage(`${SHEET}?groups=8&spare=lots&sample=%3Cb%3E`);
  await page.getByText("8 groups").waitFor();
  const said = await words(page);
  expect(said).toContain("In the link, spare: found “lots”, expected a number from 0 to 200 %.");
  expect(said).toContain("found “<b>”, expected a number from 1 to 500 cm³");
  expect(said).toContain("8 groups, 30 % spare, 6 cm³ of each sample for a group");
});

test("a slip of the finger leaves the sheet as it was, and says so", async () => {
  const { page } = await openPage(SHEET);
  const groups = page.getByRole("textbox", { name: /Number of groups/ });
  await groups.fill("0");
  await page.getByText("Number of groups: found “0”, expected a whole number from 1 to 60.").waitFor();
  expect(await page.getByText("12 groups").isVisible()).toBe(true);
  expect(new URL(page.url()).search).toBe("");
  await groups.fill("10");
  await page.getByText("10 groups").waitFor();
  expect(await page.getByText("Not understood").count()).toBe(0);
});

test.each(["", " ", "twelve", "1e1", "-3", "7.5"])(
  "%o groups is told, and the last good sheet stays, on paper too",
  async (text) => {
    const { page } = await openPage(SHEET);
    const groups = page.getByRole("textbox", { name: /Number of groups/ });
    await groups.fill("20");
    await page.getByText("This sheet is for 20 groups").waitFor();
    await groups.fill(text);
    const found = text.trim() === "" ? "nothing" : `“${text}”`;
    const fault = page.getByText(`Number of groups: found ${found}, expected a whole number from 1 to 60.`);
    await fault.waitFor();
    await page.getByText("This sheet is still for 20 groups").waitFor();
    expect(new URL(page.url()).search).toBe("?groups=20");
    expect(await groups.inputValue()).toBe(text);
    await page.emulateMedia({ media: "print" });
    expect(await fault.isVisible()).toBe(true);
  },
);

test("a link without a number is told", async () => {
  const { page } = await openPage(`${SHEET}?groups=`);
  await page.getByText("In the link, number of groups: found nothing, expected a whole number").waitFor();
});

test("too little of a sample is told", async () => {
  const { page } = await openPage(SHEET);
  await page.getByRole("textbox", { name: /Volume of each sample/ }).fill("3");
  await page.getByText(/The tests use 4.cm³ of S/).waitFor();
});

test("without script the sheet stands for the usual class", async () => {
  const { page } = await openPage(SHEET, { javaScriptEnabled: false });
  expect(await page.getByRole("textbox", { name: /Number of groups/ }).isDisabled()).toBe(true);
  expect(await words(page)).toContain("12 groups, 30 % spare");
});

test.each(sheets)("/%s is a sheet of paper: no fields, no navigation, whole rows, a few pages", async (path) => {
  const { page } = await openPage(path);
  await readToTheEnd(page);
  const paper = await page.pdf({ preferCSSPageSize: true });
  const pages = paper.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
  expect(pages).toBeGreaterThan(1);
  // The longest, with eleven bottles of which most have limits in several sources, takes six.
  expect(pages).toBeLessThan(8);
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("navigation").count()).toBe(0);
  expect(await page.getByRole("textbox").count()).toBe(0);
  const rows = page.locator("tr");
  expect(await rows.count()).toBeGreaterThan(20);
  expect(await rows.evaluateAll((all) => [...new Set(all.map((row) => getComputedStyle(row).breakInside))])).toEqual([
    "avoid",
  ]);
  expect(await page.locator("body").evaluate((body) => getComputedStyle(body).backgroundColor)).toBe(
    "rgb(255, 255, 255)",
  );
});
