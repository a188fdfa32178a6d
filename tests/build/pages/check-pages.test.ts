/** Pages of every kind with one fault each, in a project of their own: all are told in one run, each at its place. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { ContentFaults, wordFault } from "../../../src/authoring/faults.ts";
import { checkAll } from "../../../src/build/check-all.ts";
import { checkAllPages } from "../../../src/build/pages/check-pages.ts";

let root: string;
const write = (path: string, text: string) => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
};

const CAUTION = `---
title: Goggles
kind: operation
hazard: eyes
hazards: [damages eyes]
summary: Goggles on before the first bottle is opened.
---
`;
const METHOD = `---
title: Reading
order: 1
summary: How to read a paper before anything is opened.
---
`;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "pages-"));
  write("src/content/cautions/goggles.mdx", CAUTION);
  write(
    "src/content/glossary.yaml",
    "- { id: excess, term: in excess, also: [excess], says: So much that more changes nothing. }\n",
  );
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

/** What is found in the text of a page of method, as "line:column what: found". */
function foundIn(body: string): string[] {
  write("src/content/method/reading.mdx", METHOD + body);
  return checkAllPages(root).map(({ line, column, what, found }) => `${line}:${column} ${what}: ${found}`);
}

test.each([
  "A [caution](/cautions/goggles/), a [part of it](/cautions/goggles/#why), a [page](/paper/), [elsewhere](https://school.example) and [here](#top).",
  'A formula <Chem of="SO4^2-" />, a term <Term of="excess" />, {/* a remark */} and a brace {"{"}.',
  '<Sources read="a book" /><Shown salt="CuSO4" test="ammonia" stage={2} /> <sub>2</sub>',
  "Words with *stress*, `code <Strange>` and a quoted brace: \\{x\\}.",
])("a sound page has no fault: %j", (body) => {
  expect(foundIn(body)).toEqual([]);
});

test.each([
  ["a [link](/cautions/gogles/)", "6:10 link: no page there"],
  ["a [link](/cautions/goggles)", "6:10 link: no slash at its end"],
  ["a [link](cautions/goggles/)", "6:10 link: no address from the site's root"],
  ["a [link](//elsewhere.example/)", "6:10 link: no address from the site's root"],
  ["a [link](javascript:alert%281%29)", "6:10 link: a kind of link that pages do not follow"],
  ["a [link][one]\n\n[one]: /nowhere/", "8:8 link: no page there"],
  ["![a picture](/pictures/tube.png)", "6:14 link: no page there"],
  ['<a href="/cautions/goggles/">x</a>', "6:10 link: a link whose base path nobody puts in front"],
  ['<a href="/nowhere/">x</a>', "6:10 link: no page there"],
  ['a <Chemm of="Cl-" />', "6:4 component: no component of that name"],
  ['a <Chem.Of of="Cl-" />', "6:4 component: no component of that name"],
  ["a <Chem />", "6:4 component Chem: no of"],
  ['a <Chem of="Cl-" size="3" />', "6:18 component Chem, size: an attribute it does not have"],
  ['a <Chem {...x} of="Cl-" />', "6:3 component Chem, {...}: an attribute it does not have"],
  ['a <Term of="drop by drop" />', "6:13 component Term, of: no such term in src/content/glossary.yaml"],
  ['<Standard of="ammoniac" ions="cation" />', "6:15 component Standard, of: no such standard test"],
  ['<Standard of="ammonia" ions="metal" />', "6:30 component Standard, ions: no such kind of ion"],
  ['<Predicted test="silver" />', "6:18 component Predicted, test: no such page in src/content/ion-tests"],
  [
    '<Narrowing salt="KCl" cations="K+" anions="Cl-" tests="flame, halid" />',
    "6:56 component Narrowing, tests: no such standard test",
  ],
  ["a <Chem of={1 + 1} />", "6:3 component Chem, of: something to be computed"],
  ["a {1 + 1}", "6:3 braces: something to be computed"],
  ["a {title}", "6:3 braces: something to be computed"],
  ['import x from "./x.js"\n\nwords', "6:1 program text: an import or export"],
  ["export const x = 1\n\nwords", "6:1 program text: an import or export"],
  ["<script>x</script>", "6:2 element: an element that the site's policy blocks"],
  ['<p style="color: red">x</p>', "6:4 element p, style: an attribute that the site's policy blocks"],
  ['<p onclick="x">x</p>', "6:4 element p, onclick: an attribute that the site's policy blocks"],
])("%j", (body, expected) => {
  expect(foundIn(body)).toEqual([expected]);
});

test("a formula that cannot be read is told with what is wrong in it", () => {
  expect(foundIn('a <Chem of="SO4^2" />')[0]).toMatch(/^6:13 component Chem, of: /);
});

test("a page that is no MDX is told once, at its place", () => {
  expect(foundIn("words\n\n<Chem of=")).toHaveLength(1);
  expect(foundIn("words\n\n<b>open")[0]).toMatch(/^8:1 the page is not MDX: /);
});

test("frontmatter of every kind of page is held against its schema", () => {
  write(
    "src/content/cautions/heat.mdx",
    CAUTION.replace("kind: operation", "kind: fire").replace("hazard: eyes\n", ""),
  );
  write("src/content/ion-tests/flame.mdx", "---\ntitle: Flame: the colours\n---\n");
  write(
    "src/content/ions/copper.mdx",
    "---\nion: Cu2+\nsummary: Blue in water, black when heated.\ncautions: [gogles]\n---\n",
  );
  write("src/content/method/reading.mdx", METHOD.replace("order: 1", "order: one\nplace: 2"));
  const told = checkAllPages(root).map(
    ({ file, line, column, what }) => `${file.split("/").at(-1)}:${line}:${column} ${what}`,
  );
  expect(told).toEqual([
    "heat.mdx:2:1 hazard",
    "heat.mdx:3:7 kind",
    "flame.mdx:2:8 the frontmatter is not YAML",
    "copper.mdx:2:6 ion",
    "copper.mdx:4:12 cautions > 0",
    "reading.mdx:3:8 order",
    "reading.mdx:4:8 place",
  ]);
});

test("a term of the glossary that says too little is told at its line", () => {
  write("src/content/glossary.yaml", "- { id: excess, term: in excess, also: [], says: Much. }\n- id: Two\n");
  expect(checkAllPages(root).map(({ file, line, what }) => `${file}:${line} ${what}`)).toEqual([
    "src/content/glossary.yaml:1 0 > says",
    "src/content/glossary.yaml:2 1 > term",
    "src/content/glossary.yaml:2 1 > also",
    "src/content/glossary.yaml:2 1 > says",
    "src/content/glossary.yaml:2 1 > id",
  ]);
});

test("a broken link, an unknown component and a practical's own fault come in one report, with excerpt, caret and hint", async () => {
  write(
    "src/content/practicals/jar.mdx",
    '---\ntitle: A jar\n---\n\nSee [goggles](/cautions/gogles/) and <Chemm of="x" />.\n',
  );
  const error = await checkAll(root, false).catch((thrown: unknown) => thrown);
  if (!(error instanceof ContentFaults)) throw error;
  expect(error.faults.map(({ what }) => what)).toEqual(
    expect.arrayContaining(["summary", "samples", "link", "component"]),
  );
  expect(
    error.faults
      .filter(({ what }) => ["link", "component"].includes(what))
      .map(wordFault)
      .join("\n"),
  ).toMatchInlineSnapshot(`
    "src/content/practicals/jar.mdx:5:15  link
      stated: /cautions/gogles/
      found:  no page there
      to do:  did you mean /cautions/goggles/
      5 | See [goggles](/cautions/gogles/) and <Chemm of="x" />.
        |               ^
    src/content/practicals/jar.mdx:5:39  component
      stated: <Chemm>
      found:  no component of that name
      to do:  use one of Chem, Equation, GasTests, HeatedSolids, IndicatorColours, Narrowing, Powders, Predicted, Shown, Sources, Standard, Term; a less-than sign is written &lt;
      5 | See [goggles](/cautions/gogles/) and <Chemm of="x" />.
        |                                       ^"
  `);
});
