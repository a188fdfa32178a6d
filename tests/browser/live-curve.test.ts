import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { readToTheEnd } from "../../scripts/page-weight.ts";
import { liveCurves } from "../../src/build/live-curves.ts";
import { readPage, readPracticalFile } from "../../src/build/practical-files.ts";
import { tellCurve } from "../../src/components/carry-out/curve/curve-words.ts";
import { plain } from "../../src/components/sentence.ts";
import { type CurveChange, changedCurve } from "../../src/engine/bench/changed-curve.ts";
import { BENCH_PRACTICE } from "../../src/engine/constants/bench-practice.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { openPage, type ReaderOptions } from "./setup/open-page.ts";

const CURVES = "practicals/lamp-room-shelf/curves/";
const ROOT = join(import.meta.dirname, "../..");
const FILE = "src/content/practicals/lamp-room-shelf.mdx";

const solve = createSolver();
const read = readPracticalFile(FILE, readPage(ROOT, FILE));
if ("faults" in read) throw new Error(`${FILE} has faults: npm run check names them.`);
/** Aluminium chloride and sodium hydroxide, five drops and then in excess. */
const [aluminium] = liveCurves(read.practical, solve).filter(
  ({ source, curve }) => source.sample === "S" && curve.cells.includes("a(ii)"),
);

/** The words under the picture as the engine gives them. */
function toldBy(change: Partial<CurveChange>): string {
  const found = changedCurve(aluminium.source, { ...aluminium.own, ...change }, solve);
  if ("refused" in found) throw new Error(found.refused);
  const told = tellCurve(found.curve, aluminium.reagent.name, BENCH_PRACTICE.drop.value).map(({ says }) => says);
  return spaced(plain(told.join(" ")));
}

/** The text with plain spaces between figures and units, as a test writes it. */
const spaced = (text: string | null): string => (text ?? "").replaceAll("\u00a0", " ");

const ALUMINIUM = { at: CURVES, id: "S-aii", sample: "S" };
/** Of its salts barium nitrate does not dissolve to every strength (CRC Handbook, from memory: 0.39 mol/dm3 at 25 C). */
const BARIUM = { at: "practicals/conservators-bench/curves/", id: "A-ai", sample: "A" };

/** The page with all its islands awake, a curve, that of aluminium unless another is asked for, and every address asked for so far. */
async function openCurve(options: ReaderOptions = {}, { at, id, sample: letter } = ALUMINIUM) {
  const { page, context, takeFaults } = await openPage("", options);
  const asked: string[] = [];
  context.on("request", (request) => asked.push(new URL(request.url()).pathname));
  await page.goto(new URL(at, inject("builtSite").address).href);
  if (options.javaScriptEnabled !== false) await readToTheEnd(page);
  const curve = page.locator(`#${id}`);
  return {
    page,
    takeFaults,
    asked,
    curve,
    sample: curve.getByRole("textbox", { name: `Strength of sample ${letter}` }),
    reagent: curve.getByRole("textbox", { name: "Strength of aqueous sodium hydroxide" }),
    salt: curve.getByRole("combobox", { name: `Salt in ${letter}` }),
    back: curve.getByRole("button", { name: "Back to the paper's own" }),
    along: curve.getByRole("slider", { name: /^Look along the curve/ }),
  };
}

const drawnFor = (curve: Locator, words: string) =>
  curve
    .locator("p.soft", { hasText: `Drawn for ${words}` })
    .first()
    .waitFor();
/** All that is drawn: the paths of the picture. */
const linesOf = (curve: Locator) =>
  curve.locator(".plot .line").evaluateAll((all) => all.map((line) => line.getAttribute("d")));
const descriptionOf = async (curve: Locator) => spaced(await curve.locator(".plot desc").textContent());
/** Where the ion is, as a listener hears it. */
const heardFrom = async (along: Locator) => spaced(await along.getAttribute("aria-valuetext"));
const figuresOf = (curve: Locator) => curve.locator(".figures").textContent();
const engineFiles = (asked: readonly string[]) => asked.filter((path) => /curve-desk|curve\.worker/.test(path));

test("the engine comes with the first touch of a control, not before, and from this site's own folder", async () => {
  const { asked, curve, along, sample } = await openCurve();
  await along.press("ArrowRight");
  expect(engineFiles(asked)).toEqual([]);
  await sample.fill("0.2");
  await drawnFor(curve, "0.2 mol/dm³");
  expect(engineFiles(asked).map((path) => path.replace(/[.-][\w-]{8}\.js$/, ""))).toEqual([
    "/any/where/_astro/curve-desk",
    "/any/where/_astro/curve.worker",
  ]);
  expect(asked.filter((path) => !path.startsWith("/any/where/"))).toEqual([]);
});

describe("another strength", () => {
  // Al3+ + 3 OH- -> Al(OH)3, any textbook: 1 cm3 of 0.2 mol/dm3 sample is used up by 0.6 cm3 of 1 mol/dm3 alkali, or 0.3 cm3 of 2 mol/dm3.
  test("changes picture, sentences and figures to what the engine gives", async () => {
    const { curve, sample, reagent } = await openCurve();
    const before = { lines: await linesOf(curve), figures: await figuresOf(curve) };
    expect(await descriptionOf(curve)).toBe(toldBy({}));
    expect(await descriptionOf(curve)).toContain("At 0.3 cm³ it holds all of the aluminium");

    await sample.fill("0.2");
    await drawnFor(curve, "0.2 mol/dm³ AlCl3 with 1 mol/dm³");
    expect(await descriptionOf(curve)).toBe(toldBy({ molPerDm3: 0.2 }));
    expect(await descriptionOf(curve)).toContain("At 0.6 cm³ it holds all of the aluminium");
    expect(await linesOf(curve)).not.toEqual(before.lines);
    expect(await figuresOf(curve)).not.toBe(before.figures);

    await reagent.fill("2000 mmol/dm3");
    await drawnFor(curve, "0.2 mol/dm³ AlCl3 with 2 mol/dm³");
    expect(await descriptionOf(curve)).toContain("At 0.3 cm³ it holds all of the aluminium");
  });

  test("can be slid to with the keyboard", async () => {
    const { curve, sample } = await openCurve();
    const slider = curve.getByRole("slider", { name: "Strength of sample S" });
    await slider.press("ArrowRight");
    await drawnFor(curve, "0.12 mol/dm³");
    expect(await sample.inputValue()).toBe("0.12");
    expect(await slider.getAttribute("aria-valuetext")).toBe("0.12 mol/dm³");
    expect(await descriptionOf(curve)).toBe(toldBy({ molPerDm3: 0.12 }));
  });

  test("is told to listeners in one sentence, and the way back as well", async () => {
    const { curve, sample, back } = await openCurve();
    const lines = await linesOf(curve);
    expect(await back.isDisabled()).toBe(true);
    await sample.fill("0.2");
    const news = curve.locator(".vh[aria-live=polite]");
    await news.filter({ hasText: "Drawn for 0.2 mol/dm³ AlCl₃ with 1 mol/dm³ aqueous sodium hydroxide." }).waitFor();
    await back.click();
    await news
      .filter({ hasText: "Back to the paper's own: 0.1 mol/dm³ AlCl₃ with 1 mol/dm³ aqueous sodium hydroxide." })
      .waitFor();
    expect(await linesOf(curve)).toEqual(lines);
    expect(await sample.inputValue()).toBe("0.1");
    expect(await back.isDisabled()).toBe(true);
  });
});

// Magnesium hydroxide does not dissolve in excess alkali (any textbook).
test("another salt of the paper changes the title, the ion and the story", async () => {
  const { curve, salt } = await openCurve();
  await salt.selectOption("MgSO4");
  await drawnFor(curve, "0.1 mol/dm³ MgSO4");
  expect(await curve.getByRole("heading", { level: 2 }).textContent()).toBe(
    "S, a(i) and a(ii): magnesium as aqueous sodium hydroxide is added",
  );
  expect(await descriptionOf(curve)).toBe(toldBy({ salt: "MgSO4" }));
  expect(await descriptionOf(curve)).toContain("the precipitate remains");
  // Lead(II) chloride does not dissolve to 0.1 mol/dm3, so no such bottle is offered.
  expect(
    await salt.locator("option").evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value)),
  ).not.toContain("PbCl2");
});

test("the key stands between the picture and what can be changed, and the axis keeps its unit", async () => {
  const { curve, sample } = await openCurve();
  const top = async (what: string) => (await curve.locator(what).first().boundingBox())?.y ?? Number.NaN;
  expect(await top(".look")).toBeLessThan(await top(".key"));
  expect(await top(".key")).toBeLessThan(await top(".try"));
  const unit = () => curve.locator(".plot text[transform]").textContent();
  expect(await unit()).toBe("mmol of aluminium");
  await sample.fill("0.02");
  await drawnFor(curve, "0.02 mol/dm³");
  expect(await unit()).toBe("mmol of aluminium");
});

describe("what cannot be drawn is said, and the last curve stays", () => {
  test.each([
    ["strong", "Give a strength from 0.02 to 0.5 mol/dm³, for example 0.5."],
    ["", "Give a strength from 0.02 to 0.5 mol/dm³, for example 0.5."],
    ["7", "Give a strength from 0.02 to 0.5 mol/dm³, for example 0.5."],
    ["0,1", "Write the figure with a point, not a comma: 0.1."],
  ])("%j is no strength", async (text, sentence) => {
    const { curve, sample } = await openCurve();
    await sample.fill("0.2");
    await drawnFor(curve, "0.2 mol/dm³");
    const lines = await linesOf(curve);
    await sample.fill(text);
    await sample.press("Tab");
    await curve.getByText(sentence).waitFor();
    expect(await sample.getAttribute("aria-invalid")).toBe("true");
    expect(await linesOf(curve)).toEqual(lines);
    await drawnFor(curve, "0.2 mol/dm³");
  });

  // Dilute iron(III) sulfate goes cloudy with hydrolysis: from memory; the figure is the engine's.
  test("a salt that cannot be a solution of that strength", async () => {
    const { curve, sample, salt } = await openCurve({}, BARIUM);
    await sample.fill("0.5");
    await drawnFor(curve, "0.5 mol/dm³");
    await salt.selectOption("Ba(NO3)2");
    await curve
      .getByText(/^Not drawn: barium nitrate does not dissolve to 0\.5\smol\/dm³: .* The curve is still that of 0\.5/)
      .waitFor();
    await drawnFor(curve, "0.5 mol/dm³ Pb(NO3)2");
    await sample.fill("0.1");
    await drawnFor(curve, "0.1 mol/dm³ Ba(NO3)2");
    expect(await curve.getByText(/^Not drawn/).count()).toBe(0);
  });

  test("without a network from the first change on: what the page advises gets the reader on", async () => {
    const { page, takeFaults, curve, sample } = await openCurve();
    await page.context().setOffline(true);
    await sample.fill("0.2");
    await curve.getByText(/^Not drawn: the calculation could not be loaded, so load the page again/).waitFor();
    // The browser logs each file it could not get, and nothing else may go wrong.
    for (const fault of takeFaults()) expect(fault).toMatch(/ERR_INTERNET_DISCONNECTED \(.*\/_astro\/[^/]+\.js/);
    await page.context().setOffline(false);
    await page.reload();
    await readToTheEnd(page);
    await sample.fill("0.3");
    await drawnFor(curve, "0.3 mol/dm³");
    expect(await curve.getByText(/^Not drawn/).count()).toBe(0);
  });

  test("a worker that does not come, until it does", async () => {
    const { page, curve, sample } = await openCurve();
    await page.route("**/curve.worker*", (route) => route.abort());
    const lines = await linesOf(curve);
    await sample.fill("0.2");
    await curve.getByText("Not drawn: the calculation failed. The curve is still that of 0.1 mol/dm³").waitFor();
    expect(await linesOf(curve)).toEqual(lines);
    await page.unroute("**/curve.worker*");
    await sample.fill("0.25");
    await drawnFor(curve, "0.25 mol/dm³");
  });
});

describe("the read-out along the volume", () => {
  test("moves by a drop with the arrow keys, and its words are the value of the slider", async () => {
    const { along, curve } = await openCurve();
    // Some aluminium ions give a proton away, about one in a hundred (pK about 5, any data book).
    expect(await heardFrom(along)).toMatch(/^0 cm³ \(0 drops\): (99|100) % Al³⁺/);
    for (let drop = 0; drop < 3; drop++) await along.press("ArrowRight");
    // 0.15 cm3 of 1 mol/dm3 alkali: half of the 0.3 cm3 that precipitate all (three to one, any textbook).
    expect(await heardFrom(along)).toMatch(/^0\.15 cm³ \(3 drops\): 50 % Al\(OH\)₃\(s\), 4\d % Al³⁺/);
    await along.press("End");
    expect(await heardFrom(along)).toMatch(/^0\.6 cm³ \(12 drops\): 100 % \[Al\(OH\)₄\]⁻\.$/);
    await along.press("ArrowLeft");
    expect(await heardFrom(along)).toMatch(/^0\.55 cm³ \(11 drops\)/);
    expect(await curve.locator(".plot .looking").count()).toBe(1);
  });

  test("follows the pointer", async () => {
    const { page, along, curve } = await openCurve();
    await curve.locator(".plot").scrollIntoViewIfNeeded();
    const box = await curve.locator(".plot").boundingBox();
    if (!box) throw new Error("The picture has no place on the page.");
    // The axis runs from 96 to 702 of 720 units.
    const half = box.x + (box.width * (96 + 702)) / 2 / 720;
    await page.mouse.move(half, box.y + box.height / 2);
    expect(await along.inputValue()).toBe("6");
    await page.mouse.move(box.x + 1, box.y + box.height / 2);
    expect(await along.inputValue()).toBe("0");
  });

  test("stays at its volume when the curve changes", async () => {
    const { along, curve, sample } = await openCurve();
    for (let drop = 0; drop < 4; drop++) await along.press("ArrowRight");
    await sample.fill("0.2");
    await drawnFor(curve, "0.2 mol/dm³");
    expect(await along.inputValue()).toBe("4");
    // A third of the 0.6 cm3 that 0.2 mol/dm3 asks for.
    expect(await heardFrom(along)).toMatch(/^0\.2 cm³ \(4 drops\): .*33 % Al\(OH\)₃\(s\)/);
  });
});

const controlsOf = (page: Page) => page.locator(".try, .look");

test("without script the curves read as the paper has them, and nothing is there to operate", async () => {
  const { page, curve } = await openCurve({ javaScriptEnabled: false });
  expect(await linesOf(curve)).toHaveLength(3);
  expect(await curve.locator("figcaption p", { hasText: "a precipitate appears" }).isVisible()).toBe(true);
  expect(await curve.getByText("Drawn for").first().isVisible()).toBe(true);
  expect(await page.getByRole("slider").count()).toBe(0);
  expect(await page.getByRole("textbox").count()).toBe(0);
  expect(await page.locator("noscript p", { hasText: "needs JavaScript" }).isVisible()).toBe(true);
});

test("on paper stands the curve as it is, without controls", async () => {
  const { page, curve, sample, along } = await openCurve();
  await sample.fill("0.2");
  await drawnFor(curve, "0.2 mol/dm³");
  await along.press("ArrowRight");
  const lines = await linesOf(curve);
  await page.emulateMedia({ media: "print" });
  expect(await controlsOf(page).count()).toBeGreaterThan(0);
  expect(await controlsOf(page).evaluateAll((all) => all.filter((one) => one.getClientRects().length > 0).length)).toBe(
    0,
  );
  expect(await curve.locator(".looking").isVisible()).toBe(false);
  expect(await linesOf(curve)).toEqual(lines);
});
