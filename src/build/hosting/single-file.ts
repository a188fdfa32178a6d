/**
 * A built walkthrough as one file that opens from disk: styles, script, predictions and icon inside it, nothing left to load. Its policy names
 * the one script and the styles by their hashes and forbids everything else.
 */
import { type HTMLElement, parse } from "node-html-parser";
import { scriptHash } from "./script-hash.ts";

export interface SingleFile {
  /** The page as built. */
  html: string;
  /** Whole address of the page on its host, or its path where the host is not known. */
  at: URL;
  /** The host is known: links to other pages can lead there. */
  isHosted: boolean;
  /** What starts the islands: a classic script. */
  script: string;
  /** Content of a file of the site, by its path on the host. */
  read(path: string): Buffer;
}

/** What makes no sense outside the course: ways to its other pages, and what a host or an installed course needs. */
const LEFT_BEHIND = [
  'nav[aria-label="Site"]',
  ".sequence",
  // Lists to choose from work in the file as they do on the page.
  ".screen:not(.tools)",
  'link[rel="manifest"]',
  'link[rel="sitemap"]',
  ".under a",
];

/** A script that must run before anything is painted: it is kept as it is. */
const isEarly = (script: HTMLElement) => script.hasAttribute("data-early");

const dataUrl = (type: string, content: Buffer): string => `data:${type};base64,${content.toString("base64")}`;

/** @throws Error when the page names a file that is not there */
export function singleFile({ html, at, isHosted, script, read }: SingleFile): string {
  const page = parse(withData(html, at, read), { comment: false });
  for (const one of page.querySelectorAll(LEFT_BEHIND.join(","))) one.remove();
  const early = page.querySelectorAll("script").filter(isEarly);
  for (const one of page.querySelectorAll("script")) if (!isEarly(one)) one.remove();

  const sheets = page.querySelectorAll('link[rel="stylesheet"], style');
  const contentOf = (sheet: HTMLElement) =>
    sheet.tagName === "STYLE" ? sheet.text : read(hrefOf(sheet, at).pathname).toString("utf8");
  const styles = sheets.map(contentOf).join("\n");
  for (const sheet of sheets) sheet.remove();
  for (const icon of page.querySelectorAll('link[rel="icon"]')) {
    icon.setAttribute("href", dataUrl("image/svg+xml", read(hrefOf(icon, at).pathname)));
  }
  for (const anchor of page.querySelectorAll("a[href]")) leadOut(anchor, at, isHosted);

  // Between the tags stands just what is hashed; "</" would end a script early.
  const own = script.replaceAll("</script", "<\\/script");
  const hashes = [own, ...early.map(({ text }) => text)].map((text) => `'${scriptHash(text)}'`).join(" ");
  const policy = `default-src 'none'; script-src ${hashes}; style-src '${scriptHash(styles)}'; img-src data:; connect-src data:; base-uri 'none'; form-action 'none'`;
  const csp = page.querySelector('meta[http-equiv="content-security-policy"]');
  if (!csp) throw new Error(`${at.pathname} has no policy to replace.`);
  csp.setAttribute("content", policy);
  const whole = page.toString();
  return whole
    .replace("</head>", () => `<style>${styles}</style></head>`)
    .replace("</body>", () => `<script>${own}</script></body>`);
}

const hrefOf = (element: HTMLElement, at: URL): URL => new URL(element.getAttribute("href") ?? "", at);

/**
 * What an island would fetch becomes part of the address it fetches; the files of its code are in the script. Done in the text of the page: the
 * parser writes an attribute with quotation marks in it otherwise than it read it.
 */
const withData = (html: string, at: URL, read: SingleFile["read"]): string =>
  html
    .replace(/ (?:component|renderer|before-hydration)-url="[^"]*"/g, "")
    .replace(/(?<=At":\[0,")[^"]+\.json(?=")/g, (address) =>
      dataUrl("application/json", read(new URL(address, at).pathname)),
    );

/** A link to another page leads to the host where it is known; where it is not, its words stay. */
function leadOut(anchor: HTMLElement, at: URL, isHosted: boolean): void {
  const written = anchor.getAttribute("href") ?? "";
  if (written.startsWith("#")) return;
  const target = new URL(written, at);
  if (target.origin !== at.origin) return;
  if (isHosted) anchor.setAttribute("href", target.href);
  else {
    anchor.removeAttribute("href");
    // The meaning of a term still shows beside it, to the keyboard too.
    if (anchor.hasAttribute("aria-describedby")) anchor.setAttribute("tabindex", "0");
  }
}
