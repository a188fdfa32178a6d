/** The teacher's page: what is ticked decides at once what can be chosen, and the link brings it back. */
import { expect, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

const PAGE = "practicals/lamp-room-shelf/unknowns/";

test("ticking salts and changing the number of samples changes the sets at once, and the address keeps it", async () => {
  const { page } = await openPage(PAGE);
  const store = page.getByRole("group", { name: /^Salts in the store/ });
  await store.scrollIntoViewIfNeeded();
  const none = store.getByRole("button", { name: "None" });
  await expect.poll(() => none.isEnabled()).toBe(true);
  const count = page.locator("p[aria-live]");
  expect(await count.textContent()).toMatch(/^\d+ sets can be made up; the tests decide \d+/);

  await none.click();
  await expect.poll(() => count.textContent()).toBe("No set can be made up from this store for this paper.");
  for (const name of [/^zinc sulfate/, /^aluminium chloride/, /^ammonium chloride/])
    await store.getByLabel(name).check();
  // Sulfate can only stand on R, for S and T share their anion; the other two can change places.
  await expect.poll(() => count.textContent()).toMatch(/^2 sets can be made up; the tests decide 2/);
  await page.getByLabel("Samples").selectOption("1");
  await expect.poll(() => count.textContent()).toMatch(/^3 sets can be made up; the tests decide 3/);

  const address = page.url();
  expect(new URL(address).searchParams.get("store")).toBe("NH4Cl,AlCl3,ZnSO4");
  await page.goto(address);
  await store.scrollIntoViewIfNeeded();
  await expect.poll(() => count.textContent()).toMatch(/^3 sets can be made up/);
  expect(await store.getByLabel(/^zinc sulfate/).isChecked()).toBe(true);
  expect(await store.getByLabel(/^zinc chloride/).isChecked()).toBe(false);
});

test("a set is explained when it is opened, also after a change", async () => {
  const { page } = await openPage(PAGE);
  const store = page.getByRole("group", { name: /^Salts in the store/ });
  await store.scrollIntoViewIfNeeded();
  await expect.poll(() => store.getByRole("button", { name: "All" }).isEnabled()).toBe(true);
  await store.getByRole("button", { name: "All" }).click();
  await page.getByLabel("Show").selectOption("not decided");
  const sets = page.getByRole("region", { name: /^Not decided/ }).getByRole("listitem");
  await expect.poll(() => page.getByRole("region", { name: /^Easy/ }).count()).toBe(0);
  await sets.first().locator("summary").click();
  await expect.poll(() => sets.first().textContent()).toMatch(/may also be .* would settle it\./s);
});

test("without script the page has the sets from a school store's usual salts, with all that is said of them", async () => {
  const { page } = await openPage(PAGE, { javaScriptEnabled: false });
  expect(await page.locator("noscript p", { hasText: "needs JavaScript" }).isVisible()).toBe(true);
  const easy = page.getByRole("region", { name: /^Easy/ }).getByRole("listitem");
  expect(await easy.first().locator("details").textContent()).toMatch(/observations in this record/);
  expect(await page.getByLabel("Samples").isDisabled()).toBe(true);
  // It is reached from the walkthrough, and leads back there.
  await page.getByRole("link", { name: "Back to the walkthrough" }).click();
  await page.getByRole("link", { name: "choose unknowns" }).click();
  expect(new URL(page.url()).pathname).toMatch(/lamp-room-shelf\/unknowns\/$/);
});
