import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { builtSite } from "../build-output/pages.ts";
import { openPage } from "./setup/open-page.ts";

/** Levels A and AA of the guidelines, versions 2.0 to 2.2. */
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** Addresses of all pages below the base path; the page for unknown addresses is reached by one. */
const pages = builtSite()
  .pages.map(({ file }) => (file === "404.html" ? "no-such-page/" : file.replace(/index\.html$/, "")))
  .sort();

const open = async (path: string, colorScheme: "light" | "dark") => {
  const { page } = await openPage(path, { colorScheme, status: path === "no-such-page/" ? 404 : 200 });
  await readToTheEnd(page);
  return page;
};

/** What the guidelines object to, as "rule: the element". */
async function objections(page: Page): Promise<string[]> {
  // Without frames there is no need for the second, blank page that the check otherwise opens.
  const { violations, passes } = await new AxeBuilder({ page }).withTags(RULES).setLegacyMode(true).analyze();
  expect(passes.length).toBeGreaterThan(5);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
  );
}

test("there are pages to check", () => {
  expect(pages).toContain("practicals/lamp-room-shelf/");
  expect(pages.length).toBeGreaterThan(10);
});

test.each(pages)("/%s can be read by everyone, on light paper", async (path) => {
  expect(await objections(await open(path, "light"))).toEqual([]);
});

/** All walkthroughs, and the first page of each other kind. */
const ONE_OF_EACH = pages.filter(
  (path) =>
    /^practicals\/|^$|^search|^no-such/.test(path) ||
    /^[^/]+\/$/.test(path) ||
    path === pages.find((other) => other.split("/").length > 2 && other.startsWith(`${path.split("/")[0]}/`)),
);

test.each(ONE_OF_EACH)("/%s can be read by everyone, on dark paper", async (path) => {
  expect(await objections(await open(path, "dark"))).toEqual([]);
});

describe.each(["light", "dark"] as const)("what appears only on use, on %s paper", (scheme) => {
  test("a record that contradicts itself and a tube too small", async () => {
    const page = await open("practicals/lamp-room-shelf/", scheme);
    await page.getByRole("combobox", { name: "b(ii) for R" }).selectOption({ label: "precipitate remains" });
    await page.getByRole("combobox", { name: /^Test-tubes/ }).selectOption({ label: "test-tube 75 × 10 mm" });
    await page.getByText("Take another tube.").first().waitFor();
    await page.getByText("Repeat first.").waitFor();
    await page.getByRole("grid", { name: "Evidence for R" }).getByRole("gridcell", { name: "clashes" }).first().click();
    await page.getByText(/ at \S+: clashes\. Seen: /).waitFor();
    await page.getByRole("heading", { name: "What changed" }).waitFor();
    expect(await objections(page)).toEqual([]);
  });

  test("a changed curve, a strength that is none and a salt that cannot be", async () => {
    const page = await open("practicals/conservators-bench/curves/", scheme);
    const curve = page.locator("#A-ai");
    await curve.getByRole("textbox", { name: "Strength of sample A" }).fill("0.5");
    await curve.getByRole("combobox").selectOption("Ba(NO3)2");
    await curve.getByText("Not drawn: barium nitrate").waitFor();
    await curve.getByRole("textbox", { name: /^Strength of (?!sample)/ }).fill("strong");
    await curve.getByRole("slider", { name: /^Look along/ }).press("ArrowRight");
    await curve.getByText("Give a strength from").waitFor();
    await curve.locator("summary").click();
    expect(await objections(page)).toEqual([]);
  });

  test("what the search found", async () => {
    const page = await open("search/?q=ammonia", scheme);
    await page.getByRole("status").filter({ hasText: "pages for" }).waitFor();
    expect(await objections(page)).toEqual([]);
  });
});
