import { expect, test } from "vitest";
import { indexable } from "../../scripts/search-index.ts";
import { facetsText } from "../../src/components/search/facets.ts";

const page = (body: string, attributes = 'data-pagefind-body=""') =>
  `<html><head><title>t</title></head><main ${attributes}>${body}</main></html>`;

test("a page that does not ask for it is not indexed", () => {
  expect(indexable("<html><main>text</main></html>")).toBeUndefined();
});

test.each([
  ["SO<sub>4</sub><sup>2−</sup>", "SO₄²⁻"],
  ["[Cu(NH<sub>3</sub>)<sub>4</sub>]<sup>2+</sup>", "[Cu(NH₃)₄]²⁺"],
  ["the n<sup>th</sup>", "the n<sup>th</sup>"],
  [
    "<table><thead><tr><th>Test</th></tr></thead><tr><th>a</th><td>b</td></tr></table>",
    "<table><tr><th>a: </th><td>b</td></tr></table>",
  ],
  ["<h2 id=x>Carry out <small>one tube</small></h2>", "<h2 id=x>Carry out: <small>one tube</small></h2>"],
  ["<ul><li>white: <b>Mg</b></li><li>Done.</li></ul>", "<ul><li>white: <b>Mg;</b></li><li>Done.</li></ul>"],
])("%s is read as %s", (html, read) => {
  expect(indexable(page(html))).toBe(page(read));
});

test("facets become filters", () => {
  const facets = facetsText("practical", { ion: ["SO4^2-", "SO4^2-"], reagent: ["K4[Fe(CN)6](aq)"] });
  const read = indexable(page("text", `data-pagefind-body data-facets="${facets}"`));
  expect(read?.match(/data-pagefind-filter="([^"]*)"/g)).toEqual([
    'data-pagefind-filter="kind:practical"',
    'data-pagefind-filter="ion:SO4^2-"',
    'data-pagefind-filter="reagent:K4[Fe(CN)6](aq)"',
  ]);
});
