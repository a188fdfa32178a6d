/** Draws what was found: a heading and a list for each kind of page. Text from the index never goes into the page as HTML. */
import { PAGE_KINDS, showMore } from "#words/search.ts";
import type { Group } from "./ask.ts";
import { piecesOf } from "./excerpt.ts";
import type { FoundPage } from "./pagefind.ts";
import { stretchesOf } from "./raised.ts";

/** Pages of a kind shown at first: each costs a request, and the best are among them. */
const FIRST = 3;
/** Where there is one kind only there is room for more. */
const FIRST_OF_ONE_KIND = 8;
/** So many more with each press of the button. */
const MORE = 20;

/** @returns a section for each group that holds a page, with the first pages loaded */
export async function sectionsOf(document: Document, groups: readonly Group[]): Promise<HTMLElement[]> {
  const first = groups.length === 1 ? FIRST_OF_ONE_KIND : FIRST;
  const loaded = await Promise.all(groups.map(async (group) => ({ group, pages: await group.next(first) })));
  return loaded
    .filter(({ pages }) => pages.length > 0)
    .map(({ group, pages }, index) => sectionOf(document, group, pages, `found-${index + 1}`));
}

function sectionOf(document: Document, group: Group, pages: readonly FoundPage[], id: string): HTMLElement {
  const section = document.createElement("section");
  section.setAttribute("aria-labelledby", id);
  const heading = document.createElement("h2");
  heading.id = id;
  const number = document.createElement("small");
  const list = document.createElement("ul");
  list.className = "list";
  const more = document.createElement("button");
  more.type = "button";

  const add = (some: readonly FoundPage[]) => {
    const items = some.map((page) => itemOf(document, page));
    list.append(...items);
    number.textContent = `${group.count}`;
    const left = group.count - list.childElementCount;
    more.hidden = left <= 0;
    more.textContent = showMore(Math.min(left, MORE), group.kind);
    return items;
  };
  add(pages);
  more.addEventListener("click", async () => {
    const hadFocus = document.activeElement === more;
    const [next] = add(await group.next(MORE));
    // The button moves away from under the finger or goes: reading goes on with the first of the new pages.
    if (hadFocus) next?.querySelector("a")?.focus();
  });
  heading.append(`${PAGE_KINDS[group.kind]} `, number);
  section.append(heading, list, more);
  return section;
}

function itemOf(document: Document, page: FoundPage): HTMLElement {
  const item = document.createElement("li");
  const anchor = document.createElement("a");
  anchor.href = page.url;
  anchor.textContent = page.meta.title ?? page.url;
  const excerpt = document.createElement("p");
  excerpt.append(
    ...piecesOf(page.excerpt).flatMap((piece) => {
      if (!piece.found) return nodesOf(document, piece.text);
      const mark = document.createElement("mark");
      mark.append(...nodesOf(document, piece.text));
      return [mark];
    }),
  );
  item.append(anchor, excerpt);
  return item;
}

function nodesOf(document: Document, text: string): Node[] {
  return stretchesOf(text).map(({ text: own, as }) => {
    if (!as) return document.createTextNode(own);
    const element = document.createElement(as);
    element.textContent = own;
    return element;
  });
}
