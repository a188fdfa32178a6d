import { expect, test } from "vitest";
import { builtSite } from "../build-output/pages.ts";
import { openPage } from "./setup/open-page.ts";

const orders = builtSite().pages.flatMap(
  ({ file }) => file.match(/^practicals\/[^/]+\/order\/(?=index\.html$)/)?.[0] ?? [],
);

test("every practical has its order of work", () => {
  expect(orders.length).toBeGreaterThanOrEqual(2);
});

test.each(orders)("/%s answers at once to a second pair of hands", async (path) => {
  const { page } = await openPage(path);
  const whole = page.getByText(/at the bench and .* with planning and clearing up/);
  const words = async () => (await whole.textContent()) ?? "";
  const alone = await words();
  expect(alone).toContain("No other order takes less: that is proved.");
  const rows = page.getByRole("table", { name: "Step by step" }).getByRole("row");
  expect((await rows.allInnerTexts()).join()).not.toContain("second");

  await page.getByLabel("People").selectOption("2");
  await expect.poll(words).not.toBe(alone);
  expect((await rows.allInnerTexts()).join()).toContain("second");
  const minutes = (text: string) => Number.parseInt(text, 10);
  expect(minutes(await words())).toBeLessThan(minutes(alone));
});

test("fewer tubes are rinsed and used again, and the page says where", async () => {
  const { page } = await openPage(orders[0]);
  const tubes = page.getByLabel("Boiling tubes");
  await tubes.selectOption({ index: 1 });
  await expect.poll(() => page.getByText(/Rinse a used tube for/).count()).toBeGreaterThan(0);
});
