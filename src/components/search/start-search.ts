/** The search form: asks the index and lists what it finds, grouped by kind of page. Without script the form stays hidden. */
import { piecesOf } from "./excerpt.ts";
import { type FoundPage, loadIndex, type SearchIndex } from "./pagefind.ts";
import { asAsked, holds, wordsOf } from "./terms.ts";

const KINDS = { practical: "Practicals", "ion test": "Ion tests", caution: "Cautions" };
/** More than this many pages nobody reads through. */
const LISTED = 30;
/** The index names pages that only resemble the question, the best first: so many are looked at. */
const LOOKED_AT = 100;

export function startSearch(document: Document): void {
  const form = document.querySelector<HTMLFormElement>("#search");
  const status = document.querySelector<HTMLElement>("#found");
  const results = document.querySelector<HTMLElement>("#results");
  if (!form || !status || !results) throw new Error("search page: found no form or no place for results");
  const input = form.elements.namedItem("q") as HTMLInputElement;
  const kind = form.elements.namedItem("kind") as HTMLSelectElement;
  /** Counts the questions, so that a slow answer never overwrites a newer one. */
  let asked = 0;

  const ask = async () => {
    const query = input.value.trim();
    asked += 1;
    const mine = asked;
    remember(query, kind.value);
    if (query === "") {
      status.textContent = "";
      results.replaceChildren();
      return;
    }
    status.textContent = "Searching …";
    try {
      const index = await loadIndex(form.dataset.base ?? "/");
      const pages = await pagesFor(index, query, kind.value);
      if (mine !== asked) return;
      status.textContent = told(pages.length, query);
      results.replaceChildren(...shelvesOf(document, pages.slice(0, LISTED)));
    } catch {
      if (mine === asked) status.textContent = "The search index could not be loaded. The list below holds every page.";
    }
  };

  const asking = new URLSearchParams(document.location.search);
  input.value = asking.get("q") ?? "";
  kind.value = asking.get("kind") ?? "";
  if (kind.selectedIndex < 0) kind.value = "";
  form.hidden = false;
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void ask();
  });
  kind.addEventListener("change", () => void ask());
  if (input.value) void ask();
}

/** Pages that really hold what was asked for. An unknown word makes the index fall back to its beginning: "asdf" would find "as". */
async function pagesFor(index: SearchIndex, query: string, kind: string): Promise<FoundPage[]> {
  const asked = asAsked(query);
  const words = wordsOf(asked);
  if (words.length === 0) return [];
  const found = await index.search(asked, kind ? { filters: { kind } } : {});
  const pages = await Promise.all(found.results.slice(0, LOOKED_AT).map((result) => result.data()));
  return pages.filter(({ content, meta }) => holds(`${meta.title} ${content}`, words));
}

/** Keeps the question in the address, so that it can be sent to somebody. */
function remember(query: string, kind: string): void {
  const address = new URL(window.location.href);
  for (const [name, value] of Object.entries({ q: query, kind })) {
    if (value) address.searchParams.set(name, value);
    else address.searchParams.delete(name);
  }
  window.history.replaceState(null, "", address);
}

function told(count: number, query: string): string {
  if (count === 0) return `Nothing found for “${query}”. Try one word, or the name of an ion.`;
  const listed = count > LISTED ? `, the first ${LISTED} listed` : "";
  return `${count} ${count === 1 ? "page" : "pages"} for “${query}”${listed}.`;
}

function shelvesOf(document: Document, pages: FoundPage[]): HTMLElement[] {
  return Object.entries(KINDS).flatMap(([kind, name]) => {
    const own = pages.filter((page) => page.filters.kind?.includes(kind));
    if (own.length === 0) return [];
    const heading = document.createElement("h2");
    heading.textContent = name;
    const list = document.createElement("ul");
    list.className = "list";
    list.append(...own.map((page) => itemOf(document, page)));
    return [heading, list];
  });
}

function itemOf(document: Document, page: FoundPage): HTMLElement {
  const item = document.createElement("li");
  const anchor = document.createElement("a");
  anchor.href = page.url;
  anchor.textContent = page.meta.title ?? page.url;
  const excerpt = document.createElement("p");
  excerpt.append(
    ...piecesOf(page.excerpt).map((piece) => {
      if (!piece.found) return document.createTextNode(piece.text);
      const mark = document.createElement("mark");
      mark.textContent = piece.text;
      return mark;
    }),
  );
  item.append(anchor, excerpt);
  return item;
}
