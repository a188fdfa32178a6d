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

/** What was proved and what to test next come a frame or two later; after so long without them nothing more comes. */
const SETTLED_MS = 400;

/**
 * Changes one observation after the other, to its next reading and back, with the conclusion in sight. The time runs from the event of the
 * select to the end of the frame that paints verdict and evidence, as far as they are in sight; `settled` to the end of the last frame that
 * changed something there, out of sight or in words that follow. A task that comes before all others stands right behind the frame: what
 * effects and timers do next is not part of it. Needs a site built in DIST.
 * @throws Error when verdict or evidence in sight came to say something else after the frame that was taken for theirs
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
    await page.locator("#conclude").evaluate((heading) => heading.scrollIntoView());
    await page.waitForTimeout(500);
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    const each = (await changesOn(page)).slice(WARM_UP);
    const first = each.map(({ painted }) => painted);
    const loopMs = median(await loopsOn(page));
    return {
      medianMs: rounded(median(first)),
      p99Ms: rounded(quantile(first, 0.99)),
      settledMs: rounded(median(each.map(({ settled }) => settled))),
      changes: each.length,
      loopMs: rounded(loopMs),
    };
  } finally {
    await browser.close();
    await site.close();
  }
}

/** Times of a fixed piece of arithmetic in the same page: tells how quiet the machine was. */
const loopsOn = (page: Page): Promise<number[]> =>
  page.evaluate(() =>
    Array.from({ length: 15 }, () => {
      const begun = performance.now();
      let state = 1;
      for (let i = 0; i < 200_000; i++) state = (state * 48271) % 2147483647;
      return state > 0 ? performance.now() - begun : 0;
    }),
  );

interface Change {
  /** Times since the event, ms. */
  painted: number;
  settled: number;
}

function changesOn(page: Page): Promise<Change[]> {
  return page.evaluate(
    async ({ changes, settledMs }) => {
      const conclusion = document.querySelector("[aria-labelledby=conclude]");
      if (!conclusion) throw new Error("the page has no conclusion");
      /** The sentence for screen readers comes before the conclusion and is not painted. */
      const isSpoken = ({ target }: MutationRecord) =>
        (target instanceof Element ? target : target.parentElement)?.closest("[aria-live]");
      // Why an ion is out, and what proves another, follows a frame later.
      const says = (one: Element) => `${one.className} ${one.textContent?.replace(/^(certain|out:).*/, "$1")}`;
      /** Verdict and evidence that a reader sees: each line of the verdict, each mark, how each ion stands; with what each says. */
      const inSight = () =>
        [...conclusion.querySelectorAll(".verdict li, .matrix tbody td")]
          .filter((one) => {
            const { top, bottom } = one.getBoundingClientRect();
            return bottom > 0 && top < innerHeight;
          })
          .map((one) => ({ one, said: says(one) }));
      /** The frames that painted something new in the conclusion; none when the change makes no difference there. */
      const change = (select: HTMLSelectElement, value: string): Promise<number[]> =>
        new Promise((done, fail) => {
          const frames: number[] = [];
          let first: ReturnType<typeof inSight> | undefined;
          const begun = performance.now();
          const watch = new MutationObserver((mutations) => {
            if (mutations.every(isSpoken)) return;
            requestAnimationFrame(() => {
              const behind = () => {
                frames.push(performance.now() - begun);
                first ??= inSight();
              };
              scheduler.postTask(behind, { priority: "user-blocking" });
            });
          });
          watch.observe(conclusion, { childList: true, subtree: true, characterData: true, attributes: true });
          select.value = value;
          select.dispatchEvent(new Event("change", { bubbles: true }));
          setTimeout(() => {
            watch.disconnect();
            if (first?.some(({ one, said }) => says(one) !== said))
              fail(new Error(`${select.ariaLabel}: more came later`));
            done(frames);
          }, settledMs);
        });
      const all: Change[] = [];
      const selects = [...document.querySelectorAll<HTMLSelectElement>("[aria-labelledby=record] select")];
      for (const select of selects.slice(0, changes)) {
        const before = select.value;
        const other = [...select.options].find(({ value }) => value !== before)?.value ?? "";
        for (const value of [other, before]) {
          const frames = await change(select, value);
          if (frames.length > 0) all.push({ painted: frames[0], settled: Math.max(...frames) });
        }
      }
      return all;
    },
    { changes: CHANGES, settledMs: SETTLED_MS },
  );
}
