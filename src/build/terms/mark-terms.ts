/**
 * Marks the terms of the trade in the text of a built page: the first use of each becomes a link to the glossary that shows its meaning on hover
 * and focus. Done once a page is whole, for a text comes from many parts and only the page knows which use is the first.
 */
import { type HTMLElement, type Node, NodeType, parse } from "node-html-parser";
import { termMarkup } from "../../components/method/term-markup.ts";

/** An entry of the glossary. */
export interface Term {
  id: string;
  term: string;
  also: readonly string[];
  says: string;
}

/** Words of the glossary that running text uses for other things: to clear a bench, salt on food. There only an author can mark them. */
const EVERYDAY: ReadonlySet<string> = new Set(
  "salt, clear, clears, transparent, conclude, conclusion, conclusions, no change, bubbles".split(", "),
);

/** Where running text stands. */
const TEXT = new Set(["P", "LI", "DD"]);
/** What is no running text, or has no room for a meaning beside it. */
const NOT_IN = new Set(
  "A H1 H2 H3 H4 TABLE ASIDE NAV FIGURE SVG SUMMARY CODE LABEL SELECT BUTTON DT ASTRO-ISLAND".split(" "),
);
const NOT_IN_CLASS = ["wide", "ready", "screen", "caution", "meta", "term", "f", "equation", "vh", "tip", "list"];

const closed = (node: HTMLElement): boolean =>
  NOT_IN.has(node.tagName) || node.hasAttribute("lang") || NOT_IN_CLASS.some((name) => node.classList.contains(name));

/** The pieces of running text below a node, in the order of the page. */
function* textsIn(node: HTMLElement, isText: boolean): Generator<Node> {
  for (const child of node.childNodes) {
    if (child.nodeType === NodeType.TEXT_NODE) {
      if (isText) yield child;
    } else if (child.nodeType === NodeType.ELEMENT_NODE) {
      const element = child as HTMLElement;
      if (!closed(element)) yield* textsIn(element, isText || TEXT.has(element.tagName));
    }
  }
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/**
 * The page with its terms marked; what else is in it stays letter for letter.
 * @param glossaryAt address of the glossary's page
 */
export function markTerms(html: string, terms: readonly Term[], glossaryAt: string): string {
  const named = new Map(
    terms.flatMap((entry) => [entry.term, ...entry.also].map((name) => [name.toLowerCase(), entry] as const)),
  );
  const names = [...named.keys()].sort((a, b) => b.length - a.length).map(escaped);
  if (names.length === 0) return html;
  const anyName = new RegExp(`(?<![\\w-])(${names.join("|")})(s?)(?![\\w-])`, "gi");

  const main = parse(html, { comment: true }).querySelector("main");
  if (!main) return html;
  const marked = new Set([...main.querySelectorAll(".term a")].map((link) => link.getAttribute("href")));
  const pieces: string[] = [];
  let done = 0;
  for (const text of textsIn(main, false)) {
    const [from, to] = text.range;
    for (const found of html.slice(from, to).matchAll(anyName)) {
      const entry = named.get(found[1].toLowerCase()) as Term;
      const href = `${glossaryAt}#${entry.id}`;
      if (marked.has(href) || EVERYDAY.has(found[0].toLowerCase())) continue;
      marked.add(href);
      const start = from + found.index;
      pieces.push(
        html.slice(done, start),
        termMarkup({ href, id: `term-${entry.id}`, words: found[0], says: entry.says }),
      );
      done = start + found[0].length;
    }
  }
  return pieces.join("") + html.slice(done);
}
