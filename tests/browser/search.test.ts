import { expect, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

async function openSearch() {
  const { page } = await openPage("search/");
  const status = page.getByRole("status");
  return {
    page,
    field: page.getByRole("combobox", { name: /^A word/ }),
    /** Chooses one value under "Narrow down". */
    narrow: async (name: string, label: string) => {
      const box = page.getByRole("combobox", { name, exact: true });
      if (!(await box.isVisible())) await page.getByText("Narrow down").click();
      await box.selectOption({ label });
    },
    status,
    /** Waits for the answer to a question. */
    answer: async (query: string) => {
      await status.filter({ hasText: `“${query}”` }).waitFor();
      return status.textContent();
    },
    /** Kinds of page found, as the headings over them say. */
    kinds: async () => {
      const headings = await page.getByRole("main").getByRole("heading", { level: 2 }).allTextContents();
      // "Cautions 12": the number of pages found stands beside the kind.
      return headings.filter((heading) => heading !== "All pages").map((heading) => heading.replace(/ \d+$/, ""));
    },
    /** Links found, those of the list of all pages left out. */
    found: page.locator("#results").getByRole("link"),
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

test("a choice leaves one kind of page, and the address keeps it", async () => {
  const { page, field, narrow, answer, kinds, found } = await openSearch();
  await field.fill("ammonia");
  await field.press("Enter");
  const all = await answer("ammonia");
  expect((await kinds()).length).toBeGreaterThan(1);

  await narrow("Kind of page", "Cautions");
  await expect.poll(kinds).toEqual(["Cautions"]);
  expect(await answer("ammonia")).not.toBe(all);
  for (const link of await found.all()) expect(await link.getAttribute("href")).toMatch(/^\/any\/where\/cautions\/./);

  await page.reload();
  await expect.poll(kinds).toEqual(["Cautions"]);
  expect(await field.inputValue()).toBe("ammonia");
});

/** What each choice must leave, from the frontmatter of the pages: "gases: [CO2]", "hazards: [corrosive]". */
test.each([
  { name: "Gas", label: "Carbon dioxide, CO₂", title: "Carbon dioxide" },
  { name: "Ion", label: "Chloride, Cl⁻", title: "Silver nitrate test" },
  { name: "Reagent", label: "Aqueous silver nitrate", title: "Silver nitrate" },
  { name: "Hazard", label: "Corrosive", title: "Sodium hydroxide" },
])("$name alone, without a word, lists what is left: $label", async ({ name, label, title }) => {
  const { page, narrow, status, found } = await openSearch();
  await narrow(name, label);
  await status.filter({ hasText: /^\d+ pages?\.$/ }).waitFor();
  // The best of a kind stand first; the rest comes with the button.
  const more = page.getByRole("button", { name: /^Show \d+ more/ });
  for (let presses = 0; presses < 9 && (await more.count()) > 0; presses++) {
    const shown = await found.count();
    await more.first().click();
    await expect.poll(() => found.count()).toBeGreaterThan(shown);
  }
  await expect.poll(() => found.allTextContents()).toContain(title);
  expect(new URL(page.url()).searchParams.get(name.toLowerCase())).not.toBeNull();
});

/** Ways to write one ion or substance: they must find the same pages. */
test.each([
  ["SO4", "sulfate", "sulphate", "SO₄²⁻", "SO4^2-", "SO4 2-", "so42-"],
  ["Cu2+", "Cu^2+", "Cu²⁺", "copper(II)", "copper (II)"],
  ["NH3", "ammonia", "NH₃"],
])("%s and other ways to write it find the same pages", async (...ways) => {
  const { field, answer, found } = await openSearch();
  const pages = new Map<string, string[]>();
  for (const way of ways) {
    await field.fill(way);
    await field.press("Enter");
    expect(await answer(way)).toMatch(/^\d+ pages for/);
    pages.set(way, (await found.allTextContents()).toSorted());
  }
  const [first] = pages.values();
  expect(first.length).toBeGreaterThan(2);
  for (const [way, own] of pages) expect(own, way).toEqual(first);
});

test("a salt's formula finds what its name finds", async () => {
  const { field, answer, found } = await openSearch();
  await field.fill("AgNO3");
  await field.press("Enter");
  expect(await answer("AgNO3")).toMatch(/read as silver nitrate or AgNO₃\.$/);
  expect(await found.allTextContents()).toContain("Silver nitrate");
});

test("NO2 is the brown gas, NO2- the ion", async () => {
  const { field, answer, found } = await openSearch();
  await field.fill("NO2");
  await field.press("Enter");
  expect(await answer("NO2")).toMatch(/read as nitrogen dioxide or NO₂\.$/);
  expect(await found.allTextContents()).toContain("Nitrogen dioxide");
  await field.fill("NO2-");
  await field.press("Enter");
  expect(await answer("NO2-")).toMatch(/nitrite|Nothing/);
});

test("excerpts print formulas as formulas, and no two words are glued together", async () => {
  const { page, field, answer } = await openSearch();
  await field.fill("white precipitate");
  await field.press("Enter");
  await answer("white precipitate");
  const excerpts = (await page.locator("#results p").allTextContents()).join("\n");
  // A lost space: "TestWhat", "offa(i)".
  expect(excerpts).not.toMatch(/[a-z][A-Z][a-z]{2}|[a-z]{2}\(i+\)/);
  await field.fill("SO4^2-");
  await field.press("Enter");
  await answer("SO4^2-");
  expect(await page.locator("#results p sup").filter({ hasText: /^2−$/ }).count()).toBeGreaterThan(0);
  expect(await page.locator("#results p sub").filter({ hasText: /^4$/ }).count()).toBeGreaterThan(0);
});

test("the keyboard alone asks, walks through the results, comes back and follows one", async () => {
  const { page, field, answer, found } = await openSearch();
  const isAt = (element: typeof field) => element.evaluate((node) => node === document.activeElement);
  await page.keyboard.press("/");
  expect(await isAt(field)).toBe(true);
  expect(await field.inputValue()).toBe("");
  await page.keyboard.type("silver nitrate");
  await page.keyboard.press("Enter");
  await answer("silver nitrate");
  await page.keyboard.press("ArrowDown");
  expect(await isAt(found.first())).toBe(true);
  await page.keyboard.press("ArrowDown");
  expect(await isAt(found.first())).toBe(false);
  await page.keyboard.press("ArrowUp");
  expect(await isAt(found.first())).toBe(true);
  await page.keyboard.press("ArrowUp");
  expect(await isAt(field)).toBe(true);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Escape");
  expect(await isAt(field)).toBe(true);
  expect(await field.inputValue()).toBe("silver nitrate");
  // A slash in the field is a letter like any other.
  await page.keyboard.press("End");
  await page.keyboard.type("/");
  expect(await field.inputValue()).toBe("silver nitrate/");
  await page.keyboard.press("ArrowDown");
  const title = await found.first().textContent();
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/(?:practicals|ion-tests|cautions)\/.+\/$/);
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(title);
});

test("nothing of the index is loaded before the first question", async () => {
  const { page, field, answer } = await openSearch();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await field.focus();
  await page.getByText("Narrow down").click();
  await page.waitForLoadState("networkidle");
  expect(asked).toEqual([]);
  await field.fill("zinc");
  await field.press("Enter");
  await answer("zinc");
  expect(asked.some((url) => url.includes("/pagefind/"))).toBe(true);
});

test("without JavaScript every page is listed by kind, and no dead form is shown", async () => {
  const { page } = await openPage("search/", { javaScriptEnabled: false });
  expect(await page.getByRole("combobox", { name: /^A word/ }).count()).toBe(0);
  const shelves = await page.getByRole("main").getByRole("heading", { level: 3 }).allTextContents();
  expect(shelves).toEqual(expect.arrayContaining(["Practicals", "Ion tests", "Cautions"]));
  expect(await page.getByRole("main").getByRole("link", { name: "Silver nitrate test" }).count()).toBe(1);
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
