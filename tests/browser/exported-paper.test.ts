/** A paper entered in the browser, saved as a file, put among the practicals of a small site and built: the page is that of the same paper. */
import { mkdir, rm, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { parse } from "node-html-parser";
import type { Page } from "playwright-core";
import { expect, inject, test } from "vitest";
import { toFragment } from "../../src/components/paper/paper-link.ts";
import { builtSite } from "../build-output/pages.ts";
import { buildApart } from "./setup/build-apart.ts";
import { openPage } from "./setup/open-page.ts";

/** An invented paper whose record decides its sample: zinc sulfate, by any textbook. */
const PAPER = {
  title: "Two jars: what is left of a flux",
  minutes: 40,
  samples: [{ label: "P", given: "solution", concentration: "0.1 mol/dm3" }],
  paper: { cations: ["Zn^2+", "Cu^2+", "Mg^2+"], anions: ["Cl-", "SO4^2-"] },
  parts: [
    {
      label: "a",
      title: "Alkali",
      tests: [
        {
          says: 'Add "a little" aqueous sodium hydroxide: 5 drops.',
          steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }],
        },
        { steps: [{ add: "NaOH(aq)", until: "in excess" }] },
      ],
    },
    {
      label: "b",
      title: "Acid # and barium",
      tests: [
        {
          steps: [
            { take: "1 cm3" },
            { add: "HNO3(aq)", volume: "1 cm3" },
            { add: "Ba(NO3)2(aq)", volume: "1 cm3", at: "0.1 mol/dm3" },
            { warm: true },
          ],
        },
      ],
    },
  ],
  record: {
    P: {
      "a(i)": { precipitate: "white" },
      "a(ii)": { fate: "dissolves", solution: "colourless" },
      b: { precipitate: "white" },
    },
  },
};

const HERE = join(".cache", "exported-paper");
const NAME = "two-jars-what-is-left-of-a-flux";

/** What a page says of the tests and of what follows, whether it was built or drawn in the browser. */
interface Told {
  parts: string[];
  purposes: string[];
  verdict: string[];
}

function toldIn(html: string): Told {
  const page = parse(html);
  // What the built page adds: words of the glossary, explained, and what happens in each test.
  for (const added of page.querySelectorAll(".tip, details, .vh")) added.remove();
  const texts = (place: string) =>
    page.querySelectorAll(place).map(({ textContent }) => textContent.replace(/\s+/g, " ").trim());
  const step = (id: string, place: string) => texts(`section[aria-labelledby="${id}"] ${place}`);
  return {
    parts: [
      ...step("carry-out", "h3"),
      ...step("carry-out", "h4"),
      ...step("carry-out", "q"),
      ...step("carry-out", "ol > li"),
    ],
    purposes: step("read", ".purpose tr"),
    verdict: texts(".verdict li"),
  };
}

async function savedIn(page: Page): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save it as the file of a practical" }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await page.locator("#made-file").inputValue() };
}

test("what is saved on the page builds to a walkthrough of the same parts, words and conclusion", async () => {
  const { page } = await openPage("");
  await page.goto(`${new URL("paper/", inject("builtSite").address).href}${await toFragment(PAPER)}`);
  await page.locator(".verdict", { hasText: "P holds zinc sulfate" }).waitFor({ timeout: 60_000 });
  await page.getByText("Still looking for what may mislead").waitFor({ state: "detached", timeout: 60_000 });
  const entered = toldIn(await page.content());
  const { name, text } = await savedIn(page);
  expect(name).toBe(`${NAME}.mdx`);

  await rm(HERE, { recursive: true, force: true });
  await mkdir(join(HERE, "shelf", "practicals"), { recursive: true });
  await writeFile(join(HERE, "shelf", "practicals", name), text);
  await writeFile(join(HERE, "shelf", "department.yaml"), `name: One shelf\npracticals:\n  show: [${NAME}]\n`);
  await buildApart(join(HERE, "site"), { IONWRIGHT_DEPARTMENT: `${HERE}/shelf`, IONWRIGHT_BASE: "/shelf/" });

  const site = builtSite({ base: "/shelf/", dist: resolve(HERE, "site") });
  const html = site.read(`practicals/${NAME}/index.html`).toString();
  expect(parse(html).querySelector("h1")?.textContent).toBe(PAPER.title);
  const built = toldIn(html);
  expect(built).toEqual(entered);
  expect(built.parts.slice(0, 2)).toEqual(["a Alkali", "b Acid # and barium"]);
  // A head and three tests.
  expect(built.purposes).toHaveLength(4);
  expect(built.verdict).toHaveLength(1);
}, 400_000);
