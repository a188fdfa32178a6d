/** The sheets that are printed: one side where one side is promised, nothing to click, no row broken over two pages. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { builtSite } from "../build-output/pages.ts";
import { openPage } from "./setup/open-page.ts";

const sheets = builtSite().pages.flatMap(
  ({ file }) => file.match(/^practicals\/[^/]+\/sheets\/[^/]+\/(?=index\.html$)/)?.[0] ?? [],
);

test("every practical has its four sheets", () => {
  expect(sheets.length).toBeGreaterThanOrEqual(8);
  expect(sheets.length % 4).toBe(0);
});

/** The smallest type on the page as it is printed, in points. */
function smallestPoints(): number {
  const sizes: number[] = [];
  for (const one of document.querySelectorAll<HTMLElement>("main *")) {
    const own = [...one.childNodes].some(({ nodeType, textContent }) => nodeType === 3 && textContent?.trim());
    if (!own || !one.checkVisibility()) continue;
    let zoom = 1;
    for (let above: Element | null = one; above; above = above.parentElement)
      zoom *= Number(getComputedStyle(above).zoom);
    sizes.push(zoom * Number.parseFloat(getComputedStyle(one).fontSize) * (72 / 96));
  }
  return Math.min(...sizes);
}

test("a card says what keeps people safe, and who decides", async () => {
  const { page } = await openPage("practicals/theatre-cupboard/sheets/bench-card/");
  const safety = (await page.locator(".bench-card .caution").textContent()) ?? "";
  for (const words of ["Goggles on", "Your teacher in charge", "hot tube points away", "down the sink"]) {
    expect(safety).toContain(words);
  }
});

test("a card says what a waste bottle must hold first, and how much", async () => {
  const { page } = await openPage("practicals/salt-works/sheets/bench-card/");
  const bottles = (await page.locator(".bench-card li").allTextContents()).map((text) => text.replace(/\s+/g, " "));
  // As much as the walkthrough says is put into that bottle.
  const { page: walkthrough } = await openPage("practicals/salt-works/");
  const kit =
    (await walkthrough
      .getByText(/Before the first tube, put in .* of dilute nitric acid/)
      .first()
      .textContent()) ?? "";
  const amount = /put in ([\d.]+)\s/.exec(kit)?.[1];
  expect(bottles).toContain(`dilute nitric acid, into silver waste first: ${amount} cm³`);
});

test.each(sheets)("/%s prints", async (path) => {
  const { page } = await openPage(path);
  const paper = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  const sides = paper.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
  expect(sides).toBeGreaterThan(0);
  // A record or a mark sheet is as long as its paper; a card is one side, whatever the paper.
  if (path.includes("bench-card")) expect(sides).toBe(1);
  await page.emulateMedia({ media: "print" });
  if (path.includes("bench-card")) expect(await page.evaluate(smallestPoints)).toBeGreaterThanOrEqual(8);
  expect(await page.getByRole("navigation").count()).toBe(0);
  expect(await page.getByRole("link", { name: "Back to the walkthrough" }).isVisible()).toBe(false);
  const whole = await page
    .locator("tr, .cut li")
    .evaluateAll((all) => all.every((one) => getComputedStyle(one).breakInside === "avoid"));
  expect(whole).toBe(true);
  // 180 mm between the margins, at 96 dots to the inch.
  await page.setViewportSize({ width: 680, height: 1000 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(680);
});

test("labels and card are for the tubes chosen in the walkthrough, at the depths of the reference", async () => {
  const { tubes } = JSON.parse(readFileSync(join(import.meta.dirname, "../reference/tube-depths.json"), "utf8")) as {
    tubes: { id: string; depthMm: Record<string, number> }[];
  };
  const depth = tubes.find(({ id }) => id === "test-tube-100x12")?.depthMm["2"] ?? Number.NaN;
  const { page } = await openPage("practicals/lamp-room-shelf/");
  await readToTheEnd(page);
  const sizes = page.getByRole("combobox", { name: /^Test-tubes/ });
  await sizes.selectOption({ label: "test-tube 100 × 12 mm" });
  for (const [name, where] of [
    ["tube labels", ".cut li"],
    ["bench card", ".places li"],
  ]) {
    const link = page.getByRole("link", { name, exact: true });
    await expect.poll(() => link.getAttribute("href")).toContain("?test-tube-size=100x12");
    const address = new URL((await link.getAttribute("href")) ?? "", page.url());
    const { page: sheet } = await openPage(address.href);
    const tube = sheet.locator(where).filter({ has: sheet.getByText("R c", { exact: true }) });
    // The page as built is for another tube, and the reference gives tenths.
    const read = async () => Number(/(?<![.\d])2 cm³:?\s(\d+)\smm/.exec((await tube.textContent()) ?? "")?.[1]);
    await expect.poll(async () => Math.abs((await read()) - depth)).toBeLessThanOrEqual(0.55);
    expect(await sheet.getByRole("combobox", { name: /^Test-tubes/ }).inputValue()).toBe("test-tube-100x12");
    await sheet.emulateMedia({ media: "print" });
    expect(await sheet.getByRole("combobox").count()).toBe(0);
  }
});
