import { FRAMED_FOLDER } from "../../components/framed/framed-pages.ts";

/**
 * What a host should say with every file: the part of the site's safety that a page cannot say for itself. The policy of scripts and styles
 * stands in each page; a policy on frames counts only as a header (CSP Level 3, W3C, section 4.2.2: `frame-ancestors` in a meta element is
 * ignored).
 */
export interface HeaderRule {
  /** Path below the site's base path; `*` at its end stands for whatever follows. */
  path: string;
  headers: Readonly<Record<string, string>>;
}

const EVERY_FILE: HeaderRule = {
  path: "*",
  headers: {
    "X-Content-Type-Options": "nosniff",
  },
};

/** Names of built files change with their content, so a copy never goes stale. */
const BUILT_FILES: HeaderRule = {
  path: "_astro/*",
  headers: { "Cache-Control": "public, max-age=31536000, immutable" },
};

/** What counts for a page and all it loads: other files do without, for a head comes with each of them. */
const PAGE = {
  // A reader's record stands in the address of a page: no other site is told it.
  "Referrer-Policy": "no-referrer",
  "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
};

const NOT_FRAMED = { "Content-Security-Policy": "frame-ancestors 'self'" };

/** An edition in another language. */
interface OtherEdition {
  /** Its folder below the site's: `de/`. */
  at: string;
  folders: readonly string[];
}

/**
 * The rules for a built site.
 * @param folders names of the folders with pages right below the site's folder
 * @param others its editions in other languages
 */
export function headerRules(folders: readonly string[], others: readonly OtherEdition[] = []): HeaderRule[] {
  return [EVERY_FILE, ...[{ at: "", folders }, ...others].flatMap(editionRules)];
}

function editionRules({ at, folders }: OtherEdition): HeaderRule[] {
  return [
    { ...BUILT_FILES, path: at + BUILT_FILES.path },
    ...["", "404.html", ...folders.map((name) => `${name}/*`)].map((path) => ({
      path: at + path,
      headers: path === `${FRAMED_FOLDER}/*` ? PAGE : { ...NOT_FRAMED, ...PAGE },
    })),
  ];
}

/**
 * The headers of one file, all rules that fit taken together.
 * @param path below the base path, without a slash at its beginning
 */
export function headersFor(rules: readonly HeaderRule[], path: string): Record<string, string> {
  const fits = (rule: string) => (rule.endsWith("*") ? path.startsWith(rule.slice(0, -1)) : path === rule);
  return Object.assign({}, ...rules.filter((rule) => fits(rule.path)).map(({ headers }) => headers));
}

/** The rules in the form that many static hosts read from a file `_headers`: a path, then its headers, each indented. */
export function headersFile(rules: readonly HeaderRule[], base: string): string {
  return rules
    .map(({ path, headers }) => [base + path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)])
    .map((lines) => `${lines.join("\n")}\n`)
    .join("\n");
}
