import { posix } from "node:path";
import { gzipSync } from "node:zlib";
import ts from "typescript";
import { addressOf, type BuiltPage, fileBehind, type Site } from "./pages.ts";

/** What a first visit to a page costs if every island on it starts, in bytes after gzip. */
export interface PageWeight {
  html: number;
  css: number;
  /** Script files, plus the scripts inside the page (which `html` holds as well). */
  javaScript: number;
  /** html, css and script files. */
  total: number;
  /** The page itself, its style sheets and its script files. */
  requests: number;
}

/** Adds up a page, its style sheets and all scripts that it or its islands import, without what loads on demand, but for the files named. */
export function weigh(site: Site, page: BuiltPage, later: readonly string[] = []): PageWeight {
  const sheets = files(site, page, [['link[rel="stylesheet"]', "href"]]);
  const scripts = withImports(site, [
    ...later,
    ...files(site, page, [
      ["script[src]", "src"],
      ['link[rel="modulepreload"]', "href"],
      ["astro-island", "component-url"],
      ["astro-island", "renderer-url"],
      ["astro-island", "before-hydration-url"],
    ]),
  ]);
  // What a script is given as data runs nothing: it counts with the page.
  const inside = page.document.querySelectorAll("script:not([src])");
  const inline = inside.filter((script) => script.getAttribute("type") !== "application/json").map(({ text }) => text);
  const html = zipped(page.html);
  const css = sum(sheets.map((file) => zipped(site.read(file))));
  const scriptFiles = sum(scripts.map((file) => zipped(site.read(file))));
  return {
    html,
    css,
    javaScript: scriptFiles + (inline.length === 0 ? 0 : zipped(inline.join("\n"))),
    total: html + css + scriptFiles,
    requests: 1 + sheets.length + scripts.length,
  };
}

/** Distinct files of the site that the attributes name. */
function files(site: Site, page: BuiltPage, places: readonly (readonly [selector: string, attribute: string])[]) {
  const named = places.flatMap(([selector, attribute]) =>
    page.document.querySelectorAll(selector).map((element) => element.getAttribute(attribute)),
  );
  const found = named
    .filter((address) => address !== undefined)
    .map((address) => fileBehind(site, new URL(address, addressOf(site, page))));
  return [...new Set(found.filter((file) => file !== undefined))];
}

/** The scripts and everything they import statically. */
function withImports(site: Site, entries: readonly string[]): string[] {
  const reached = new Set<string>();
  const queue = [...entries];
  for (let file = queue.pop(); file !== undefined; file = queue.pop()) {
    if (reached.has(file)) continue;
    reached.add(file);
    queue.push(...staticImports(file, site.read(file).toString("utf8")));
  }
  return [...reached];
}

function staticImports(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, false, ts.ScriptKind.JS);
  return source.statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) return [];
    const specifier = statement.moduleSpecifier;
    if (specifier === undefined || !ts.isStringLiteral(specifier) || !specifier.text.startsWith(".")) return [];
    return [posix.join(posix.dirname(file), specifier.text)];
  });
}

const zipped = (content: string | Buffer): number => gzipSync(content).length;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
