import { expect, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

async function openSearch() {
  const { page } = await openPage("search/");
  const status = page.getByRole("status");
  return {
    page,
    field: page.getByRole("searchbox"),
    among: page.getByRole("combobox", { name: "Among" }),
    status,
    /** Waits for the answer to a question. */
    answer: async (query: string) => {
      await status.filter({ hasText: `“${query}”` }).waitFor();
      return status.textContent();
    },
    /** Kinds of page found, as the headings over them say. */
    kinds: async () => {
      const headings = await page.getByRole("main").getByRole("heading", { level: 2 }).allTextContents();
      return headings.filter((heading) => heading !== "All pages");
    },
    /** Links found, those of the list of all pages left out. */
    found: page
      .getByRole("main")
      .locator("li")
      .filter({ has: page.locator("p") })
      .getByRole("link"),
  };
}

test.each([
  { query: "silver nitrate", title: "Silver nitrate test", kind: "Ion tests", page: "ion-tests/silver-nitrate/" },
  { query: "ammonia", title: "Ammonia solution", kind: "Cautions", page: "cautions/ammonia-solution/" },
])("“$query” finds $title", async ({ query, title, kind, page: path }) => {
  const { page, field, answer, kinds, found } = await openSearch();
  await field.fill(query);
  await page.getByRole("button", { name: "Search" }).click();
  expect(await answer(query)).toMatch(/^\d+ pages for/);
  expect(await kinds()).toContain(kind);
  await found.filter({ hasText: title }).click();
  await page.waitForURL(`**/any/where/${path}`);
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(title);
});

test("the filter leaves one kind of page, and the address keeps the question", async () => {
  const { page, field, among, answer, kinds, found } = await openSearch();
  await field.fill("ammonia");
  await field.press("Enter");
  const all = await answer("ammonia");
  const links = await found.count();
  expect((await kinds()).length).toBeGreaterThan(1);

  await among.selectOption({ label: "cautions" });
  await expect.poll(kinds).toEqual(["Cautions"]);
  expect(await answer("ammonia")).not.toBe(all);
  expect(await found.count()).toBeLessThan(links);
  for (const link of await found.all()) expect(await link.getAttribute("href")).toMatch(/^\/any\/where\/cautions\/./);

  await page.reload();
  await expect.poll(kinds).toEqual(["Cautions"]);
  expect(await field.inputValue()).toBe("ammonia");
});

test("the keyboard alone asks and follows a result", async () => {
  const { page, field, answer, found } = await openSearch();
  const isAt = (element: typeof field) => element.evaluate((node) => node === document.activeElement);
  for (let steps = 0; steps < 20 && !(await isAt(field)); steps++) await page.keyboard.press("Tab");
  expect(await isAt(field)).toBe(true);
  await page.keyboard.type("silver nitrate");
  await page.keyboard.press("Enter");
  await answer("silver nitrate");
  const first = found.first();
  const title = await first.textContent();
  for (let steps = 0; steps < 20 && !(await isAt(first)); steps++) await page.keyboard.press("Tab");
  expect(await isAt(first)).toBe(true);
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/(?:practicals|ion-tests|cautions)\/.+\/$/);
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(title);
});

test("a word that no page holds is answered politely", async () => {
  const { field, answer, found } = await openSearch();
  await field.fill("uranium");
  await field.press("Enter");
  expect(await answer("uranium")).toMatch(/^Nothing found for “uranium”\. Try /);
  expect(await found.count()).toBe(0);
});

const HOSTILE = ["<img src=x onerror=alert(1)>", "<script>alert(1)</script>", "zinc <img src=x onerror=alert(1)>"];

test.each(HOSTILE)("%s is a question like any other: nothing of it runs", async (query) => {
  const { page, field, status, answer } = await openSearch();
  const dialogs: string[] = [];
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  const scripts = await page.locator("script").count();
  await field.fill(query);
  await field.press("Enter");
  // The index falls back to the beginnings of unknown words ("onerror" finds "one"), so it may name pages.
  expect(await answer(query)).toMatch(/^(?:Nothing found|\d+ pages?) for “/);
  expect(await status.locator("*").count()).toBe(0);
  expect(await page.locator("img").count()).toBe(0);
  expect(await page.locator("script").count()).toBe(scripts);

  await page.reload();
  await answer(query);
  expect(await field.inputValue()).toBe(query);
  expect(await page.locator("img").count()).toBe(0);
  expect(dialogs).toEqual([]);
});
