/** From a changed observation to the painted conclusion, in a real browser slowed down. */
import type { Page } from "playwright-core";
import { startChromium } from "../chromium.ts";
import { readToTheEnd } from "../page-weight.ts";
import { serve } from "../serve.ts";
import { DIST } from "./site.ts";
import { median, quantile, rounded, say } from "./timing.ts";

/** A school's machine against ours. */
const SLOWER = 4;
/** Observations changed, each there and back. */
const CHANGES = 20;
const WARM_UP = 4;

/**
 * Changes one observation after the other, to its next reading and back. The time runs from the event of the select to the first task
 * after the frame that paints the new conclusion. Needs a site built in DIST.
 */
export async function benchInteraction(id: string) {
  say(`interaction: ${id}, processor ${SLOWER} times slower`);
  const site = await serve({ port: 0, base: "/", dist: DIST });
  const browser = await startChromium();
  try {
    const page = await browser.newPage();
    await page.goto(`${site.address}practicals/${id}/`);
    await readToTheEnd(page);
    await page.getByRole("region", { name: /^Record/ }).hover();
    // The first change loads the reasoning and replaces the conclusion as built.
    await page.locator("table select").first().selectOption("");
    await page.getByRole("button", { name: /^Reset/ }).waitFor();
    await page.waitForTimeout(500);
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    const all = await changeMs(page);
    const each = all.slice(WARM_UP);
    return { medianMs: rounded(median(each)), p99Ms: rounded(quantile(each, 0.99)), changes: each.length };
  } finally {
    await browser.close();
    await site.close();
  }
}

function changeMs(page: Page): Promise<number[]> {
  return page.evaluate(async (changes) => {
    const conclusion = document.querySelector("[aria-labelledby=conclude]");
    if (!conclusion) throw new Error("the page has no conclusion");
    /** Time until the conclusion has changed and is painted; undefined when the change makes no difference there. */
    const change = (select: HTMLSelectElement, value: string): Promise<number | undefined> =>
      new Promise((done) => {
        const begun = performance.now();
        const given = setTimeout(() => {
          watch.disconnect();
          done(undefined);
        }, 2000);
        const watch = new MutationObserver((mutations) => {
          // The sentence for screen readers comes after the conclusion and is not painted.
          if (mutations.every(({ target }) => target.parentElement?.closest("[aria-live]"))) return;
          watch.disconnect();
          clearTimeout(given);
          requestAnimationFrame(() => {
            const painted = new MessageChannel();
            painted.port1.onmessage = () => done(performance.now() - begun);
            painted.port2.postMessage(null);
          });
        });
        watch.observe(conclusion, { childList: true, subtree: true, characterData: true, attributes: true });
        select.value = value;
        select.dispatchEvent(new Event("change", { bubbles: true }));
      });
    const times: number[] = [];
    const selects = [...document.querySelectorAll<HTMLSelectElement>("[aria-labelledby=record] select")];
    for (const select of selects.slice(0, changes)) {
      const before = select.value;
      const other = [...select.options].find(({ value }) => value !== before)?.value ?? "";
      for (const value of [other, before]) {
        const ms = await change(select, value);
        if (ms !== undefined) times.push(ms);
        await new Promise((later) => setTimeout(later, 50));
      }
    }
    return times;
  }, CHANGES);
}
