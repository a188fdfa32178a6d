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
  expect(alone).toContain("so none is shorter: that is proved.");
  const rows = page.getByRole("table", { name: "Step by step" }).getByRole("row");
  expect((await rows.allInnerTexts()).join()).not.toContain("second");

  await page.getByLabel("People").selectOption("2");
  await expect.poll(words).not.toBe(alone);
  expect((await rows.allInnerTexts()).join()).toContain("second");
  const minutes = (text: string) => Number.parseInt(text, 10);
  expect(minutes(await words())).toBeLessThan(minutes(alone));
  expect(await words()).toContain("that is proved.");
});

test("the paper's order of parts is kept, or freed by choice; minutes planned and allowed are held against each other", async () => {
  const { page } = await openPage("practicals/dyers-shelf/order/");
  const order = async () =>
    (await page.getByRole("table", { name: "Step by step" }).getByRole("rowheader").allInnerTexts()).flatMap(
      (text) => /^([a-z])(\(i\))? for/.exec(text)?.[1] ?? [],
    );
  expect(await order()).toEqual((await order()).toSorted());
  await page.getByLabel("Parts may change places").check();
  await page.getByLabel("People").selectOption("2");
  await page.getByText("second person").waitFor({ state: "attached" });
  expect(new URL(page.url()).search).toBe("?free=1&people=2");
  await page.getByLabel("Minutes for planning").fill("0");
  await page.getByLabel("Minutes allowed").fill("6");
  await page.getByText(/more than the 6 allowed/).waitFor();
  await page.getByLabel("Minutes allowed").fill("");
  await page.getByText("Minutes allowed: found nothing, expected a whole number from 5 to 300.").waitFor();
  // The last good choice stays.
  expect(await page.getByText(/more than the 6 allowed/).count()).toBe(1);
});

/** What spoils an observation, by the practical whose procedure invites it. */
test.each([
  [
    "conservators-bench",
    /reagents themselves bring chloride or sulfate: .* is taken for sulfate. Acidify with nitric acid/,
  ],
  // Sulfite is at the edge of its solubility there, so it may or may not be.
  ["darkroom", /Without enough acid other ions give a precipitate as well: .* may be taken for a halide/],
  ["glaze-store", /Lift the delivery tube out of the limewater before the flame is taken away.*cracks hot glass/],
  ["salt-works", /each keeps its own dropper, which never touches the tube or another bottle/],
])("/%s warns in its order of work", async (practical, warning) => {
  const { page } = await openPage(`practicals/${practical}/order/`);
  await page.getByRole("listitem").filter({ hasText: warning }).first().waitFor();
});

test("a choice for a paper of one's own stays out of the address, which belongs to the paper", async () => {
  const { page } = await openPage("paper/?people=2&test-tube-size=100x12");
  await page.getByLabel("Start from an example").selectOption("shed-two-tins");
  await page.getByText("Who does what when, minute by minute").click({ timeout: 60_000 });
  const people = page.getByLabel("People");
  await people.waitFor();
  expect(await people.inputValue()).toBe("1");
  await people.selectOption("2");
  await page.getByText("second person").waitFor({ state: "attached" });
  const tubes = page.getByRole("combobox", { name: /^Test-tubes, kept cold/ });
  expect(await tubes.inputValue()).toBe("test-tube-125x16");
  await tubes.selectOption({ label: "test-tube 150 × 16 mm" });
  await page.getByText("test-tube 150 × 16 mm", { exact: true }).last().waitFor();
  expect(new URL(page.url()).search).toBe("?people=2&test-tube-size=100x12");
});

test("fewer tubes are rinsed and used again, and the page says where", async () => {
  const { page } = await openPage(orders[0]);
  const tubes = page.getByLabel("Boiling tubes");
  await tubes.selectOption({ index: 1 });
  await expect.poll(() => page.getByText(/Rinse a used tube for/).count()).toBeGreaterThan(0);
  // The rinsed tube keeps its place and carries two labels in turn.
  expect(await page.getByText(/^[A-Z]\d? [a-z], then [A-Z]\d? [a-z]/).count()).toBeGreaterThan(0);
});

test("the address keeps the choice, a link shows it again, and nothing is fetched for it", async () => {
  const { page } = await openPage(orders[0]);
  // A list that can be used is awake: all it needs has come.
  await page.getByLabel("People").selectOption("2");
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.getByLabel("Minutes for planning").fill("5");
  await page.getByText("second person").waitFor({ state: "attached" });
  expect(asked).toEqual([]);
  expect(new URL(page.url()).search).toBe("?people=2&planning=5");

  const { page: again } = await openPage(`${orders[0]}?people=2&planning=5&places=lots`);
  await again.getByText("second person").waitFor({ state: "attached" });
  expect(await again.getByLabel("Minutes for planning").inputValue()).toBe("5");
  await again.getByText("In the link, places in the rack: found “lots”, expected a whole number").waitFor();
});

test.each(orders)("/%s names every bar of its drawing, on a phone too, and no two names overlap", async (path) => {
  const { page } = await openPage(`${path}?people=2`);
  await page.getByText("second person").waitFor({ state: "attached" });
  await page.setViewportSize({ width: 360, height: 800 });
  for (const person of await page.locator(".timeline .person").all()) {
    const bars = await person.locator("rect").count();
    const names = await person
      .locator("g > text")
      .evaluateAll((all) => all.map((one) => Number(one.getAttribute("y"))));
    expect(names).toHaveLength(bars);
    names.slice(1).forEach((foot, index) => {
      expect(foot - names[index]).toBeGreaterThan(12);
    });
  }
});
