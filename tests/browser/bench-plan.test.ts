import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { openPage } from "./setup/open-page.ts";

interface DepthRow {
  id: string;
  depthMm: Record<string, number>;
  brimCm3: number;
}
const { tubes } = JSON.parse(readFileSync(join(import.meta.dirname, "../reference/tube-depths.json"), "utf8")) as {
  tubes: DepthRow[];
};
/** The page rounds to whole millimetres, the reference to tenths. */
const ROUNDING_MM = 0.5 + 0.05;

/** "test-tube 100 × 12 mm" is row "test-tube-100x12"; "150 × 18 or 19 mm" is "150x18". */
function rowOf(name: string): DepthRow {
  const [, long, wide] = /(\d+) × (\d+)/.exec(name) ?? [];
  const row = tubes.find(({ id }) => id.startsWith(name.slice(0, 4)) && id.endsWith(`-${long}x${wide}`));
  if (row === undefined) throw new Error(`No row for "${name}" in tube-depths.json.`);
  return row;
}

/** The row of the tubes whose label begins so. */
const rowWith = (page: Page, label: string) =>
  page.getByRole("table", { name: /fill marks/ }).getByRole("row", { name: label });

/** Marks written beside the tubes whose label begins so: millimetres by cubic centimetres. */
async function marksOf(page: Page, label: string): Promise<Map<string, number>> {
  const row = rowWith(page, label);
  // A figure and its unit are kept on one line by a no-break space.
  const found = ((await row.textContent()) ?? "").matchAll(/([\d.]+) cm³ at (\d+)\s+mm/g);
  return new Map([...found].map(([, cm3, mm]) => [cm3, Number(mm)]));
}

test.each([
  { list: /^Test-tubes/, label: "R c", volumes: ["1", "2"] },
  { list: /^Boiling tubes/, label: "R a", volumes: ["1"] },
])("another tube size moves the marks of $label to where the reference has them", async ({ list, label, volumes }) => {
  const { page } = await openPage("practicals/lamp-room-shelf/");
  await readToTheEnd(page);
  const sizes = page.getByRole("combobox", { name: list });
  const names = await sizes.getByRole("option").allTextContents();
  expect(names.length).toBeGreaterThan(2);
  const seen = new Set<string>();
  for (const name of names) {
    await sizes.selectOption({ label: name });
    await rowWith(page, label).getByText(name, { exact: true }).waitFor();
    const marks = await marksOf(page, label);
    seen.add(JSON.stringify([...marks]));
    for (const volume of volumes) {
      const off = Math.abs((marks.get(volume) ?? Number.NaN) - rowOf(name).depthMm[volume]);
      expect(off, `${volume} cm³ in ${name}`).toBeLessThanOrEqual(ROUNDING_MM);
    }
  }
  expect(seen.size).toBeGreaterThan(1);
});

test("the list a reader chose from keeps the focus while the rack is fetched and drawn anew", async () => {
  const { page } = await openPage("practicals/lamp-room-shelf/");
  await readToTheEnd(page);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  const list = page.getByRole("combobox", { name: /^Boiling tubes/ });
  expect(asked).toEqual([]);
  await list.focus();
  await list.selectOption({ label: "boiling tube 200 × 25 mm" });
  await rowWith(page, "R a").getByText("boiling tube 200 × 25 mm").waitFor();
  expect(asked.some((path) => path.endsWith("/rack.json"))).toBe(true);
  await expect.poll(() => list.evaluate((one) => one === document.activeElement)).toBe(true);
});

test("without a network the tubes stay the planned ones, and the page says so", async () => {
  const { page, takeFaults } = await openPage("practicals/lamp-room-shelf/");
  await readToTheEnd(page);
  await page.context().setOffline(true);
  await page.getByRole("combobox", { name: /^Test-tubes/ }).selectOption({ label: "test-tube 75 × 10 mm" });
  await page.getByText("Not drawn. The tubes above are the planned ones").waitFor();
  expect((await marksOf(page, "R c")).get("1")).toBe(Math.round(rowOf("test-tube 125 × 16 mm").depthMm["1"]));
  expect(takeFaults().join("\n")).toMatch(/ERR_INTERNET_DISCONNECTED|Failed to fetch/);
});

test("a tube too small for the test is refused in words", async () => {
  const { page } = await openPage("practicals/lamp-room-shelf/");
  await readToTheEnd(page);
  const prepare = page.getByRole("region", { name: /^Prepare/ });
  expect(await prepare.textContent()).not.toContain("Take another tube.");
  const name = "test-tube 75 × 10 mm";
  await page.getByRole("combobox", { name: /^Test-tubes/ }).selectOption({ label: name });
  await prepare.getByText("Take another tube.").first().waitFor();
  const [, held] =
    /Take another tube\. R b.* this tube holds ([\d.]+) cm³ to the brim/.exec((await prepare.textContent()) ?? "") ??
    [];
  expect(Math.round(Number(held))).toBe(rowOf(name).brimCm3);
});

test("the address keeps the sizes of the tubes beside a record, and a link shows them again", async () => {
  const { page } = await openPage("practicals/lamp-room-shelf/?record=own");
  await readToTheEnd(page);
  const sizes = (of: Page) => of.getByRole("combobox", { name: /^Test-tubes/ });
  await sizes(page).selectOption({ label: "test-tube 100 × 12 mm" });
  await expect.poll(() => new URL(page.url()).search).toBe("?record=own&test-tube-size=100x12");

  const { page: again } = await openPage("practicals/lamp-room-shelf/?test-tube-size=100x12&boiling-tube-size=1x1");
  await readToTheEnd(again);
  await again.getByText("In the link, boiling tubes, heated: found “1x1”, expected one of 150x24").waitFor();
  expect(await sizes(again).inputValue()).toBe("test-tube-100x12");
  expect((await marksOf(again, "R c")).get("1")).toBe(Math.round(rowOf("test-tube 100 × 12 mm").depthMm["1"]));
  await sizes(again).selectOption({ label: "test-tube 125 × 16 mm" });
  await expect.poll(() => new URL(again.url()).searchParams.has("test-tube-size")).toBe(false);
});

test("Prepare shows where each tube stands, without script too, tubes of limewater in a row of their own", async () => {
  const { page } = await openPage("practicals/pool-plant-room/", { javaScriptEnabled: false });
  const stands = page.locator("section", { has: page.getByRole("heading", { name: "Where each tube stands" }) }).last();
  const places = await stands.getByRole("listitem").allTextContents();
  const labels = await page
    .getByRole("table", { name: /fill marks/ })
    .getByRole("rowheader")
    .allTextContents();
  const written = labels.flatMap((row) => row.replace(/\u00a0/g, " ").split(/, | and /));
  expect(places.toSorted()).toEqual(written.toSorted());
  expect(await stands.getByText("Limewater tubes").count()).toBe(1);
});
