/** Writes the whole course, as built, to one PDF with contents and page numbers: `npm run booklet -- --out ionwright.pdf`. */
import { existsSync, readFileSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import type { Page } from "playwright-core";
import { pageNumbers } from "./booklet/page-numbers.ts";
import { startChromium } from "./chromium.ts";
import { DIST, LAST_BUILD, type LastBuild } from "./last-build.ts";
import { serve } from "./serve.ts";

/** A long course takes its time on a slow machine; the limit only ends what hangs. */
const PATIENCE = 600_000;

/** Writes beside each entry of the contents the page it stands on. @returns how many were written anew */
function writeNumbers(page: Page, numbers: ReadonlyMap<string, number>): Promise<number> {
  return page.evaluate(
    (pairs) => {
      const known = new Map(pairs);
      let changed = 0;
      for (const anchor of document.querySelectorAll<HTMLAnchorElement>("#contents a")) {
        const number = String(known.get(anchor.hash.slice(1)) ?? "");
        if (anchor.dataset.page === number) continue;
        anchor.dataset.page = number;
        changed += 1;
      }
      return changed;
    },
    [...numbers],
  );
}

/**
 * Prints the booklet of a served course.
 * @param address of the course's first page, ending in a slash
 * @returns the PDF, and how many entries its contents have
 */
export async function printBooklet(
  page: Page,
  address: string,
): Promise<{ pdf: Buffer; numbers: Map<string, number> }> {
  page.setDefaultTimeout(PATIENCE);
  await page.goto(`${address}booklet/`);
  await page.locator("#put-together").click();
  await page.locator("html[data-booklet=whole]").waitFor();
  const print = () => page.pdf({ preferCSSPageSize: true, tagged: true, outline: true });
  let pdf = await print();
  let numbers = pageNumbers(pdf);
  // With the numbers in them the contents could take another line, and every page be another.
  for (let times = 0; (await writeNumbers(page, numbers)) > 0; times += 1) {
    if (times === 4) throw new Error("The page numbers of the contents do not settle.");
    pdf = await print();
    numbers = pageNumbers(pdf);
  }
  return { pdf, numbers };
}

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { out: { type: "string", default: "ionwright.pdf" } } });
  if (!existsSync(LAST_BUILD)) throw new Error("There is no complete build to print. Build first: npm run build");
  const { base } = JSON.parse(readFileSync(LAST_BUILD, "utf8")) as LastBuild;
  const out = resolve(values.out);
  const site = await serve({ port: 0, base, dist: DIST });
  const browser = await startChromium();
  try {
    const { pdf, numbers } = await printBooklet(await browser.newPage(), site.address);
    await writeFile(out, pdf);
    const last = Math.max(...numbers.values());
    console.log(
      `Written to ${relative(process.cwd(), out)}, ${(pdf.length / 1e6).toFixed(1)} MB; the last chapter begins on page ${last}.`,
    );
  } finally {
    await browser.close();
    await site.close();
  }
}

if (import.meta.main) {
  try {
    await main();
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
