/** Practising blind: a whole practice to its marks by keyboard alone, and what a number, a reload and a crafted address do. */
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

const PAGE = "practicals/shed-two-tins/practice/";

const shownOn = (page: Page) => page.locator(".tube .looked p").allTextContents();
const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent?.trim() ?? "");

/** Presses Tab until the control has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let pressed = 0; pressed < 60; pressed++) {
    await page.keyboard.press("Tab");
    const label = await page.evaluate(() => {
      const at = document.activeElement;
      const labels = at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? [...(at.labels ?? [])] : [];
      return at?.getAttribute("aria-label") ?? labels[0]?.textContent ?? at?.textContent ?? "";
    });
    if (name.test(label.trim())) return;
  }
  throw new Error(`Tab never reached ${name}`);
}

async function begin(page: Page, number: string): Promise<void> {
  const field = page.getByRole("textbox", { name: "Number of the set" });
  await expect.poll(() => field.isEnabled()).toBe(true);
  await field.fill(number);
  await field.press("Enter");
  await page.getByRole("button", { name: "Carry it out" }).waitFor();
}

test("a whole practice, from a number to the marks, by keyboard alone", async () => {
  const { page } = await openPage(PAGE);
  await expect.poll(() => page.getByRole("button", { name: "Begin", exact: true }).isEnabled()).toBe(true);
  await tabTo(page, /^Number of the set/);
  await page.keyboard.type("1234");
  await page.keyboard.press("Enter");
  await expect.poll(() => new URL(page.url()).searchParams.get("seed")).toBe("1234");
  const tests = await page.getByRole("list", { name: "Tests of this practical" }).getByRole("listitem").count();
  for (let done = 0; done < tests - 1; done++) {
    // Focus stands on the heading of the test, so that Tab leads into it.
    await expect.poll(() => focused(page)).toMatch(/^[a-z](\([ivx]+\))? /);
    await tabTo(page, /^Carry it out$/);
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toBe("What you see");
    const lines = await page.getByRole("textbox", { name: /^Your record for/ }).count();
    for (let line = 0; line < lines; line++) {
      await tabTo(page, /^Your record for/);
      await page.keyboard.type("nvc");
    }
    // Enter in the last line shows the model wording.
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toMatch(/^Marked: \d of \d/);
    expect(await page.locator(".marked").count()).toBe(lines);
    await tabTo(page, /^On to/);
    await page.keyboard.press("Enter");
  }
  await expect.poll(() => focused(page)).toMatch(/^Conclude/);
  await tabTo(page, /^Cation/);
  await page.keyboard.press("ArrowDown");
  await tabTo(page, /^Mark it all$/);
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toMatch(/^Marked: \d+ of \d+/);
  expect(await page.getByRole("heading", { name: "What to practise next" }).isVisible()).toBe(true);
  expect(await page.locator(".result .reason, .result .lines .small").count()).toBeGreaterThan(0);
  // It counts as practised, once, also after the page is loaded again.
  const practised = () => page.evaluate(() => localStorage.getItem("ionwright.practised.shed-two-tins"));
  const kept = await practised();
  expect(JSON.parse(kept ?? "{}").occasions).toMatchObject([{ how: "blind", seed: 1234 }]);
  await page.reload();
  await page.getByRole("heading", { name: /^Marked: \d+ of \d+/ }).waitFor();
  expect(await practised()).toBe(kept);
});

test("what is written is read, questioned and marked with the reason", async () => {
  const { page } = await openPage(PAGE);
  await begin(page, "1234");
  await page.getByRole("button", { name: "Carry it out" }).click();
  const own = page.getByRole("textbox", { name: "Your record for A" });
  await own.fill("purple ppt");
  await page.getByText("Read as: purple precipitate.").waitFor();
  await own.fill("clear solution");
  await page.getByText('"Clear" is not a colour').waitFor();
  await own.fill("purple ppt");
  await page.getByRole("combobox", { name: "or choose" }).last().selectOption({ index: 1 });
  expect(await page.getByRole("textbox", { name: "Your record for B" }).inputValue()).not.toBe("");
  await page.getByRole("button", { name: "Show the model wording" }).click();
  expect(await page.locator(".marked").first().textContent()).toMatch(
    /The precipitate was .*, not purple|Nothing changed/,
  );
});

test("an empty line is asked for once, and then left out", async () => {
  const { page } = await openPage(PAGE);
  await begin(page, "77");
  await page.getByRole("button", { name: "Carry it out" }).click();
  await page.getByRole("button", { name: "Show the model wording" }).click();
  await page.getByText("A line is still empty.").waitFor();
  await page.getByRole("button", { name: "Show the model wording" }).click();
  expect(await page.getByRole("heading", { name: /^Marked: 0 of/ }).isVisible()).toBe(true);
});

test("a page that is loaded again goes on where it was, and clearing forgets it", async () => {
  const { page } = await openPage(PAGE);
  await begin(page, "4321");
  await page.getByRole("textbox", { name: /^What could you see/ }).fill("a green or a white solid");
  await page.getByRole("button", { name: "Carry it out" }).click();
  await page.getByRole("textbox", { name: "Your record for B" }).fill("white ppt");
  const before = await shownOn(page);
  await page.reload();
  await page.getByRole("heading", { name: "What you see" }).waitFor();
  expect(await page.getByRole("textbox", { name: "Your record for B" }).inputValue()).toBe("white ppt");
  expect(await shownOn(page)).toEqual(before);
  expect(await page.getByText("You expected: a green or a white solid").isVisible()).toBe(true);
  // The address without its number goes on as well.
  await page.goto(page.url().replace(/\?.*/, ""));
  await page.getByRole("heading", { name: "What you see" }).waitFor();
  await page.getByRole("button", { name: "Clear and choose another number" }).click();
  await page.getByRole("textbox", { name: "Number of the set" }).waitFor();
  await page.reload();
  await page.getByRole("textbox", { name: "Number of the set" }).waitFor();
  expect(await page.evaluate(() => localStorage.getItem("ionwright.practice.shed-two-tins"))).toBeNull();
});

test("a link with another number asks before it ends a practice that is under way", async () => {
  const { page } = await openPage(PAGE);
  await begin(page, "4321");
  await page.getByRole("button", { name: "Carry it out" }).click();
  await page.getByRole("textbox", { name: "Your record for A" }).fill("white ppt");
  await page.goto(page.url().replace("4321", "99"));
  await page.getByRole("button", { name: "Go on with set 4321" }).click();
  expect(await page.getByRole("textbox", { name: "Your record for A" }).inputValue()).toBe("white ppt");
  await page.goto(page.url().replace("4321", "99"));
  await page.getByRole("button", { name: "Give it up and begin set 99" }).click();
  await page.getByRole("button", { name: "Carry it out" }).waitFor();
  expect(new URL(page.url()).searchParams.get("seed")).toBe("99");
});

test("the same number gives the same unknowns in a fresh profile, another number others", async () => {
  const seen = async (seed: string) => {
    const { page } = await openPage(`${PAGE}?seed=${seed}`);
    await page.getByRole("button", { name: "Carry it out" }).click();
    return shownOn(page);
  };
  const first = await seen("2026");
  expect(await seen("2026")).toEqual(first);
  const others = await Promise.all(["1", "2", "3", "4"].map(seen));
  expect(others.some((other) => other.join() !== first.join())).toBe(true);
});

test.each(["0", "12x", "1e9", "%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E", "9".repeat(3000)])(
  "a crafted number is refused politely: %s",
  async (seed) => {
    const { page } = await openPage(`${PAGE}?seed=${seed}`);
    const said = page.getByRole("alert");
    await expect
      .poll(() => said.textContent())
      .toMatch(/expected a whole number from 1 to 999999\. Choose one below\.$/);
    expect((await said.textContent())?.length).toBeLessThan(150);
    await begin(page, "5");
    expect(await page.getByRole("alert").count()).toBe(0);
  },
);

test("a kept practice that cannot be read is left alone, and a new one begins", async () => {
  const { page } = await openPage(PAGE);
  await page.evaluate(() => localStorage.setItem("ionwright.practice.shed-two-tins", '{"version":9}'));
  await page.reload();
  await begin(page, "8");
  expect(await page.getByRole("heading", { name: /^a\(i\)/ }).isVisible()).toBe(true);
});

test("it saves a file with what was written and the marks", async () => {
  const { page } = await openPage(PAGE);
  await begin(page, "31");
  const tests = await page.getByRole("list", { name: "Tests of this practical" }).getByRole("listitem").count();
  for (let done = 0; done < tests - 1; done++) {
    await page.getByRole("button", { name: "Carry it out" }).click();
    for (const line of await page.getByRole("textbox", { name: /^Your record for/ }).all())
      await line.fill("white ppt");
    await page.getByRole("button", { name: "Show the model wording" }).click();
    await page.getByRole("button", { name: /^On to/ }).click();
  }
  await page.getByRole("button", { name: "Mark it all" }).click();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save as a file" }).click(),
  ]);
  expect(file.suggestedFilename()).toBe("shed-two-tins-31.json");
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  const saved = JSON.parse(Buffer.concat(chunks).toString("utf8"));
  expect(saved.practice).toMatchObject({ practical: "shed-two-tins", seed: 31, concluded: true });
  expect(saved.practice.lines["a(i)"]).toEqual({ A: "white ppt", B: "white ppt" });
  expect(saved.progress.practised).toHaveLength(1);
});

test("without script the page explains itself and leads to the blank record", async () => {
  const { page } = await openPage(PAGE, { javaScriptEnabled: false });
  expect(await page.locator("noscript p", { hasText: "needs JavaScript" }).isVisible()).toBe(true);
  await page.getByRole("link", { name: "blank record sheet" }).click();
  expect(new URL(page.url()).pathname).toMatch(/shed-two-tins\/sheets\/record\/$/);
});

test("no salt stands in the words of the page before it is marked", async () => {
  const { page } = await openPage(`${PAGE}?seed=1234`);
  await page.getByRole("button", { name: "Carry it out" }).waitFor();
  const words = await page.locator(".practise").textContent();
  expect(words).not.toMatch(/sulfate|chloride|nitrate|carbonate/i);
});
