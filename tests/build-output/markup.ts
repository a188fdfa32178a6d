import type { BuiltPage, Site } from "./pages.ts";

/** What a page is made of that loads by itself; a link that a reader follows is not among them. */
const SUBRESOURCES = [
  ["script", "src"],
  ["img", "src"],
  ["img", "srcset"],
  ["source", "src"],
  ["source", "srcset"],
  ["iframe", "src"],
  ["video", "src"],
  ["audio", "src"],
  ["object", "data"],
  ["embed", "src"],
  ["use", "href"],
  ["image", "href"],
  ["link", "href"],
] as const;

/** Links in the head that tell about the page without loading anything. */
const SPEAKING_LINKS = ["canonical", "alternate", "license", "author", "next", "prev"];

/** Sentences on what is wrong with the pages' markup, each beginning with the page's file. */
export function markupFaults(site: Site): string[] {
  return [
    ...site.pages.flatMap((page) => faultsOf(page).map((fault) => `${page.file}: ${fault}`)),
    ...sameTitles(site),
  ];
}

function faultsOf(page: BuiltPage): string[] {
  return [...headFaults(page), ...inlineFaults(page), ...foreignSubresources(page)];
}

function headFaults({ document }: BuiltPage): string[] {
  const faults: string[] = [];
  const headings = document.querySelectorAll("h1").length;
  if (headings !== 1) faults.push(`has ${headings} h1 headings; a page has one.`);
  if (titleOf(document) === "") faults.push("has no title.");
  if (!document.querySelector("html")?.getAttribute("lang")) faults.push("does not say its language.");
  const policy = document.querySelector('meta[http-equiv="content-security-policy" i]')?.getAttribute("content") ?? "";
  for (const directive of ["default-src 'self'", "object-src 'none'", "script-src 'self'", "style-src 'self'"]) {
    if (!policy.includes(directive)) faults.push(`has a content security policy without ${directive}.`);
  }
  if (policy.includes("'unsafe-inline'") || policy.includes("'unsafe-eval'")) faults.push("has a policy with a hole.");
  return faults;
}

function inlineFaults({ document }: BuiltPage): string[] {
  return document.querySelectorAll("*").flatMap((element) =>
    Object.keys(element.attributes)
      .filter((name) => name === "style" || /^on[a-z]+$/.test(name))
      .map((name) => `<${element.rawTagName}> has the attribute ${name}, which the policy forbids.`),
  );
}

function foreignSubresources({ document }: BuiltPage): string[] {
  return SUBRESOURCES.flatMap(([tag, attribute]) =>
    document
      .querySelectorAll(tag)
      .filter((element) => !SPEAKING_LINKS.includes(element.getAttribute("rel") ?? ""))
      .map((element) => element.getAttribute(attribute) ?? "")
      .filter((address) => /(?:^|[\s,])(?:https?:)?\/\//.test(address))
      .map((address) => `<${tag}> loads ${address} from another host.`),
  );
}

function titleOf(document: BuiltPage["document"]): string {
  return document.querySelector("head > title")?.text.trim() ?? "";
}

function sameTitles(site: Site): string[] {
  const first = new Map<string, string>();
  return site.pages.flatMap(({ file, document }) => {
    const title = titleOf(document);
    // A page that is not translated yet has the same title in both editions, and its link tells them apart.
    const inLanguage = `${document.querySelector("html")?.getAttribute("lang")} ${title}`;
    const other = first.get(inLanguage);
    if (other !== undefined && title !== "") return [`${file}: has the title of ${other}: "${title}".`];
    first.set(inLanguage, file);
    return [];
  });
}
