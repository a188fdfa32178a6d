/** A link for a class: made, read by a camera, opened by a student. */
import jsQR from "jsqr";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { openPage } from "./setup/open-page.ts";

const WALKTHROUGH = "practicals/lamp-room-shelf/";
const HELD = "Your teacher hides the conclusion until you ask.";

const made = (page: Page) => page.getByRole("textbox", { name: "The link" }).inputValue();

/** What a camera reads from the screen: a reader of codes by others looks at the picture. */
async function seenByCamera(page: Page): Promise<string | undefined> {
  const picture = await page.getByRole("img", { name: /^QR code/ }).screenshot();
  const grey = await page.evaluate(async (png) => {
    const bytes = Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const { width, height } = bitmap;
    const context = new OffscreenCanvas(width, height).getContext("2d") as OffscreenCanvasRenderingContext2D;
    context.drawImage(bitmap, 0, 0);
    const { data } = context.getImageData(0, 0, width, height);
    let reds = "";
    for (let at = 0; at < data.length; at += 4) reds += String.fromCharCode(data[at]);
    return { width, height, pixels: btoa(reds) };
  }, picture.toString("base64"));
  const pixels = Buffer.from(grey.pixels, "base64");
  const rgba = Uint8ClampedArray.from({ length: pixels.length * 4 }, (_, at) => (at % 4 === 3 ? 255 : pixels[at >> 2]));
  return jsQR(rgba, grey.width, grey.height)?.data;
}

test.each(["light", "dark"] as const)("the code holds the link, on %s paper", async (colorScheme) => {
  const { page } = await openPage(`${WALKTHROUGH}link/`, { colorScheme });
  await page.getByRole("img", { name: /^QR code/ }).waitFor();
  const address = page.url().replace("link/", "");
  expect(await made(page)).toBe(`${address}?record=own&conclusion=asked`);
  expect(await seenByCamera(page)).toBe(await made(page));

  await page.getByRole("combobox", { name: "Begins" }).selectOption({ label: "Record" });
  await page.getByRole("checkbox", { name: "The record is empty" }).uncheck();
  expect(await made(page)).toBe(`${address}?conclusion=asked#record`);
  expect(await seenByCamera(page)).toBe(await made(page));

  await page
    .getByRole("combobox", { name: "Opens" })
    .selectOption({ label: "blind practice, the same unknowns for all" });
  const number = page.getByRole("textbox", { name: "Number of the set" });
  await number.fill("4711");
  expect(await made(page)).toBe(`${address}practice/?seed=4711`);
  await number.fill("many");
  await page.getByText("“many” is no number of a set").waitFor();
  expect(await made(page)).toBe(`${address}practice/?seed=4711`);
});

test("a student who opens it is told, concludes alone, and sees the conclusion on asking", async () => {
  const { page } = await openPage(`${WALKTHROUGH}?record=own&conclusion=asked#record`);
  await readToTheEnd(page);
  const record = page.getByRole("region", { name: /^Record/ });
  const conclude = page.getByRole("region", { name: /^Conclude/ });
  await record.getByText(HELD).waitFor();
  // Seven lines for three samples, and one that only S is asked.
  expect(await record.textContent()).toContain("Your own record: 0 of 22 filled in.");
  expect(await conclude.getByRole("listitem").filter({ visible: true }).count()).toBe(0);
  expect(await page.getByText("What happens and why").filter({ visible: true }).count()).toBe(0);
  expect(await page.getByRole("heading", { name: "What decided it" }).count()).toBe(0);

  // What is spoken says what was done, and not what follows.
  await page.getByRole("combobox", { name: "c(ii) for R", exact: true }).selectOption({ label: "no visible change" });
  const spoken = conclude.locator('> [aria-live="polite"]');
  await expect.poll(() => spoken.textContent()).toBe("c(ii) for R: no visible change.");
  // The record in the address and what the teacher chose live side by side.
  await expect
    .poll(() => page.evaluate(() => location.search))
    .toBe("?conclusion=asked&record=own&R.c.ii=no+visible+change");
  expect(await conclude.getByRole("listitem").filter({ visible: true }).count()).toBe(0);

  await conclude.getByRole("button", { name: "Show the conclusion" }).click();
  await expect.poll(() => conclude.getByRole("listitem").filter({ visible: true }).count()).toBeGreaterThan(2);
  expect(await page.getByText(HELD).count()).toBe(0);
  await page.getByRole("heading", { name: "What decided it" }).waitFor();
});

test("it stays hidden in print", async () => {
  const { page } = await openPage(`${WALKTHROUGH}?conclusion=asked`);
  await readToTheEnd(page);
  await page.emulateMedia({ media: "print" });
  const conclude = page.getByRole("region", { name: /^Conclude/ });
  expect(await conclude.getByRole("listitem").filter({ visible: true }).count()).toBe(0);
  await conclude.getByText(HELD).waitFor();
});

test("an entry that means nothing is told, and the conclusion stays hidden until it is asked for", async () => {
  const { page } = await openPage(`${WALKTHROUGH}?record=own&conclusion=%3Cimg%20src=x%3E`);
  await readToTheEnd(page);
  const told = page.getByRole("status").filter({ hasText: "Part of the link could not be read." });
  await told.getByText("conclusion: found “<img src=x>”; only asked is understood there.").waitFor();
  // Of the record nothing was spoilt.
  expect(await told.textContent()).not.toMatch(/the record is|your record is/);
  const conclude = page.getByRole("region", { name: /^Conclude/ });
  expect(await conclude.getByRole("listitem").filter({ visible: true }).count()).toBe(0);
  await conclude.getByRole("button", { name: "Show the conclusion" }).click();
  await expect.poll(() => conclude.getByRole("listitem").filter({ visible: true }).count()).toBeGreaterThan(0);
});

test("a spoilt entry of an empty record leaves its place empty, and says so", async () => {
  const { page } = await openPage(`${WALKTHROUGH}?record=own&R.c.i=purple+smoke`);
  await readToTheEnd(page);
  await page.getByText("There your record is empty.").waitFor();
});

test("a starting part is where the page opens", async () => {
  const { page } = await openPage(`${WALKTHROUGH}#part-b`);
  const top = () => page.locator("#part-b").evaluate((heading) => heading.getBoundingClientRect().top);
  await expect.poll(top).toBeLessThan(200);
  expect(await top()).toBeGreaterThanOrEqual(0);
});
