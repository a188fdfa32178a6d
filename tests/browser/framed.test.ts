/** The pages made for a frame of another site, in such a frame, with the snippet of docs/sharing.md around them. */
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { resolve } from "node:path";
import type { Frame, Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

const SNIPPET = readFileSync(resolve("docs/sharing.md"), "utf8").match(/```html\n([\s\S]*?)```/)?.[1] ?? "";

/** Another host than the course's, with the page that "?of=" names in its frame. */
let server: Server;
let platform: string;
beforeAll(async () => {
  server = createServer((request, response) => {
    const of = new URL(request.url ?? "", "http://localhost").searchParams.get("of") ?? "";
    const page = SNIPPET.replace(/src="[^"]*"/, `src="${new URL(of, inject("builtSite").address).href}"`);
    response.setHeader("Content-Type", "text/html; charset=utf-8");
    response.end(`<!doctype html><html lang="en"><link rel="icon" href="data:,"><title>Course</title>${page}</html>`);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  platform = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});
afterAll(() => new Promise((done) => server.close(done)));

/** Opens it; that the frame asks the course's host for things is the point here, and no fault. */
async function framed(path: string, act: (frame: Frame, page: Page) => Promise<void>, faulty = false): Promise<void> {
  const { page, context, takeFaults } = await openPage(`?of=${encodeURIComponent(path)}`, { site: platform });
  const frame = page.frames()[1];
  await act(frame, page);
  // Nothing is asked for any more from a closed page.
  await context.close();
  const course = new URL(inject("builtSite").address).host;
  const faults = takeFaults().filter(
    (fault) => !fault.startsWith("request to another host") || !fault.includes(course),
  );
  if (!faulty) expect(faults).toEqual([]);
}

const heights = async (frame: Frame, page: Page) => ({
  frame: await page.locator("iframe").evaluate((element) => element.clientHeight),
  content: await frame.evaluate(() => Math.ceil(document.documentElement.getBoundingClientRect().height)),
});
const fits = async (frame: Frame, page: Page) => {
  const { frame: outer, content } = await heights(frame, page);
  return Math.abs(outer - content);
};

test.each(["record", "bench", "order", "practice", "class"])(
  "the frame of %s is as high as its content",
  async (name) => {
    await framed(`embed/lamp-room-shelf/${name}/`, async (frame, page) => {
      expect(await frame.locator("h1").count()).toBe(1);
      expect(await frame.getByRole("navigation", { name: "Site" }).count()).toBe(0);
      await expect.poll(() => fits(frame, page)).toBeLessThanOrEqual(1);
      // Narrower, the same text is higher.
      const before = await heights(frame, page);
      await page.setViewportSize({ width: 420, height: 800 });
      await expect.poll(async () => (await heights(frame, page)).frame).not.toBe(before.frame);
      await expect.poll(() => fits(frame, page)).toBeLessThanOrEqual(1);
    });
  },
);

test("in a frame a record is changed and concluded from, as the link has it", async () => {
  await framed("embed/lamp-room-shelf/record/?conclusion=asked", async (frame, page) => {
    const place = frame.getByRole("combobox", { name: "c(ii) for R", exact: true });
    await expect.poll(() => place.isEnabled()).toBe(true);
    await place.selectOption({ label: "no visible change" });
    // The address of a frame is not in sight, so it is not said to keep the record.
    await frame.getByText("open the walkthrough to keep yours").waitFor();
    expect(await frame.getByText("The address of this page").count()).toBe(0);
    await frame.getByRole("button", { name: "Show the conclusion" }).click();
    const conclude = frame.getByRole("region", { name: /^Conclude/ });
    await expect
      .poll(() => conclude.getByRole("listitem").allTextContents())
      .toContain("R holds zinc nitrate, Zn(NO3)2: Zn2+ and NO3−.");
    await expect.poll(() => fits(frame, page)).toBeLessThanOrEqual(1);
  });
});

test("a link in a frame opens outside it", async () => {
  await framed("embed/lamp-room-shelf/record/", async (frame, page) => {
    const [opened] = await Promise.all([
      page.context().waitForEvent("page"),
      frame
        .getByText(/^From the walkthrough/)
        .getByRole("link")
        .click(),
    ]);
    await opened.waitForURL(/\/practicals\/lamp-room-shelf\/$/);
  });
});

test("a page that is not made for frames refuses to stand in one of another site", async () => {
  await framed(
    "practicals/lamp-room-shelf/",
    async (frame, page) => {
      await page.waitForLoadState("networkidle");
      expect(await frame.locator("h1").count()).toBe(0);
    },
    true,
  );
});
