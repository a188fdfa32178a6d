import { parse as parseHtml } from "node-html-parser";
import { expect, test } from "vitest";
import { findEquations } from "../../../src/build/equations/find-equations.ts";
import { equationToHtml } from "../../../src/engine/formula/typeset-equation.ts";
import { sourceFiles } from "../../architecture/source-files.ts";
import { fenceHtml } from "./highlighter.ts";

/** By default the parser does not look into `<pre>`. */
const parse = (html: string) => parseHtml(html, { blockTextElements: { script: true, style: true } });

test("a fence becomes chemistry: subscripts, superscripts, an arrow, and words for a screen reader", () => {
  const html = fenceHtml("Zn(OH)2(s) + 2OH-(aq) -> Zn(OH)4^2-(aq)  # in excess");
  expect(html.replace(/></g, ">\n<")).toMatchInlineSnapshot(`
    "<div class="equations">
    <p class="equation">
    <span role="math" aria-label="Zn open bracket O H close bracket 2, solid, and 2 O H minus, aqueous, gives Zn open bracket O H close bracket 4, 2 minus, aqueous">
    <span class="f">Zn(OH)<sub>2</sub>
    <span class="state">(s)</span>
    </span> + <span class="f">
    <span class="coefficient">2</span> OH<sup>−</sup>
    <span class="state">(aq)</span>
    </span> <span class="arrow">→</span> <span class="f">Zn(OH)<sub>4</sub>
    <sup>2−</sup>
    <span class="state">(aq)</span>
    </span>
    </span> <span class="remark">in excess</span>
    </p>
    </div>"
  `);
});

test("each equation has a line of its own; blank lines are left out", () => {
  const paragraphs = parse(fenceHtml("I2(s) -> I2(g)\n\nH2O(l) -> H2O(g)\n")).querySelectorAll(
    ".equations > p.equation",
  );
  expect(paragraphs.map(({ text }) => text)).toEqual(["I2(s) → I2(g)", "H2O(l) → H2O(g)"]);
});

test("a coefficient stays on one line with its formula and state, the signs are where a line may break", () => {
  const line = parse(fenceHtml("Ag+(aq) + 2 NH3(aq) -> [Ag(NH3)2]+(aq)"));
  expect(line.querySelectorAll(".f").map(({ text }) => text)).toEqual(["Ag+(aq)", "2 NH3(aq)", "[Ag(NH3)2]+(aq)"]);
});

test("the fences of the pages say what the typesetter of equations says, in elements and in letters", () => {
  const fences = [...sourceFiles("src/content", [".mdx"])]
    .flatMap(([path, page]) => findEquations(path, page).equations)
    .filter(({ where }) => where === "fence");
  expect(fences.length).toBeGreaterThan(5);
  for (const { text } of fences) {
    const bare = fenceHtml(text).replace(/<\/?(?:div|p|span)[^>]*>/g, "");
    expect.soft(bare.replaceAll("&#x2212;", "−"), text).toBe(equationToHtml(text));
  }
});

test("an angle bracket in a remark is text", () => {
  const html = fenceHtml("I2(s) -> I2(g) # <b>violet</b> & warm");
  expect(parse(html).querySelector("b")).toBeNull();
  expect(parse(html).querySelector(".remark")?.text).toBe("<b>violet</b> & warm");
});

test("no fence of any language carries a style attribute, which the site's policy would block", () => {
  const other = fenceHtml('{ "salt": "NaCl", "grams": 2 }', "json");
  for (const html of [
    fenceHtml("I2(s) -> I2(g) # violet"),
    fenceHtml("?? not chemistry"),
    other,
    fenceHtml("plain", "text"),
  ]) {
    const elements = parse(html).querySelectorAll("*");
    expect(elements.length).toBeGreaterThan(1);
    expect.soft(elements.filter((element) => element.hasAttribute("style")).map(String)).toEqual([]);
  }
  expect(
    parse(other)
      .querySelectorAll("[class^=token-]")
      .map(({ text }) => text.trim()),
  ).toContain("2");
});
