/** The course kept on a device: stored when asked, read without a network, brought up to date when asked, removed. */
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { writeKeeping } from "../../scripts/keep-course.ts";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { type ServedSite, serve } from "../../scripts/serve.ts";
import { type OpenedPage, openPage } from "./setup/open-page.ts";

/** A copy, served apart: its host goes away and its files change. */
let dist: string;
let served: ServedSite;
const { base } = inject("builtSite");

beforeAll(async () => {
  dist = await mkdtemp(join(tmpdir(), "kept-"));
  await cp(inject("builtSite").dist, dist, { recursive: true });
  served = await serve({ port: 0, base, dist });
});
afterAll(async () => {
  await served.close();
  await rm(dist, { recursive: true });
});

const portOf = ({ address }: ServedSite) => Number(new URL(address).port);
const open = (path: string) => openPage(path, { site: served.address });
const go = (page: Page, path: string) => page.goto(new URL(path, served.address).href);
const kept = (page: Page) => page.getByText("It is the newest edition.").waitFor();
const caches = (page: Page) => page.evaluate(() => globalThis.caches.keys());

async function keepCourse(): Promise<OpenedPage> {
  const opened = await open("keep/");
  await opened.page.getByRole("button", { name: /^Keep this course/ }).click();
  await kept(opened.page);
  return opened;
}

/** No host answers any more; what the browser logs of that is no fault of the page. */
async function withoutNetwork(opened: OpenedPage, act: () => Promise<void>): Promise<void> {
  const port = portOf(served);
  await opened.context.setOffline(true);
  await served.close();
  try {
    await act();
    expect(opened.takeFaults().filter((fault) => !/net::ERR_|Failed to fetch|status of 404/.test(fault))).toEqual([]);
  } finally {
    served = await serve({ port, base, dist });
    await opened.context.setOffline(false);
  }
}

test("nothing is stored until the reader has seen the size and asked", async () => {
  const { page } = await open("keep/");
  const control = page.getByRole("button", { name: /^Keep this course on this device: \d+\.\d\sMB$/ });
  await control.waitFor();
  expect(await caches(page)).toEqual([]);
  await control.click();
  await kept(page);
  expect(await caches(page)).toHaveLength(1);
  // What is stored is what was said, within the last figure.
  const told = Number((await page.getByRole("status").textContent())?.match(/([\d.]+)\sMB/)?.[1]);
  const stored = await page.evaluate(async () => {
    const [name] = await globalThis.caches.keys();
    const cache = await globalThis.caches.open(name);
    const answers = await cache.matchAll();
    const sizes = await Promise.all(answers.map(async (answer) => (await answer.arrayBuffer()).byteLength));
    return sizes.reduce((sum, size) => sum + size, 0) / 1e6;
  });
  expect(stored).toBeGreaterThan(told - 0.06);
  // The list itself is stored beside them.
  expect(stored).toBeLessThan(told + 0.2);
});

test("without a network: a walkthrough concludes, a curve is drawn, search finds, a paper of one's own opens", async () => {
  const opened = await keepCourse();
  const { page } = opened;
  await withoutNetwork(opened, async () => {
    await go(page, "practicals/lamp-room-shelf/");
    await readToTheEnd(page);
    await page.getByRole("combobox", { name: "c(ii) for R", exact: true }).selectOption({ label: "no visible change" });
    const conclude = page.getByRole("region", { name: /^Conclude/ });
    await expect
      .poll(() => conclude.getByRole("listitem").allTextContents())
      .toContain("R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.");

    // The engine itself, in its worker.
    await go(page, "practicals/lamp-room-shelf/curves/");
    await readToTheEnd(page);
    const curve = page.locator("figure.curve").first();
    await curve.getByRole("combobox").selectOption("Fe(NO3)3");
    await curve.getByRole("heading", { name: /iron\(III\)/ }).waitFor();

    await go(page, "search/");
    await page.getByRole("combobox", { name: /^A word/ }).fill("silver nitrate");
    await page.keyboard.press("Enter");
    await page
      .getByRole("status")
      .filter({ hasText: /^\d+ pages for/ })
      .waitFor();

    await go(page, "paper/");
    await page.getByRole("heading", { level: 1, name: "Your own paper" }).waitFor();
    await page.getByRole("button").first().waitFor();

    // An address as people type it, and one that leads nowhere.
    await go(page, "method");
    expect(new URL(page.url()).pathname).toBe(`${base}method/`);
    expect((await go(page, "no-such-page/"))?.status()).toBe(404);
    await page.getByRole("heading", { level: 1, name: "No visible change" }).waitFor();
  });
});

test("a newer edition is told of on every page, fetched when asked, and the older copy goes", async () => {
  const { page, takeFaults } = await keepCourse();
  const [older] = await caches(page);
  const notice = page.getByRole("status").filter({ hasText: "A newer one is out" });
  await go(page, "method/");
  await go(page, "");
  expect(await notice.count()).toBe(0);

  const port = portOf(served);
  await served.close();
  const changed = join(dist, "method", "index.html");
  await writeFile(changed, (await readFile(changed, "utf8")).replace("</main>", "<p>Put right.</p></main>"));
  await writeKeeping(dist);
  served = await serve({ port, base, dist });

  // The first page asks the host, the next one says what it told.
  await go(page, "method/");
  await expect
    .poll(async () => {
      await go(page, "");
      return notice.count();
    })
    .toBe(1);
  await go(page, "method/");
  expect(await page.content()).not.toContain("Put right.");

  await notice.getByRole("link").click();
  await page.getByRole("button", { name: "Fetch the newer edition" }).click();
  await kept(page);
  const now = await caches(page);
  expect(now).toHaveLength(1);
  expect(now).not.toEqual([older]);
  await go(page, "method/");
  expect(await page.content()).toContain("Put right.");
  expect(await notice.count()).toBe(0);
  expect(takeFaults()).toEqual([]);
});

describe("what can go wrong", () => {
  test("a device without room is told so before anything is fetched", async () => {
    const { page } = await open("");
    await page.addInitScript(() => {
      StorageManager.prototype.estimate = () => Promise.resolve({ quota: 3_000_000, usage: 1_000_000 });
    });
    await go(page, "keep/");
    await page.getByText("The browser has 2.0\u00a0MB left for this site.").waitFor();
    expect(await page.getByRole("button", { name: /^Keep this course/ }).isDisabled()).toBe(true);
    expect(await caches(page)).toEqual([]);
  });

  test("a browser that runs out of room on the way leaves no half course behind", async () => {
    const { page, context, takeFaults } = await open("keep/");
    const devtools = await context.newCDPSession(page);
    const { origin } = new URL(served.address);
    // The browser goes on telling of its usual room, and refuses what goes beyond this.
    await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1_000_000 });
    await page.getByRole("button", { name: /^Keep this course/ }).click();
    await page.getByText("There is no room for the course").waitFor();
    expect(await caches(page)).toEqual([]);
    expect(takeFaults()).toEqual([]);
  });

  test("storage that is refused is said in words", async () => {
    const { page } = await open("keep/");
    await page.evaluate(() => {
      CacheStorage.prototype.open = () => Promise.reject(new DOMException("not here", "SecurityError"));
    });
    await page.getByRole("button", { name: /^Keep this course/ }).click();
    await page.getByText("The browser refuses to store anything for this site").waitFor();
  });

  test("a file that is not the one of the list is not stored", async () => {
    const { page, takeFaults } = await open("keep/");
    await page.route("**/app.webmanifest", (route) => route.fulfill({ body: "{}" }));
    await page.getByRole("button", { name: /^Keep this course/ }).click();
    await page.getByText("A file of the course was not the one its list names").waitFor();
    expect(takeFaults().filter((fault) => !/integrity/.test(fault))).toEqual([]);
  });

  test("stopped half-way, it is gone on with, or removed", async () => {
    const { page } = await open("keep/");
    await page.getByRole("button", { name: /^Keep this course/ }).click();
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByText(/^Stopped\./).waitFor();
    await page.getByRole("button", { name: /^Keep this course/ }).click();
    await kept(page);
    await page.getByRole("button", { name: /^Remove it/ }).click();
    await page.getByText("The course is not kept on this device.").waitFor();
    expect(await caches(page)).toEqual([]);
    expect(await page.evaluate(() => navigator.serviceWorker.getRegistrations().then((all) => all.length))).toBe(0);
  });
});
