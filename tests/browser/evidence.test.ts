/** The evidence for each sample: every mark says why it stands there; and what a changed record comes to. */
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { openPage, type ReaderOptions } from "./setup/open-page.ts";

const LAMP_ROOM = "practicals/lamp-room-shelf/";

async function openEvidence(search = "", options: ReaderOptions = {}) {
  const { page, context } = await openPage(LAMP_ROOM + search, options);
  await readToTheEnd(page);
  const region = page.getByRole("region", { name: "Evidence for R" });
  return {
    page,
    context,
    conclude: page.getByRole("region", { name: /^Conclude/ }),
    region,
    /** The mark of an ion at a test. */
    mark: (ion: string, test: string) => region.getByRole("row", { name: ion }).locator(`td[data-head="${test}"]`),
    /** The line under the table. */
    reason: page.locator(".evidence", { has: region }).locator("[aria-live=polite]"),
  };
}

const focused = (page: Page) =>
  page.evaluate(() => {
    const mark = document.activeElement as HTMLElement;
    return `${mark.parentElement?.dataset.ion} ${mark.dataset.head}`;
  });

test("the arrow keys walk over the marks, each says why, and the Tab key stops at one of them only", async () => {
  const { page, region, reason } = await openEvidence();
  // The region a table scrolls in comes before its marks; the reasoning is fetched as soon as it has the focus.
  await region.focus();
  await region.getByRole("grid").waitFor();
  await page.keyboard.press("Tab");
  expect(await focused(page)).toBe("Zn^2+ a(i)");
  // Zinc hydroxide is white (Q040 of tests/reference/qualitative-tables.json).
  await expect.poll(() => reason.textContent()).toMatch(/^Zn2\+ at a\(i\): fits\. Seen: white precipitate\./);

  // R's precipitate dissolves in excess ammonia; aluminium's would remain (Q004).
  await page.keyboard.press("End");
  await page.keyboard.press("Home");
  for (let right = 0; right < 4; right++) await page.keyboard.press("ArrowRight");
  while (!(await focused(page)).startsWith("Al")) await page.keyboard.press("ArrowDown");
  expect(await focused(page)).toBe("Al^3+ b(ii)");
  expect(await reason.textContent()).toBe(
    "Al3+ at b(ii): clashes. Seen: precipitate dissolves, giving a colourless solution. With Al3+ you would have seen: precipitate remains.",
  );
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowDown");
  expect(await focused(page)).toBe("Al^3+ b(ii)");

  // How the ion stands is the last stop of its row; it holds its own reason, so that nothing is said twice.
  await page.keyboard.press("End");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/^out: at b\(ii\) it would show: /);
  expect(await reason.textContent()).toBe("");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowUp");
  expect(await page.evaluate(() => document.activeElement?.className)).toBe("why");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Home");
  for (let right = 0; right < 4; right++) await page.keyboard.press("ArrowRight");
  expect(await focused(page)).toBe("Al^3+ b(ii)");

  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.ariaLabel)).toBe("Evidence for S");
  await page.keyboard.press("Shift+Tab");
  expect(await focused(page)).toBe("Al^3+ b(ii)");
});

test("evidence out of sight follows a change, and none of it is left undrawn", async () => {
  const { page, region } = await openEvidence();
  const record = page.getByRole("region", { name: /^Record/ });
  await record.scrollIntoViewIfNeeded();
  const row = region.getByRole("row", { name: "NO3" });
  expect(await row.textContent()).toContain("out:");
  // Without the barium precipitate R holds nitrate.
  await page.getByRole("combobox", { name: "c(ii) for R", exact: true }).selectOption({ label: "no visible change" });
  await expect.poll(() => row.textContent()).toContain("certain");
  // A picture or a print of the whole page shows what nobody has scrolled to.
  const drawn = await page
    .locator(".matrix tr")
    .evaluateAll((rows) => rows.map((one) => one.checkVisibility({ contentVisibilityAuto: true })));
  expect(drawn.length).toBeGreaterThan(30);
  expect(drawn).not.toContain(false);
});

test("the samples stand side by side, and not while the record fits nothing", async () => {
  const { page, conclude } = await openEvidence();
  const compared = conclude.getByRole("region", { name: "The samples side by side" });
  const standing = async (ion: string) =>
    (await compared.getByRole("row", { name: ion }).getByRole("cell").allTextContents()).join();
  // R is zinc sulfate; without its barium precipitate only the nitrate is left besides.
  expect(await standing("Zn2+")).toBe("certain,out,out");
  expect(await compared.getByRole("columnheader").allTextContents()).toEqual(["Ion", "R", "S", "T"]);
  await page.getByRole("combobox", { name: "c(ii) for R", exact: true }).selectOption({ label: "not done" });
  await expect.poll(() => standing("SO42")).toBe("possible,out,out");
  await page.getByRole("combobox", { name: "a(i) for R", exact: true }).selectOption({ label: "something else" });
  await expect.poll(() => compared.count()).toBe(0);
});

test("the evidence is a grid by name: ions head its rows, tests its columns, and each mark is a word", async () => {
  const { region } = await openEvidence();
  await region.focus();
  const grid = region.getByRole("grid", { name: "Evidence for R" });
  await grid.waitFor();
  expect((await grid.getByRole("columnheader").allTextContents()).at(-1)?.trim()).toBe("Standing");
  const row = grid.getByRole("row", { name: /^Zn/ });
  expect(await row.getByRole("rowheader").textContent()).toBe("Zn2+ zinc");
  const cells = await row.getByRole("gridcell").allTextContents();
  expect(cells.length).toBe((await grid.getByRole("columnheader").count()) - 1);
  for (const word of cells.slice(0, -1)) expect(word).toMatch(/^(fits|only just fits|clashes|says nothing|not done)$/);
});

test("at the edge of the table an arrow key leads nowhere", async () => {
  const { page, region } = await openEvidence();
  await region.focus();
  await region.getByRole("grid").waitFor();
  await page.keyboard.press("Tab");
  const corner = await focused(page);
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowLeft");
  expect(await focused(page)).toBe(corner);
});

test("a tap on a phone shows the reason, also one that comes before the reasoning", async () => {
  const { page, context, mark, reason } = await openEvidence("", { width: 360, height: 740, hasTouch: true });
  await context.route(/Conclusion\.[^/]*\.js$/, async (route) => {
    await new Promise((done) => setTimeout(done, 500));
    await route.continue();
  });
  // Lead hydroxide does not dissolve in excess ammonia (Q039).
  await mark("Pb2+", "b(ii)").tap();
  expect(await reason.textContent()).toBe("");
  await expect.poll(() => reason.textContent()).toMatch(/^Pb2\+ at b\(ii\): clashes\. .*seen: precipitate remains\.$/);
  expect(await reason.evaluate((line) => line.getBoundingClientRect().bottom <= innerHeight)).toBe(true);
  // Answered once: a later change of the record does not bring the focus back to it.
  await page.getByRole("combobox", { name: "c(i) for R" }).selectOption({ label: "not done" });
  await expect.poll(() => reason.textContent()).toBe("");
  await mark("Mg2+", "a(ii)").tap();
  expect(await reason.textContent()).toMatch(/^Mg2\+ at a\(ii\): clashes\./);
});

test("a reason does not outlive its record", async () => {
  const { page, mark, region, reason } = await openEvidence();
  await region.focus();
  await region.getByRole("grid").waitFor();
  await mark("SO4", "c(ii)").click();
  await expect.poll(() => reason.textContent()).toMatch(/^SO42− at c\(ii\): fits\./);
  await page.getByRole("combobox", { name: "c(ii) for R" }).selectOption({ label: "no visible change" });
  await expect.poll(() => reason.textContent()).toBe("");
  // Barium sulfate is white and does not dissolve in acid (Q097).
  await mark("SO4", "c(ii)").click();
  await expect
    .poll(() => reason.textContent())
    .toMatch(/^SO42− at c\(ii\): clashes\. Seen: no visible change\. .* white precipitate/);
});

test("what changed against the walkthrough stands in the conclusion, and not for a record begun empty", async () => {
  const { page, conclude } = await openEvidence("?R.c.ii=no+visible+change");
  const changed = conclude.getByRole("region", { name: "What changed" });
  await changed.waitFor();
  expect(await changed.getByRole("listitem").allTextContents()).toEqual([
    "c(ii) for R was: white precipitate; now: no visible change.",
  ]);
  const cells = changed.getByRole("row", { name: /^R/ }).getByRole("cell");
  expect((await cells.allTextContents()).slice(0, 2)).toEqual(["ZnSO4", "Zn(NO3)2"]);
  expect(await cells.last().textContent()).toMatch(
    /^SO42− is out: at c\(ii\) it would show: white precipitate .*NO3− is possible: c\(ii\) no longer rules it out\.$/,
  );
  expect(await changed.textContent()).toContain("As before: S and T.");

  await page.getByRole("button", { name: "Start with an empty record" }).click();
  await conclude.getByText("Nothing is recorded yet.").waitFor();
  expect(await changed.count()).toBe(0);
});
