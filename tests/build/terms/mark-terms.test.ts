import { parse } from "node-html-parser";
import { describe, expect, test } from "vitest";
import { markTerms } from "../../../src/build/terms/mark-terms.ts";

const TERMS = [
  { id: "precipitate", term: "precipitate", also: ["ppt"], says: "A solid that appears & clouds the tube." },
  { id: "in-excess", term: "in excess", also: ["excess"], says: "So much that more changes nothing." },
  { id: "clear", term: "clear", also: [], says: "You can see through it." },
  { id: "salt", term: "salt", also: [], says: "A compound of cations and anions." },
];
const marked = (main: string) => markTerms(`<main>${main}</main>`, TERMS, "/method/glossary/");
/** The words that became links, and where to. */
const links = (html: string) =>
  parse(html)
    .querySelectorAll(".term a")
    .map((one) => [one.text, one.getAttribute("href")]);

describe("terms in running text", () => {
  test("the first use of each leads to the glossary and carries its meaning", () => {
    const html = marked("<p>A white <b>precipitate</b>, then Ppts again, gone in excess.</p>");
    expect(links(html)).toEqual([
      ["precipitate", "/method/glossary/#precipitate"],
      ["in excess", "/method/glossary/#in-excess"],
    ]);
    const page = parse(html);
    const [first] = page.querySelectorAll(".term a");
    const meaning = page.querySelector(`#${first.getAttribute("aria-describedby")}`);
    expect(meaning?.getAttribute("role")).toBe("tooltip");
    expect(meaning?.text).toBe("A solid that appears & clouds the tube.");
  });

  test.each([
    ["a link", '<p><a href="/x/">precipitate</a></p>'],
    ["a heading", "<h3>precipitate</h3>"],
    ["a table", "<table><tr><td><p>precipitate</p></td></tr></table>"],
    ["the margin", "<aside><p>precipitate</p></aside>"],
    ["an island", "<astro-island><p>precipitate</p><!--astro:end--></astro-island>"],
    ["another language", '<p lang="de">precipitate</p>'],
    ["a longer word", "<p>precipitated, co-precipitate</p>"],
    ["a word of every day", "<p>Clear the bench; salt on chips.</p>"],
    ["no paragraph", "<div>precipitate</div>"],
  ])("are left alone in %s", (_, main) => {
    expect(marked(main)).toBe(`<main>${main}</main>`);
  });

  test("what may mean something else in one form is marked in the other", () => {
    expect(links(marked("<p>The salt works sell two salts.</p>"))).toEqual([["salts", "/method/glossary/#salt"]]);
  });

  test("a term its author has marked is not marked again", () => {
    const own = '<p><span class="term"><a href="/method/glossary/#precipitate">solid</a></span>: a precipitate.</p>';
    expect(marked(own)).toBe(`<main>${own}</main>`);
  });

  test("everything else stays letter for letter", () => {
    const main = `<!-- kept --><p title='a "b" &amp; c' hidden>1 < 2 &lt; 3 <br>no term<input disabled><astro-island props='{"a":1}' ssr></astro-island></p>`;
    expect(marked(main)).toBe(`<main>${main}</main>`);
    expect(markTerms("<p>precipitate, but no main part</p>", TERMS, "/g/")).toBe(
      "<p>precipitate, but no main part</p>",
    );
  });
});
