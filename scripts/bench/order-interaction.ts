/** From another choice to the painted order of work, in a real browser slowed down. */
import { startChromium } from "../chromium.ts";
import { readToTheEnd } from "../page-weight.ts";
import { serve } from "../serve.ts";
import { DIST } from "./site.ts";
import { median, quantile, rounded, say } from "./timing.ts";

/** A school's machine against ours. */
const SLOWER = 4;
const WARM_UP = 4;
const ROUNDS = 4;

/** People there and back, burners, fewer tubes: each choice of each list once in every round. Needs a site built in DIST. */
export async function benchOrderInteraction(id: string) {
  say(`order of work: ${id}, processor ${SLOWER} times slower`);
  const site = await serve({ port: 0, base: "/", dist: DIST });
  const browser = await startChromium();
  try {
    const page = await browser.newPage();
    await page.goto(`${site.address}practicals/${id}/order/`);
    await readToTheEnd(page);
    await page.locator(".tools select:not([disabled])").first().waitFor();
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    const each = await page.evaluate(async (rounds) => {
      const choose = (select: HTMLSelectElement, value: string): Promise<number> =>
        new Promise((done) => {
          const begun = performance.now();
          const watch = new MutationObserver(() => {
            watch.disconnect();
            requestAnimationFrame(() => {
              const painted = new MessageChannel();
              painted.port1.onmessage = () => done(performance.now() - begun);
              painted.port2.postMessage(null);
            });
          });
          watch.observe(document.querySelector("main") as HTMLElement, {
            childList: true,
            subtree: true,
            characterData: true,
          });
          select.value = value;
          select.dispatchEvent(new Event("change", { bubbles: true }));
        });
      const times: number[] = [];
      for (let round = 0; round < rounds; round++) {
        for (const select of document.querySelectorAll<HTMLSelectElement>(".tools select")) {
          const own = select.value;
          for (const { value } of [...select.options].filter((option) => option.value !== own)) {
            times.push(await choose(select, value));
          }
          await choose(select, own);
        }
      }
      return times;
    }, ROUNDS);
    const counted = each.slice(WARM_UP);
    return { medianMs: rounded(median(counted)), p99Ms: rounded(quantile(counted, 0.99)), choices: counted.length };
  } finally {
    await browser.close();
    await site.close();
  }
}
