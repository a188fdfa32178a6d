/** The site of an invented department, `tests/department/quillstrand/`: its name, place, safety, bottles, glass, class and practicals. */
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { buildApart } from "../browser/setup/build-apart.ts";
import { brokenLinks } from "./links.ts";
import { markupFaults } from "./markup.ts";
import { type BuiltPage, builtSite, type Site } from "./pages.ts";

const FOLDER = join(".cache", "site-of-department");

let site: Site;
beforeAll(async () => {
  // The department's own file says where the site will live.
  await buildApart(FOLDER, { IONWRIGHT_DEPARTMENT: "tests/department/quillstrand" });
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
    expect(document.querySelector("title")?.textContent).toContain("Chemistry at Quillstrand School");
    expect(document.querySelector("title")?.textContent).not.toContain("Ionwright");
    // What stands in a frame of another site has no head: it leads to its walkthrough.
    const [, edition, framed] = /^(de[\\/])?(embed)?/.exec(file) ?? [];
    const home = document.querySelector(framed ? ".framed > .meta a" : ".name");
    expect(home?.getAttribute("href"), file).toMatch(
      new RegExp(`^/science/ions/${edition ? "de/" : ""}${framed ? "practicals/[a-z-]+/" : ""}$`),
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
  for (const path of ["ions/lead-ii", "ion-tests/sodium-hydroxide", "ion-tests/powders"]) {
    expect(textOf(path)).toContain(
      "With the bottles of this school: aqueous sodium hydroxide, 0.5 mol/dm³; aqueous silver nitrate, 0.1 mol/dm³.",
    );
  }
  // Whoever enters a paper there finds the strengths and the list of ions in the form.
  const form = pageAt("paper").document.querySelector("#own-paper-given")?.textContent;
  expect(form).toContain("0.5 mol/dm3");
  expect(form).toContain("gasTests");
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

describe("its second language", () => {
  const german = () => site.pages.filter(({ file }) => /^de[\\/]/.test(file));

  test("has every page of the first, and each leads to the other", () => {
    const files = (pages: readonly BuiltPage[]) => pages.map(({ file }) => file.replaceAll("\\", "/")).sort();
    const english = site.pages.filter((page) => !german().includes(page));
    expect(files(german())).toEqual(files(english).map((file) => `de/${file}`));
    for (const { file, document } of site.pages) {
      const isGerman = /^de[\\/]/.test(file);
      expect(document.querySelector("html")?.getAttribute("lang"), file).toBe(isGerman ? "de" : "en-GB");
      const [at] = document.querySelectorAll('link[rel="canonical"]').map((one) => one.getAttribute("href"));
      const others = document.querySelectorAll('link[rel="alternate"]').map((one) => one.getAttribute("href"));
      if (others.length === 0) continue;
      expect(others[isGerman ? 1 : 0], file).toBe(at);
      expect(others[0]?.replace("/science/ions/", "/science/ions/de/"), file).toBe(others[1]);
    }
  });

  test("stands on the page as a link in its own name", () => {
    const links = pageAt("cautions").document.querySelectorAll('nav[aria-label="Language"] a');
    expect(links.map((one) => [one.textContent, one.getAttribute("lang"), one.getAttribute("href")])).toEqual([
      ["English", "en-GB", "/science/ions/cautions/"],
      ["Deutsch", "de", "/science/ions/de/cautions/"],
    ]);
    expect(pageAt("de/cautions").document.querySelector('nav[aria-label="Sprache"] [aria-current]')?.textContent).toBe(
      "Deutsch",
    );
  });

  test("brings its scripts the words of no other", () => {
    const scripts = (folder: string) =>
      [...site.files].filter((file) => file.startsWith(`${folder}_astro/`) && file.endsWith(".js"));
    const said = (folder: string) =>
      scripts(folder)
        .map((file) => site.read(file).toString("utf8"))
        .join("\n");
    const [english, other] = [said(""), said("de/")];
    expect(english).toContain("Start with an empty record");
    expect(english).not.toContain("Mit leerem Protokoll beginnen");
    expect(other).toContain("Mit leerem Protokoll beginnen");
    expect(other).not.toContain("Start with an empty record");
  });

  test("is searched, kept and sent by itself", () => {
    for (const file of ["pagefind/pagefind-entry.json", "sw.js", "edition.json", "app.webmanifest"]) {
      expect(site.files.has(file) && site.files.has(`de/${file}`), file).toBe(true);
    }
    const kept = (file: string) =>
      (JSON.parse(site.read(file).toString()) as { list: { path: string }[] }).list.map(({ path }) => path);
    expect(kept("course-files.json").filter((path) => path.startsWith("de/"))).toEqual([]);
    expect(kept("de/course-files.json")).toContain("practicals/lamp-room-shelf/");
    const headers = site.read("_headers").toString();
    expect(headers).toMatch(/^\/science\/ions\/de\/embed\/\*\n {2}Referrer/m);
    expect(headers).toMatch(/^\/science\/ions\/de\/practicals\/\*\n {2}Content-Security-Policy: frame-ancestors/m);
  });
});
