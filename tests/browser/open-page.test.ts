import { expect, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

test("the home page opens without a fault", async () => {
  const { page, takeFaults } = await openPage("");
  expect(await page.title()).not.toBe("");
  expect(takeFaults()).toEqual([]);
});

test("text is drawn, so that layout can be measured", async () => {
  const { page } = await openPage("");
  const heading = await page.locator("h1").evaluate((element) => {
    const range = document.createRange();
    range.selectNodeContents(element);
    return range.getBoundingClientRect().width;
  });
  expect(heading).toBeGreaterThan(20);
});

test("an address without a page answers 404 with the page of the site", async () => {
  const { page } = await openPage("no-such-page/", { status: 404 });
  expect(await page.locator("h1").count()).toBe(1);
});

test("an address that answers otherwise than expected is refused", async () => {
  await expect(openPage("no-such-page/")).rejects.toThrow(/answered 404; expected 200/);
});

const MISDEEDS = [
  {
    what: "an error on the console",
    deed: 'console.error("the tube is empty")',
    fault: /^console error: the tube is empty/,
  },
  { what: "an uncaught error", deed: 'setTimeout(() => { throw new Error("spilt") })', fault: /^page error: spilt/ },
  {
    what: "a style the policy forbids",
    deed: 'document.body.setAttribute("style", "color: red")',
    fault: /^console error: .*Content Security Policy/,
  },
  {
    what: "a script the policy forbids",
    deed: 'document.body.append(Object.assign(document.createElement("script"), { textContent: "1" }))',
    fault: /^console error: .*Content Security Policy/,
  },
  {
    what: "a request to another host",
    deed: 'location.href = "http://elsewhere.invalid/"',
    fault: /^request to another host: GET http:\/\/elsewhere\.invalid\//,
  },
];

test.each(MISDEEDS)("$what is noticed", async ({ deed, fault }) => {
  const { page, takeFaults } = await openPage("");
  await page.evaluate(deed);
  const faults: string[] = [];
  await expect
    .poll(() => {
      faults.push(...takeFaults());
      return faults;
    })
    .toContainEqual(expect.stringMatching(fault));
  // One misdeed may be reported twice; nothing comes any more from a closed page.
  await page.close();
  takeFaults();
});

test("viewport, colour scheme and scripting are the reader’s", async () => {
  const { page } = await openPage("", { width: 360, height: 640, colorScheme: "dark" });
  expect(await page.evaluate(() => [innerWidth, innerHeight])).toEqual([360, 640]);
  expect(await page.evaluate(() => matchMedia("(prefers-color-scheme: dark)").matches)).toBe(true);

  const { page: still } = await openPage("", { javaScriptEnabled: false });
  await still.setContent('<p>before</p><script>document.querySelector("p").textContent = "after"</script>');
  expect(await still.textContent("p")).toBe("before");
});
