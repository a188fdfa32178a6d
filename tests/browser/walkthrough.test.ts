import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { openPage, type ReaderOptions } from "./setup/open-page.ts";

const LAMP_ROOM = "practicals/lamp-room-shelf/";

/** What the walkthrough's own record shows, told by the trade's tables for these salts at these tests. */
const GIVEN = [
  "R holds zinc sulfate, ZnSO4: Zn2+ and SO42−.",
  "S holds aluminium chloride, AlCl3: Al3+ and Cl−.",
  "T holds ammonium chloride, NH4Cl: NH4+ and Cl−.",
];

/** The walkthrough with every island started. */
async function openWalkthrough(options: ReaderOptions = {}) {
  const { page } = await openPage(LAMP_ROOM, options);
  await readToTheEnd(page);
  const conclude = page.getByRole("region", { name: /^Conclude/ });
  return {
    page,
    record: page.getByRole("region", { name: /^Record/ }),
    conclude,
    reset: page.getByRole("button", { name: /^Reset/ }),
    observation: (place: string) => page.getByRole("combobox", { name: place, exact: true }),
    /** What the page speaks when something changed. */
    spoken: conclude.locator('> [aria-live="polite"]'),
  };
}

/** The sentences of the conclusion that stand in it now, one for each sample. */
const sentences = async (conclude: Locator) =>
  (await conclude.getByRole("listitem").allTextContents()).filter((text) => /^[RST]\b/.test(text));

/** Presses a key until the right element has the focus. */
async function walkTo(page: Page, key: "Tab" | "Shift+Tab", target: Locator): Promise<void> {
  const isThere = () => target.evaluate((element) => element === document.activeElement);
  for (let steps = 0; steps < 150 && !(await isThere()); steps++) await page.keyboard.press(key);
  expect(await isThere()).toBe(true);
}

test("a changed observation changes the conclusion, is spoken, and is taken back", async () => {
  const { record, conclude, reset, observation, spoken } = await openWalkthrough();
  expect(await sentences(conclude)).toEqual(GIVEN);
  expect(await reset.isDisabled()).toBe(true);

  // Without the barium precipitate R is no sulfate; the acid gave no gas, so no carbonate; S and T share the chloride and the shelf
  // holds two anions: nitrate is left.
  await observation("c(ii) for R").selectOption({ label: "no visible change" });
  // The reasoning is fetched when the reader first turns to the record.
  await expect
    .poll(() => sentences(conclude))
    .toEqual(["R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.", ...GIVEN.slice(1)]);
  expect(await spoken.textContent()).toMatch(/^c\(ii\) for R: no visible change; R holds zinc nitrate\.$/);
  expect(await record.getByRole("row", { name: /^c\(ii\)/ }).textContent()).toContain(
    "changed, was: white precipitate",
  );

  await reset.click();
  expect(await sentences(conclude)).toEqual(GIVEN);
  expect(await spoken.textContent()).toMatch(/^Back to the walkthrough's record; R holds/);
  expect(await record.textContent()).not.toContain("changed, was");
  expect(await reset.isDisabled()).toBe(true);
});

test("an impossible record says what to repeat first", async () => {
  const { conclude, observation, spoken } = await openWalkthrough();
  expect(await conclude.textContent()).not.toContain("Repeat first");
  // White, soluble in excess alkali, insoluble in excess ammonia: aluminium, which S is already, or lead, whose sulfate does not dissolve.
  await observation("b(ii) for R").selectOption({ label: "precipitate remains" });
  await expect.poll(() => conclude.textContent()).toContain("Repeat first.");
  const repeats = await conclude.getByRole("listitem").allTextContents();
  expect(repeats).toContainEqual(
    expect.stringMatching(
      /^b\(ii\) for R: look for precipitate dissolves, giving a colourless solution\. Then R may be ZnSO4, S may be AlCl3/,
    ),
  );
  expect(await sentences(conclude)).not.toContain(GIVEN[0]);
  expect(await spoken.textContent()).toMatch(/^b\(ii\) for R: precipitate remains; [^.]*\bR\b[^.]*\.$/);
});

test("a sight that no allowed salt shows can be recorded, and is to be looked at again first", async () => {
  const { page, conclude, observation, spoken } = await openWalkthrough();
  const place = observation("a(i) for R");
  const offered = () => place.evaluate((select) => [...(select as HTMLSelectElement).options].map(({ text }) => text));
  // The choices come when the script has taken over.
  await expect.poll(async () => (await offered()).slice(-2)).toEqual(["something else", "not done"]);
  await place.selectOption({ label: "something else" });
  await expect.poll(() => conclude.textContent()).toContain("Look again at a(i) for R: no salt the paper allows");
  // Zinc hydroxide is white (Q040 of tests/reference/qualitative-tables.json).
  expect(await conclude.getByRole("listitem").allTextContents()).toContainEqual(
    expect.stringMatching(/^a\(i\) for R: look for white precipitate\. Then R may be ZnSO4, /),
  );
  const firstOf = (region: Locator) => region.getByRole("listitem").first().textContent();
  const verdict = "No salt the paper allows fits all that is recorded for R.";
  expect(await firstOf(conclude)).toBe(verdict);
  expect(await spoken.textContent()).toMatch(/^a\(i\) for R: something else; no salt the paper allows fits .* R\b/);
  const search = "?R.a.i=something+else";
  await expect.poll(() => page.evaluate(() => location.search)).toBe(search);

  const fresh = await openPage(`${LAMP_ROOM}${search}`);
  const found = fresh.page.getByRole("region", { name: /^Conclude/ });
  await expect.poll(() => firstOf(found)).toBe(verdict);
});

/** What has the focus, by the role and name that a screen reader tells, without what stands in it. */
const focusedAs = async (page: Page) =>
  (await page.locator(":focus").ariaSnapshot()).split("\n")[0].replace(/^- |:.*$/g, "");

test("the keyboard alone changes an observation, asks the evidence, compares, undoes and resets, and each is told by name", async () => {
  const { page, conclude, reset, observation, spoken } = await openWalkthrough();
  const place = observation("c(ii) for R");
  const chosen = () => place.evaluate((select) => (select as HTMLSelectElement).selectedOptions[0].text);
  const choose = async (words: string) => {
    await walkTo(page, "Tab", place);
    expect(await focusedAs(page)).toBe('combobox "c(ii) for R"');
    await page.keyboard.press("ArrowUp");
    expect(await chosen()).toBe(words);
  };
  const NITRATE = "R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.";

  await choose("no visible change");
  await expect.poll(() => sentences(conclude)).toEqual([NITRATE, ...GIVEN.slice(1)]);
  await expect.poll(() => spoken.textContent()).toBe("c(ii) for R: no visible change; R holds zinc nitrate.");
  // The focus is left where it was, and what changed stands under a heading of its own.
  expect(await focusedAs(page)).toBe('combobox "c(ii) for R"');
  await conclude.getByRole("region", { name: "What changed" }).waitFor();

  const grid = page.getByRole("grid", { name: "Evidence for R" });
  await walkTo(page, "Tab", grid.locator("[tabindex='0']"));
  const sulfate = grid.getByRole("row", { name: /^SO42−/ });
  for (let steps = 0; steps < 40 && !(await sulfate.locator(":focus").count()); steps++)
    await page.keyboard.press("ArrowDown");
  const clash = sulfate.locator("[data-head='c(ii)']");
  for (let steps = 0; steps < 20 && !(await clash.evaluate((one) => one === document.activeElement)); steps++)
    await page.keyboard.press("ArrowRight");
  expect(await focusedAs(page)).toBe('gridcell "clashes" [selected]');
  const because = conclude.locator(".evidence", { has: grid }).locator(".because");
  expect(await because.getAttribute("aria-live")).toBe("polite");
  expect(await because.textContent()).toMatch(/^SO42− at c\(ii\): clashes\. .*white precipitate/);

  const undo = page.getByRole("button", { name: "Undo" });
  await walkTo(page, "Shift+Tab", undo);
  await page.keyboard.press("Enter");
  await expect.poll(() => sentences(conclude)).toEqual(GIVEN);
  await expect.poll(() => spoken.textContent()).toBe("Undone; R holds zinc sulfate.");
  expect(await chosen()).toBe("white precipitate");
  // There is nothing more to undo, and still the reader is where they were.
  expect(await focusedAs(page)).toBe('button "Undo" [disabled]');
  await page.keyboard.press("Enter");
  expect(await sentences(conclude)).toEqual(GIVEN);

  await choose("no visible change");
  await expect.poll(() => sentences(conclude)).toEqual([NITRATE, ...GIVEN.slice(1)]);
  await walkTo(page, "Shift+Tab", reset);
  await page.keyboard.press("Space");
  await expect.poll(() => sentences(conclude)).toEqual(GIVEN);
  await expect.poll(() => spoken.textContent()).toBe("Back to the walkthrough's record; R holds zinc sulfate.");
  expect(await focusedAs(page)).toBe('button "Reset to the walkthrough\'s record" [disabled]');
});

/** Observations whose list does not stand at the words that the cell shows: what is heard differs from what is seen. */
const heardOtherwise = (record: Locator) =>
  record.getByRole("combobox").evaluateAll((lists) =>
    lists.flatMap((list) => {
      const heard = (list as HTMLSelectElement).selectedOptions[0]?.text;
      const cell = list.parentElement?.cloneNode(true) as HTMLElement;
      cell.querySelector("select")?.remove();
      const seen = cell.textContent;
      return heard === seen ? [] : [`${list.ariaLabel}: seen “${seen}”, heard “${heard}”`];
    }),
  );

test.each([
  { when: "with script", javaScriptEnabled: true },
  { when: "without script", javaScriptEnabled: false },
])("every observation is heard as it is seen, $when", async ({ javaScriptEnabled }) => {
  const { page } = await openPage(LAMP_ROOM, { javaScriptEnabled });
  if (javaScriptEnabled) await readToTheEnd(page);
  const record = page.getByRole("region", { name: /^Record/ });
  expect(await record.getByRole("combobox").count()).toBeGreaterThan(20);
  expect(await heardOtherwise(record)).toEqual([]);
});

test("the address holds the record: the same link shows the same conclusion in a fresh profile, and undo takes it back", async () => {
  const { page, conclude, observation } = await openWalkthrough();
  await observation("c(ii) for R").selectOption({ label: "no visible change" });
  const nitrate = ["R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.", ...GIVEN.slice(1)];
  await expect.poll(() => sentences(conclude)).toEqual(nitrate);
  // Asked of the page itself: what the driver knows of the address lags behind.
  const address = () => page.evaluate(() => location.search);
  // It is written after the conclusion is painted.
  const search = "?R.c.ii=no+visible+change";
  await expect.poll(address).toBe(search);

  const fresh = await openPage(`${LAMP_ROOM}${search}`);
  const found = fresh.page.getByRole("region", { name: /^Conclude/ });
  await expect.poll(() => sentences(found)).toEqual(nitrate);

  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => sentences(conclude)).toEqual(GIVEN);
  await expect.poll(address).toBe("");
});

test("a link made by hand is refused entry by entry, and runs nothing", async () => {
  const script = encodeURIComponent("<img src=x onerror=alert(1)>");
  const { page } = await openPage(`${LAMP_ROOM}?R.c.ii=${script}&T.d=white+precipitate&R.c.i=not+done`);
  const record = page.getByRole("region", { name: /^Record/ });
  const said = record.getByRole("status");
  await expect
    .poll(() => said.getByRole("listitem").allTextContents())
    .toEqual([
      "c(ii) for R: found “<img src=x onerror=alert(1)>”, expected an observation of its list.",
      "T.d: found no such place in this record, expected one such as R.a.i.",
    ]);
  expect(await record.getByRole("row", { name: /^c\(i\)/ }).textContent()).toContain("changed, was: no visible change");
  expect(await page.locator("img[src=x]").count()).toBe(0);
});

test("coming back to the page shows one record, not two", async () => {
  const { page, record, observation } = await openWalkthrough();
  await observation("c(ii) for R").selectOption({ label: "no visible change" });
  await page.getByRole("navigation", { name: "Site" }).getByRole("link", { name: "Cautions" }).click();
  await page.waitForURL(/cautions\/$/);
  await page.goBack();
  await readToTheEnd(page);
  expect(await heardOtherwise(record)).toEqual([]);
});

test("a choice made before the script has come does not leave two records", async () => {
  const { page, context } = await openPage(LAMP_ROOM);
  await context.route(/\.js$/, async (route) => {
    await new Promise((done) => setTimeout(done, 500));
    await route.continue();
  });
  await page.reload();
  const record = page.getByRole("region", { name: /^Record/ });
  await record.getByRole("combobox", { name: "c(ii) for R" }).selectOption({ label: "no visible change" });
  await readToTheEnd(page);
  expect(await heardOtherwise(record)).toEqual([]);
});

test("where the paper's tests are at an end, the standard test that settles it is fetched and told", async () => {
  const { page, conclude, observation } = await openWalkthrough();
  const fetched: string[] = [];
  page.on("request", (request) => fetched.push(new URL(request.url()).pathname));
  const further = conclude.getByRole("heading", { name: /not on the paper/ });
  expect(await further.count()).toBe(0);
  // No chloride after all: aluminium and lead(II) nitrate would both have shown the rest.
  await observation("d for S").selectOption({ label: "no visible change" });
  await further.waitFor();
  const lists = fetched.filter((path) => path.endsWith("/practicals/lamp-room-shelf/further.json"));
  expect(lists).toHaveLength(1);
  // Lead(II) sulfate is white and hardly soluble, aluminium sulfate dissolves: common practice, no source.
  const lines = (await conclude.getByRole("listitem").allInnerTexts()).map((line) => line.trim());
  expect(lines).toContain("no visible change: S is Al(NO3)3.");
  expect(lines).toContain("white precipitate: S is Pb(NO3)2.");
  // A second record that leaves something open asks for nothing more.
  await observation("d for S").selectOption({ label: "not done" });
  await observation("d for S").selectOption({ label: "no visible change" });
  await further.waitFor();
  expect(fetched.filter((path) => path.endsWith("further.json"))).toHaveLength(1);
});
