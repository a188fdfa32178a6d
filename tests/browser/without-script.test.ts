import { expect, test } from "vitest";
import { openPage } from "./setup/open-page.ts";

test("without script the walkthrough shows record, conclusion and plan", async () => {
  const { page } = await openPage("practicals/lamp-room-shelf/", { javaScriptEnabled: false });

  const record = page.getByRole("region", { name: /^Record/ });
  const row = record.getByRole("row", { name: /^b\(ii\)/ });
  const [seen] = await row.allInnerTexts();
  expect(seen).toMatch(/precipitate dissolves, giving a colourless solution[\s\S]*precipitate remains/);
  expect(await record.getByRole("button", { name: /^Reset/ }).isDisabled()).toBe(true);

  const conclude = page.getByRole("region", { name: /^Conclude/ });
  const sentences = await conclude.getByRole("listitem").allTextContents();
  expect(sentences).toEqual([
    "R holds zinc sulfate, ZnSO4: Zn2+ and SO42−.",
    "S holds aluminium chloride, AlCl3: Al3+ and Cl−.",
    "T holds ammonium chloride, NH4Cl: NH4+ and Cl−.",
  ]);
  for (const sample of ["R", "S", "T"]) {
    expect(await conclude.getByRole("table", { name: `Evidence for ${sample}` }).isVisible()).toBe(true);
  }

  // 1 cm3 stands 8.8 mm high in a tube of 125 x 16 mm: tests/reference/tube-depths.json.
  const plan = page.getByRole("table", { name: /fill marks/ });
  expect(await plan.getByRole("row", { name: "S d" }).textContent()).toMatch(/125 × 16\smm.*1\scm³ at 9\smm/);
  expect(await page.locator("noscript p", { hasText: "needs JavaScript" }).isVisible()).toBe(true);
});

test("without script the search page lists every page instead of a form that does nothing", async () => {
  const { page } = await openPage("search/", { javaScriptEnabled: false });
  expect(await page.getByRole("combobox", { name: /^A word/ }).count()).toBe(0);
  expect(await page.locator("noscript p", { hasText: "needs JavaScript" }).isVisible()).toBe(true);
  expect(await page.getByRole("main").getByRole("link", { name: "Silver nitrate test" }).isVisible()).toBe(true);
});
