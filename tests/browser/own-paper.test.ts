import { AxeBuilder } from "@axe-core/playwright";
import type { Locator, Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { toFragment } from "../../src/components/paper/paper-link.ts";
import { openPage, type ReaderOptions } from "./setup/open-page.ts";
import { TWO_JARS } from "./setup/two-jars.ts";

/** An invented paper: one solution, four tests. */
const SENTENCES = `(a) To 1 cm3 of solution P add aqueous sodium hydroxide drop by drop, then in excess.
(b) To 1 cm3 of solution P add 1 cm3 of dilute nitric acid followed by aqueous silver nitrate.
(c) To 1 cm3 of solution P add 1 cm3 of dilute nitric acid and 1 cm3 of aqueous barium nitrate.`;

async function openPaper(options: ReaderOptions = {}, fragment = "") {
  const opened = await openPage("", options);
  await opened.page.goto(`${new URL("paper/", inject("builtSite").address).href}${fragment}`);
  await opened.page.locator("#read").waitFor();
  return opened;
}

const worked = (page: Page) => page.locator(".standing", { hasText: "Worked out." }).waitFor({ timeout: 60_000 });
const cell = (page: Page, name: string) => page.getByRole("combobox", { name, exact: true });
const verdict = (page: Page) => page.locator(".verdict");

async function tick(page: Page, kind: "cations" | "anions", names: readonly string[]) {
  await page.getByLabel(`The ${kind} can be`).selectOption("ticked");
  const group = page.getByRole("group", { name: `Tick the ${kind} the paper offers` });
  for (const box of await group.getByRole("checkbox").all()) {
    const name = await box.evaluate((input) => input.closest("label")?.querySelector(".soft")?.textContent ?? "");
    await box.setChecked(names.includes(name));
  }
}

test("from an empty paper to its conclusion, and by a link to the same one in a fresh profile", async () => {
  const { page } = await openPaper();
  await page.getByLabel("Title", { exact: true }).fill("Jars on a sill");
  await tick(page, "cations", ["zinc", "copper(II)", "magnesium"]);
  await tick(page, "anions", ["chloride", "sulfate"]);
  await page.getByLabel("The sentences of the paper").fill(SENTENCES);
  await page.getByRole("button", { name: "Read these sentences" }).click();
  const understood = page.locator(".understood");
  await understood.getByText("How much aqueous silver nitrate").waitFor();
  await page.getByRole("button", { name: "Put these tests into the paper" }).click();

  // What is open is asked at its step, and the rest is worked out meanwhile.
  const open = page.getByText("How much aqueous silver nitrate? Choose drops, a volume, or in excess.");
  await open.waitFor();
  await worked(page);
  await page.getByLabel("How the amount is said, step 3 of b").selectOption("volume");
  await open.waitFor({ state: "detached" });

  // Zinc sulfate: any textbook. White hydroxide, soluble in excess; no silver halide; white barium sulfate.
  await cell(page, "b for P").waitFor();
  await cell(page, "a(i) for P").selectOption("white precipitate");
  await cell(page, "a(ii) for P").selectOption("precipitate dissolves, giving a colourless solution");
  await cell(page, "b for P").selectOption("no visible change");
  await cell(page, "c for P").selectOption("white precipitate");
  await expect.poll(() => verdict(page).textContent()).toContain("P holds zinc sulfate");
  const concluded = await verdict(page).textContent();

  for (const heading of ["Set out", "Check before you begin", "What each test is for"]) {
    await page.getByRole("heading", { name: heading }).waitFor({ timeout: 60_000 });
  }

  await page.getByRole("button", { name: "Make a link to this paper" }).click();
  const address = await page.locator("#link").inputValue();
  const fresh = await openPaper({}, new URL(address).hash);
  await expect.poll(() => verdict(fresh.page).textContent(), { timeout: 60_000 }).toBe(concluded);
  expect(await fresh.page.getByLabel("Title", { exact: true }).inputValue()).toBe("Jars on a sill");
  expect(await cell(fresh.page, "a(i) for P").inputValue()).toBe(await cell(page, "a(i) for P").inputValue());

  // Kept in this browser as well.
  await fresh.page.reload();
  await expect.poll(() => verdict(fresh.page).textContent(), { timeout: 60_000 }).toBe(concluded);
}, 180_000);

test("sentences bring the samples they name; a sample that is removed takes along what was about it alone", async () => {
  const { page } = await openPaper({}, await toFragment(TWO_JARS));
  await page
    .getByLabel("The sentences of the paper")
    .fill("(c) To 1 cm3 of solution Q add 1 cm3 of dilute hydrochloric acid.");
  await page.getByRole("button", { name: "Read these sentences" }).click();
  await page.getByText("Sample Q is not in the paper yet: it is added with the tests.").waitFor();
  await page.getByRole("button", { name: "Put these tests into the paper" }).click();
  await page.getByText("Sample Q was added above: see what is given.").waitFor();
  expect(await page.getByLabel("Letter of sample Q").inputValue()).toBe("Q");
  const ofQ = page.getByRole("group", { name: "Part c", exact: true });
  await ofQ.waitFor();

  await page.getByRole("button", { name: "Remove sample Q" }).click();
  const told = page.getByText("Sample Q is removed, and with it part c, which makes no sense without it.");
  await told.waitFor();
  expect(await ofQ.count()).toBe(0);
  expect(await page.getByRole("group", { name: "Part a", exact: true }).count()).toBe(1);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await ofQ.waitFor();
  expect(await page.getByLabel("Letter of sample Q").inputValue()).toBe("Q");
  expect(await told.count()).toBe(0);
}, 60_000);

test("an observation typed in words finds its place in the record", async () => {
  const { page } = await openPaper({}, await toFragment(TWO_JARS));
  await worked(page);
  await page.getByText("Write an observation in your own words").click();
  await page.getByLabel("Test and sample").selectOption("a(i) for P");
  await page.getByLabel("What you saw").fill("lt blue ppt");
  await page.getByRole("button", { name: "Write it down" }).click();
  await expect.poll(() => verdict(page).textContent(), { timeout: 30_000 }).toContain("copper(II)");
}, 90_000);

test("two tabs keep each other's papers, and a paper that both change is kept twice", async () => {
  const { page, context } = await openPaper();
  const other = await context.newPage();
  await other.goto(page.url());
  await page.getByLabel("Title", { exact: true }).fill("Of the first tab");
  await other.getByLabel("Title", { exact: true }).fill("Of the second tab");
  const kept = () =>
    page.evaluate(() => {
      const { papers } = JSON.parse(localStorage.getItem("ionwright papers") ?? '{"papers":{}}');
      return Object.values(papers as Record<string, { title?: string }>).map(({ title }) => title);
    });
  await expect.poll(async () => (await kept()).sort()).toEqual(["Of the first tab", "Of the second tab"]);

  // Both open the same paper and type; neither loses a word.
  await other.reload();
  await page.getByLabel("Papers kept here").selectOption({ label: "Of the second tab" });
  await page.getByLabel("Title", { exact: true }).fill("Second, changed by the first");
  await expect.poll(kept).toContain("Second, changed by the first");
  await page.getByLabel("Minutes allowed").fill("45");
  await other.getByLabel("Title", { exact: true }).fill("Second, changed by the second");
  await expect.poll(kept).toContain("Second, changed by the second");
  expect(await kept()).toContain("Of the first tab");
}, 60_000);

describe("what comes from outside", () => {
  const FILE = `---\ntitle: A file\nsamples:\n  - { label: Q, given: solution, concentration: 0.2 mol }\npaper: { cations: school, anions: school }\nparts: []\n---\n`;

  test("a broken file is told by line and column, and nothing is lost", async () => {
    const { page } = await openPaper();
    await page.getByLabel("Title", { exact: true }).fill("Mine");
    await page.getByText("Open the file of a practical").click();
    const text = page.getByLabel("Or its text");
    await text.fill("---\ntitle: [unclosed\nsamples:\n---\n");
    await page.getByRole("button", { name: "Open this text" }).click();
    await page
      .getByText(/Line \d+, column \d+: the frontmatter is not YAML/)
      .first()
      .waitFor();
    expect(await page.getByLabel("Title", { exact: true }).inputValue()).toBe("Mine");

    await text.fill(FILE);
    await page.getByRole("button", { name: "Open this text" }).click();
    await page.getByText(/Line 4, column \d+ .*found the unit "mol"/).waitFor();
    expect(await page.getByLabel("Title", { exact: true }).inputValue()).toBe("Mine");
    expect(await text.inputValue()).toBe(FILE);

    await page.getByRole("button", { name: "Open what could be read" }).click();
    await expect.poll(() => page.getByLabel("Title", { exact: true }).inputValue()).toBe("A file");
    expect(await page.getByLabel("Strength of solution Q").inputValue()).toBe("0.2 mol");
    await page.getByText('Found the unit "mol"').waitFor();
    await page.getByLabel("Papers kept here").selectOption({ label: "Mine" });
    expect(await page.getByLabel("Title", { exact: true }).inputValue()).toBe("Mine");
  }, 60_000);

  test("a crafted link runs nothing and takes nothing away", async () => {
    const evil = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    const crafted = {
      ...TWO_JARS,
      title: evil,
      samples: [{ label: evil, given: "poison", concentration: { deep: [] } }],
      parts: [{ label: evil, title: evil, tests: [{ says: evil, steps: [{ add: evil, constructor: evil }] }] }],
      record: { [evil]: { "a(i)": evil } },
    };
    const { page } = await openPaper();
    await page.getByLabel("Title", { exact: true }).fill("Mine");
    await expect.poll(() => page.evaluate(() => localStorage.length)).toBe(1);
    const title = await page.title();
    const scripts = await page.locator("script").count();
    const goTo = async (fragment: string) =>
      page.evaluate((hash) => {
        location.hash = hash;
      }, fragment);

    await goTo(await toFragment(crafted));
    await page.getByText("The paper of the link is open.").waitFor();
    await page.getByText("expected one of solid, solution, both").first().waitFor();
    expect(await page.locator("img").count()).toBe(0);
    expect(await page.locator("script").count()).toBe(scripts);
    await page.locator(".fault").first().waitFor();
    expect(await page.title()).toBe(title);

    for (const [fragment, words] of [
      ["#paper=%%%", "It is damaged or was cut off"],
      [`#paper=${"A".repeat(40_000)}`, "letters long"],
      [await toFragment("x".repeat(5_000_000)), "unpacks to more than 64 kB"],
      [`${(await toFragment(TWO_JARS)).slice(0, 60)}`, "It is damaged or was cut off"],
    ]) {
      await goTo(fragment);
      await page.getByText(words).waitFor();
    }
    await page.getByLabel("Papers kept here").selectOption({ label: "Mine" });
    expect(await page.getByLabel("Title", { exact: true }).inputValue()).toBe("Mine");
  }, 60_000);

  test("a link that holds no paper opens none, and the news of a file goes when the next one is faulty", async () => {
    const { page } = await openPaper({}, await toFragment({}));
    await page.getByText("The link holds no paper.").waitFor();
    expect(await page.getByLabel("Papers kept here").count()).toBe(0);

    await page.getByText("Open the file of a practical").click();
    const text = page.getByLabel("Or its text");
    await text.fill(FILE.replace("0.2 mol", "0.2 mol/dm3"));
    await page.getByRole("button", { name: "Open this text" }).click();
    const news = page.getByText("The paper of the file is open.");
    await news.waitFor();
    expect(await page.getByText("The link holds no paper.").count()).toBe(0);
    await text.fill("---\ntitle: [unclosed\nsamples:\n---\n");
    await page.getByRole("button", { name: "Open this text" }).click();
    await page
      .getByText(/Line \d+, column \d+: the frontmatter is not YAML/)
      .first()
      .waitFor();
    expect(await news.count()).toBe(0);
  }, 60_000);

  test("storage that is refused is said, and the page works on", async () => {
    const { page } = await openPage("");
    await page.addInitScript(() => {
      Object.defineProperty(window, "localStorage", {
        get: () => {
          throw new DOMException("refused", "SecurityError");
        },
      });
    });
    await page.goto(new URL("paper/", inject("builtSite").address).href);
    await page.getByText("This browser does not keep anything for this page").waitFor();
    await page.getByLabel("Title", { exact: true }).fill("Mine");
    await worked(page);
  }, 60_000);
});

/** Presses Tab until an element has the focus. */
async function tabTo(page: Page, to: Locator) {
  for (let presses = 0; presses < 250; presses++) {
    if (await to.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error("The Tab key does not lead there.");
}

test("with the keyboard alone: a part, a step, an observation, a deletion", async () => {
  const { page } = await openPaper();
  await tabTo(page, page.getByLabel("Title", { exact: true }));
  await page.keyboard.type("By keys");
  await tick(page, "cations", ["zinc", "copper(II)"]);
  await tick(page, "anions", ["sulfate"]);
  await tabTo(page, page.getByRole("button", { name: "Add a part, with a fresh tube" }));
  await page.keyboard.press("Enter");
  // The focus is in the new part.
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("f-parts-0-title");
  await tabTo(page, page.getByRole("button", { name: "Add a step to a" }));
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("f-parts-0-tests-0-steps-1-verb");
  await tabTo(page, page.getByLabel("Reagent of step 2 of a"));
  await page.keyboard.type("aqueous sodium h");
  await cell(page, "a for P").waitFor({ timeout: 60_000 });
  await tabTo(page, cell(page, "a for P"));
  await page.keyboard.type("white");
  await expect.poll(() => verdict(page).textContent(), { timeout: 30_000 }).toContain("zinc sulfate");
  await page.keyboard.press("Home");
  await tabTo(page, page.getByRole("button", { name: "Print" }));
  await page.getByRole("button", { name: "Delete this paper …" }).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.getByLabel("Title", { exact: true }).inputValue()).toBe("");
  expect(await page.locator("#f-title").evaluate((element) => element === document.activeElement)).toBe(true);
}, 120_000);

test.each([
  { width: 360, colorScheme: "light" as const },
  { width: 1280, colorScheme: "dark" as const },
])(
  "a paper that is filled in fits $width px and keeps the accessibility rules",
  async (options) => {
    const { page } = await openPaper(
      options,
      await toFragment({ ...TWO_JARS, record: { P: { "a(i)": { precipitate: "white" } } } }),
    );
    await verdict(page).waitFor({ timeout: 60_000 });
    const [wide, seen] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(wide).toBeLessThanOrEqual(seen);
    const { violations } = await new AxeBuilder({ page })
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
      .setLegacyMode(true)
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
  },
  120_000,
);

test("an example is a paper without its answer", async () => {
  const { page } = await openPaper();
  await page.getByLabel("Start from an example").selectOption("shed-two-tins");
  await page.getByText("The example is open").waitFor();
  expect(await page.getByLabel("Title", { exact: true }).inputValue()).not.toBe("");
  await cell(page, "a(i) for H").or(page.locator("table.record select").first()).first().waitFor({ timeout: 90_000 });
  expect(await page.locator("table.record select").first().inputValue()).toBe("");
}, 120_000);

test("without JavaScript the page says what it does and where to go on", async () => {
  const { page } = await openPage("paper/", { javaScriptEnabled: false });
  await page.getByRole("heading", { name: "Your own paper" }).waitFor();
  // The browser that is driven here does not draw this part, but holds it.
  const said = await page.locator("main noscript").innerHTML();
  expect(said).toContain("needs JavaScript");
  expect(said).toContain("/ion-tests/");
});
