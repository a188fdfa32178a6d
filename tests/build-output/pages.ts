import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type HTMLElement, parse } from "node-html-parser";
import { inject } from "vitest";

/** One page of a built site. */
export interface BuiltPage {
  /** File below the site's folder, with forward slashes: `practicals/demo/index.html`. */
  file: string;
  html: string;
  document: HTMLElement;
}

/** A built site: its pages, and every file it holds. */
export interface Site {
  /** Path the site is served under, with a slash at both ends. */
  base: string;
  pages: readonly BuiltPage[];
  /** Every file below the site's folder, pages included. */
  files: ReadonlySet<string>;
  /** Content of a file of the site. */
  read(file: string): Buffer;
}

/** The site that the test run built, or another in a folder of this machine. */
export function builtSite({ base, dist }: { base: string; dist: string } = inject("builtSite")): Site {
  const entries = readdirSync(dist, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const names = entries.map((entry) =>
    join(entry.parentPath, entry.name)
      .slice(dist.length + 1)
      .replaceAll("\\", "/"),
  );
  return siteOf(base, names, (file) => readFileSync(join(dist, file)));
}

/** A site that exists only in a test: file contents by file name. */
export function imaginedSite(base: string, contents: Readonly<Record<string, string>>): Site {
  return siteOf(base, Object.keys(contents), (file) => Buffer.from(contents[file]));
}

function siteOf(base: string, names: readonly string[], read: Site["read"]): Site {
  const pages = names
    // A single file to take away is a page with rules of its own: tests/browser/take-away.test.ts.
    .filter((name) => name.endsWith(".html") && !/(?:^|\/)take-away\//.test(name))
    .sort()
    .map((file) => {
      const html = read(file).toString("utf8");
      return { file, html, document: parse(html, { comment: false }) };
    });
  return { base, pages, files: new Set(names), read };
}

/** Where a page is found on its host; the host itself does not matter. */
export function addressOf(site: Site, page: BuiltPage): URL {
  return new URL(site.base + page.file.replace(/(^|\/)index\.html$/, "$1"), "http://site.invalid");
}

/** File of the site behind an address, or undefined when the address leads out of the site's base path. */
export function fileBehind(site: Site, address: URL): string | undefined {
  const path = decodeURIComponent(address.pathname);
  if (!path.startsWith(site.base)) return undefined;
  const inner = path.slice(site.base.length);
  return inner === "" || inner.endsWith("/") ? `${inner}index.html` : inner;
}
