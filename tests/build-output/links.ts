import { addressOf, type BuiltPage, fileBehind, type Site } from "./pages.ts";

/** Attributes that name an address, wherever they stand. */
const ADDRESS_ATTRIBUTES = ["href", "src", "action", "poster", "data", "component-url", "renderer-url"];

/** Sentences on every address inside the site that leads nowhere, each beginning with the page's file. */
export function brokenLinks(site: Site): string[] {
  const anchors = new Map(site.pages.map((page) => [page.file, anchorsOf(page)]));
  return site.pages.flatMap((page) =>
    addressesOf(page).flatMap((written) => {
      const fault = faultOf(site, anchors, page, written);
      return fault === undefined ? [] : [`${page.file}: "${written}" ${fault}`];
    }),
  );
}

function addressesOf(page: BuiltPage): string[] {
  return page.document
    .querySelectorAll("*")
    .flatMap((element) => ADDRESS_ATTRIBUTES.map((name) => element.getAttribute(name)))
    .filter((address) => address !== undefined);
}

function anchorsOf(page: BuiltPage): Set<string> {
  const ids = page.document.querySelectorAll("[id]").map((element) => element.getAttribute("id") ?? "");
  return new Set(["", "top", ...ids]);
}

function faultOf(
  site: Site,
  anchors: ReadonlyMap<string, ReadonlySet<string>>,
  page: BuiltPage,
  written: string,
): string | undefined {
  const from = addressOf(site, page);
  if (!URL.canParse(written, from)) return "is no address.";
  const target = new URL(written, from);
  if (target.host !== from.host || target.protocol !== from.protocol) return undefined;
  const file = fileBehind(site, target);
  if (file === undefined) return `leaves the site's base path ${site.base}.`;
  if (!site.files.has(file)) {
    return site.files.has(`${file}/index.html`) ? "lacks its closing slash." : "leads to no page or file.";
  }
  const fragment = decodeURIComponent(target.hash.slice(1));
  const known = anchors.get(file);
  if (known === undefined || known.has(fragment)) return undefined;
  return `leads to a page without an element of id "${fragment}".`;
}
