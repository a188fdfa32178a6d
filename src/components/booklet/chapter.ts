/** A page of the course as a chapter of one document: its content without what only works on a page, every name in it made its own. */

/** What is pressed, followed or started, and what says the page's place in the course: paper needs none of it. */
const LEFT_OUT = "script, style, noscript, template, select, button, .screen, .tools, .sequence, .job";

/** Attributes that name other elements of the page by their ids. */
const NAMING = ["for", "headers", "aria-labelledby", "aria-describedby", "aria-controls", "aria-owns", "aria-details"];

/** Name of a chapter in the document, from the address of its page: "practicals/salt-works/" below the base path is "practicals-salt-works". */
export const chapterName = (path: string): string => path.replace(/^\/|\/$/g, "").replaceAll("/", "-");

export interface Chapters {
  /** The course's whole address, ending in a slash. */
  base: string;
  /** Names of the chapters, by the whole address of their pages. */
  names: ReadonlyMap<string, string>;
}

/**
 * @param page the page as it was built
 * @param at its whole address
 */
export function chapterOf(page: Document, at: string, { names }: Chapters): HTMLElement {
  const name = names.get(at) ?? chapterName(new URL(at).pathname);
  const chapter = page.createElement("article");
  chapter.id = name;
  chapter.className = "chapter";
  chapter.append(...(page.querySelector("main")?.childNodes ?? []));
  for (const one of chapter.querySelectorAll(LEFT_OUT)) one.remove();
  // An island stays as it was built: with the element that would start it, it would look for its script.
  for (const island of chapter.querySelectorAll("astro-island")) island.replaceWith(...island.childNodes);
  for (const details of chapter.querySelectorAll("details")) details.open = true;
  const own = (id: string) => `${name}--${id}`;
  for (const element of chapter.querySelectorAll("[id]")) element.id = own(element.id);
  for (const attribute of NAMING)
    for (const element of chapter.querySelectorAll(`[${attribute}]`)) {
      const ids = element.getAttribute(attribute)?.split(/\s+/) ?? [];
      element.setAttribute(attribute, ids.map(own).join(" "));
    }
  for (const anchor of chapter.querySelectorAll("a[href]")) {
    anchor.setAttribute("href", insideDocument(new URL(anchor.getAttribute("href") ?? "", at), names));
  }
  return chapter;
}

/** A link to a page that is a chapter too leads there; any other keeps its whole address. */
function insideDocument(target: URL, names: ReadonlyMap<string, string>): string {
  const chapter = names.get(target.origin + target.pathname);
  if (chapter === undefined) return target.href;
  return target.hash ? `#${chapter}--${target.hash.slice(1)}` : `#${chapter}`;
}
