/** The site of an invented department, `tests/department/harbour/`: its name, place, safety, bottles, glass, class and practicals. */
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { buildApart } from "../browser/setup/build-apart.ts";
import { brokenLinks } from "./links.ts";
import { markupFaults } from "./markup.ts";
import { type BuiltPage, builtSite, type Site } from "./pages.ts";

const FOLDER = join(".cache", "site-of-department");

let site: Site;
beforeAll(async () => {
  // The department's own file says where the site will live.
  await buildApart(FOLDER, { IONWRIGHT_DEPARTMENT: "tests/department/harbour" });
  site = builtSite({ base: "/science/ions/", dist: resolve(FOLDER) });
}, 600_000);

function pageAt(path: string): BuiltPage {
  const page = site.pages.find(({ file }) => file === join(path, "index.html"));
  if (!page) throw new Error(`there is no page ${path}`);
  return page;
}
/** Spaces that do not break count as spaces. */
const textOf = (path: string) => pageAt(path).document.textContent.replace(/\s+/g, " ");

test("links and markup hold, and every page bears the department's name and address", () => {
  expect(brokenLinks(site)).toEqual([]);
  expect(markupFaults(site)).toEqual([]);
  for (const { file, document } of site.pages) {
    expect(document.querySelector("title")?.textContent).toContain("Chemistry at Harbour School");
    expect(document.querySelector("title")?.textContent).not.toContain("Ionwright");
    // What stands in a frame of another site has no head: it leads to its walkthrough.
    const framed = file.startsWith("embed");
    const home = document.querySelector(framed ? ".framed > .meta a" : ".name");
    expect(home?.getAttribute("href"), file).toMatch(
      framed ? /^\/science\/ions\/practicals\/[a-z-]+\/$/ : /^\/science\/ions\/$/,
    );
  }
  expect(pageAt("practicals").document.querySelector('link[rel="canonical"]')?.getAttribute("href")).toBe(
    "https://school.example/science/ions/practicals/",
  );
});

test("the practicals shown are its own and the one of ours it chose", () => {
  const walkthroughs = site.pages.flatMap(({ file }) => file.match(/^practicals[\\/]([^\\/]+)[\\/]class/)?.[1] ?? []);
  expect(walkthroughs.sort()).toEqual(["lamp-room-shelf", "quay-store"]);
  const examples = JSON.parse(site.read("paper/examples.json").toString()) as Record<string, unknown>;
  expect(Object.keys(examples).sort()).toEqual(walkthroughs);
  // A link to one that is not shown is left as words.
  expect(textOf("practicals/quay-store")).toContain("and the darkroom.");
});

test("its note on safety and whom to call stand on walkthroughs, preparation sheets and cautions", () => {
  const paths = ["", "practicals/quay-store", "practicals/quay-store/class", "cautions", "cautions/goggles", "paper"];
  for (const path of paths) {
    expect(textOf(path)).toContain("Goggles are in the blue tray by the door");
    expect(textOf(path)).toContain("The wall telephone reaches the first-aider on 222.");
  }
});

test("strengths, glass and class are its own", () => {
  const walkthrough = textOf("practicals/lamp-room-shelf");
  expect(walkthrough).toContain("aqueous sodium hydroxide, 0.5 mol/dm³");
  // Of a reagent it says nothing of, the usual one.
  expect(walkthrough).toContain("aqueous ammonia, 2 mol/dm³");
  expect(walkthrough).toContain("test-tube 100 × 16 mm");
  const sheet = pageAt("practicals/lamp-room-shelf/class").document;
  expect(sheet.querySelectorAll("input").map((field) => field.getAttribute("value"))).toEqual(
    expect.arrayContaining(["9", "25"]),
  );
});

test("its colours come after ours in the style sheet of every page", () => {
  const sheets = site.pages[0].document
    .querySelectorAll('link[rel="stylesheet"]')
    .map((one) => one.getAttribute("href"));
  const css = sheets.map((href) =>
    readFileSync(join(resolve(FOLDER), String(href).replace("/science/ions/", "")), "utf8"),
  );
  const all = css.join("");
  expect(all.lastIndexOf("--fit:#1a4f8a")).toBeGreaterThan(all.lastIndexOf("--fit:#79cabb"));
});
