/** Marks of practice in the reader's browser, and terms under finger and keyboard. */
import { expect, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

const at = (page: { url(): string }, path: string) => page.url().replace(/\/any\/where\/.*/, `/any/where/${path}`);

test("a walkthrough marked as practised shows in the list and the map, and can be forgotten", async () => {
  const { page } = await openPage("practicals/salt-works/");
  await page.getByRole("button", { name: "I have practised this" }).click();
  await page.getByText(/You have practised this once/).waitFor();
  await page.goto(at(page, "practicals/"));
  expect(await page.getByText(/✓ You have practised this once/).count()).toBe(1);
  await page.goto(at(page, "practicals/map/"));
  await page.getByText(/✓ You have practised this once/).waitFor();
  await page.getByRole("button", { name: "Forget my marks" }).click();
  await page.getByText("Forgotten.").waitFor();
  expect(await page.getByText(/You have practised this once/).count()).toBe(0);
});

test("a term shows its meaning on focus, and Escape puts it away", async () => {
  const { page } = await openPage("method/recording/");
  const term = page.getByRole("link", { name: "precipitate", exact: true }).first();
  const tip = page.getByRole("tooltip").first();
  expect(await tip.isVisible()).toBe(false);
  await term.focus();
  expect(await tip.isVisible()).toBe(true);
  expect(await term.getAttribute("aria-describedby")).toBe(await tip.getAttribute("id"));
  await page.keyboard.press("Escape");
  expect(await tip.isVisible()).toBe(false);
});

test("the first tap on a term shows its meaning, the second follows it", async () => {
  const { page } = await openPage("method/recording/", { width: 360, hasTouch: true });
  const term = page.getByRole("link", { name: "precipitate", exact: true }).first();
  await term.tap();
  expect(await page.getByRole("tooltip").first().isVisible()).toBe(true);
  expect(page.url()).toMatch(/method\/recording\/$/);
  await term.tap();
  await page.waitForURL("**/method/glossary/#precipitate");
});

test("without script a term is a link to the glossary", async () => {
  const { page } = await openPage("method/recording/", { javaScriptEnabled: false });
  await page.getByRole("link", { name: "precipitate", exact: true }).first().click();
  await page.waitForURL("**/method/glossary/#precipitate");
});

test.each([
  ["practicals/lamp-room-shelf/", "cation"],
  ["ions/barium/", "dissolves"],
  ["ion-tests/flame/", "salts"],
])("/%s explains its terms where they are first used", async (path, word) => {
  const { page } = await openPage(path);
  const term = page.locator(".term").filter({ has: page.getByRole("link", { name: word, exact: true }) });
  const meaning = term.getByRole("tooltip", { includeHidden: true });
  expect(await meaning.isVisible()).toBe(false);
  await term.hover();
  expect(await meaning.isVisible()).toBe(true);
  // What has appeared may not push the page wider, and Escape puts it away (WCAG 2.2, 1.4.13).
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth)).toBe(
    true,
  );
  await page.keyboard.press("Escape");
  expect(await meaning.isVisible()).toBe(false);
  await page.mouse.move(0, 0);
  await term.getByRole("link").focus();
  expect(await meaning.isVisible()).toBe(true);
});
