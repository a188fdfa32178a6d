/** Pages turned the other way, as for a language that runs from right to left: nothing leaves the page, nothing comes to lie on another. */
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { openPage } from "./setup/open-page.ts";

const PAGES = ["practicals/shed-two-tins/", "paper/", "ion-tests/barium/", "practicals/shed-two-tins/class/"];

/** How far the page reaches beyond the window, in CSS pixels. */
const beyond = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Neighbours whose boxes lie on one another, in words; pixels are no part of them. */
const overlaps = (page: Page) =>
  page.evaluate(() => {
    const shown = (element: Element) => {
      const { display, position, float } = getComputedStyle(element);
      const box = element.getBoundingClientRect();
      return (
        box.width > 2 &&
        box.height > 2 &&
        /^(?:block|flex|grid|table|list-item)$/.test(display) &&
        /static|relative/.test(position) &&
        float === "none"
      );
    };
    const name = (element: Element) => `${element.tagName} ${element.textContent?.trim().slice(0, 30)}`;
    const found: string[] = [];
    for (const parent of document.querySelectorAll("body, body *:not(svg *)")) {
      const children = [...parent.children].filter(shown);
      for (const [index, one] of children.entries()) {
        const next = children[index + 1];
        if (!next) continue;
        const [a, b] = [one.getBoundingClientRect(), next.getBoundingClientRect()];
        const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        if (across > 2 && down > 2) found.push(`${name(one)} / ${name(next)}`);
      }
    }
    return found;
  });

test.each(PAGES.flatMap((path) => [360, 1280].map((width) => [path, width] as const)))(
  "%s at %i px",
  { timeout: 60_000 },
  async (path, width) => {
    const { page } = await openPage(path, { width, height: 800 });
    await readToTheEnd(page);
    const before = await overlaps(page);
    await page.evaluate(() => {
      document.documentElement.dir = "rtl";
      window.scrollTo(0, 0);
    });
    expect(await beyond(page)).toBe(0);
    expect((await overlaps(page)).filter((one) => !before.includes(one))).toEqual([]);
    // The first heading begins where a line begins, and a formula reads as it always does.
    const heading = await page
      .locator("h1")
      .first()
      .evaluate((one) => getComputedStyle(one).direction);
    expect(heading).toBe("rtl");
    const formulas = page.locator("main .f");
    if ((await formulas.count()) > 0)
      expect(await formulas.first().evaluate((one) => getComputedStyle(one).direction)).toBe("ltr");
  },
);
