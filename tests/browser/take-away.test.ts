/** A walkthrough as one file, opened from disk: nothing is loaded, and its islands work. */
import { copyFile, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { builtSite } from "../build-output/pages.ts";
import { type OpenedPage, openPage, type ReaderOptions } from "./setup/open-page.ts";

/** Away from the course: what the file names besides itself is not there. */
let disk: string;
beforeAll(async () => {
  disk = await mkdtemp(join(tmpdir(), "taken-"));
});
afterAll(() => rm(disk, { recursive: true }));

/** Opens the file of a walkthrough; what it asks for but itself and what it holds is kept. */
async function openFile(
  name: string,
  options: ReaderOptions = {},
  search = "",
): Promise<OpenedPage & { asked: string[] }> {
  const file = join(disk, `${name}.html`);
  await copyFile(join(inject("builtSite").dist, "take-away", `${name}.html`), file);
  const opened = await openPage("", options);
  const address = pathToFileURL(file).href + search;
  const asked: string[] = [];
  opened.context.on("request", (request) => {
    if (request.url() !== address && !request.url().startsWith("data:")) asked.push(request.url());
  });
  await opened.page.goto(address);
  return { ...opened, asked };
}

const NITRATE = "R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.";

test("a changed observation changes the conclusion, with nothing loaded", async () => {
  const { page, asked, takeFaults } = await openFile("lamp-room-shelf");
  const place = page.getByRole("combobox", { name: "c(ii) for R", exact: true });
  await expect.poll(() => place.isEnabled()).toBe(true);
  await place.selectOption({ label: "no visible change" });
  const conclude = page.getByRole("region", { name: /^Conclude/ });
  await expect.poll(() => conclude.getByRole("listitem").allTextContents()).toContain(NITRATE);
  // From disk the address cannot hold a record, and the page does not say that it does.
  await page.getByText("keeps no record: print it to keep yours").waitFor();

  // The other island, and the further reasons behind a mark.
  await page.getByRole("combobox", { name: /^Test-tubes/ }).selectOption({ label: "test-tube 75 × 10 mm" });
  await page.getByText("Take another tube.").first().waitFor();
  await page.getByRole("grid", { name: "Evidence for R" }).getByRole("gridcell", { name: "clashes" }).first().click();
  await page.getByText(/ at \S+: clashes\. Seen: /).waitFor();
  expect(asked).toEqual([]);
  expect(takeFaults()).toEqual([]);
});

test("a conclusion can be held back in a file too", async () => {
  const { page } = await openFile("lamp-room-shelf", {}, "?record=own&conclusion=asked");
  const conclude = page.getByRole("region", { name: /^Conclude/ });
  await conclude.getByRole("button", { name: "Show the conclusion" }).waitFor();
  expect(await conclude.getByRole("listitem").filter({ visible: true }).count()).toBe(0);
});

test("without script it reads as the page does", async () => {
  const { page, asked } = await openFile("lamp-room-shelf", { javaScriptEnabled: false });
  expect(
    await page
      .getByRole("region", { name: /^Conclude/ })
      .getByRole("listitem")
      .first()
      .isVisible(),
  ).toBe(true);
  expect(await page.evaluate(() => getComputedStyle(document.body).margin)).toBe("0px");
  expect(asked).toEqual([]);
});

const names = [...builtSite().files].flatMap((file) => file.match(/^take-away\/([^/]+)\.html$/)?.[1] ?? []);

test("every walkthrough can be taken away", () => {
  const walkthroughs = [...builtSite().files].flatMap(
    (f) => f.match(/^practicals\/([^/]+)\/predictions\.json$/)?.[1] ?? [],
  );
  expect(walkthroughs.length).toBeGreaterThan(1);
  expect(names.toSorted()).toEqual(walkthroughs.toSorted());
});

test.each(names)("%s starts from disk, wide or narrow, under its own policy", async (name) => {
  const { page, asked, takeFaults } = await openFile(name, { width: 360, height: 740 });
  await expect.poll(() => page.locator("astro-island[ssr]").count()).toBe(0);
  await expect.poll(() => page.getByRole("button", { name: "Start with an empty record" }).isEnabled()).toBe(true);
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(sideways).toBe(0);
  const policy = await page.locator('meta[http-equiv="content-security-policy"]').getAttribute("content");
  expect(policy).toMatch(/^default-src 'none'; script-src 'sha256-[^']+' 'sha256-[^']+'; style-src 'sha256-[^']+';/);
  expect(asked).toEqual([]);
  expect(takeFaults()).toEqual([]);
});

test("links to other pages lead to the host where it is known, and are plain words where it is not", () => {
  const html = builtSite().read("take-away/lamp-room-shelf.html").toString("utf8");
  const hrefs = [...html.matchAll(/<a [^>]*href="([^"]*)"/g)].map(([, href]) => href);
  expect(hrefs.length).toBeGreaterThan(5);
  expect(hrefs.filter((href) => !href.startsWith("#"))).toEqual([]);
});
