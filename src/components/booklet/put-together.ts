/** The whole course as one document, put together in the reader's browser from the pages that the contents name. */
import { chapterName, chapterOf } from "./chapter.ts";

/** So many pages are fetched ahead of the one that is put in. */
const AHEAD = 6;

interface Places {
  /** Holds the links to all pages, in the order of the document; they lead to the chapters afterwards. */
  contents: HTMLElement;
  /** Where the chapters go. */
  body: HTMLElement;
  onDone(chapters: number, of: number): void;
}

async function fetchPage(address: string): Promise<Document> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  // What stands inside a page for its islands would be held against the policy of this one.
  const text = (await answer.text()).replace(/<(style|script)\b[\s\S]*?<\/\1>/g, "");
  return new DOMParser().parseFromString(text, "text/html");
}

/** Style sheets of a page that this one has not yet. */
function takeStyles(page: Document, at: string): void {
  for (const sheet of page.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')) {
    const { href } = new URL(sheet.getAttribute("href") ?? "", at);
    const has = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].some(
      (one) => one.href === href,
    );
    if (!has) document.head.append(Object.assign(document.createElement("link"), { rel: "stylesheet", href }));
  }
}

/** @throws Error when a page cannot be fetched; what was put in before stays */
export async function putTogether({ contents, body, onDone }: Places): Promise<void> {
  const links = [...contents.querySelectorAll<HTMLAnchorElement>("a[href]")];
  const base = new URL(contents.dataset.base ?? "/", location.href).href;
  const addresses = links.map(({ href }) => href);
  const names = new Map(addresses.map((address) => [address, chapterName(address.slice(base.length))]));
  const coming = addresses.slice(0, AHEAD).map(fetchPage);
  // A fetch that fails is told of when its turn comes.
  for (const one of coming) one.catch(() => undefined);
  body.replaceChildren();
  for (const [index, address] of addresses.entries()) {
    const next = addresses[index + AHEAD];
    if (next !== undefined) {
      const ahead = fetchPage(next);
      ahead.catch(() => undefined);
      coming.push(ahead);
    }
    const page = await coming[index];
    takeStyles(page, address);
    body.append(document.adoptNode(chapterOf(page, address, { base, names })));
    links[index].href = `#${names.get(address)}`;
    onDone(index + 1, addresses.length);
  }
}
