import type { Browser, BrowserContext, Page } from "playwright-core";
import { inject } from "vitest";
import { startChromium } from "../../../scripts/chromium.ts";

/** How a reader looks at the page. */
export interface ReaderOptions {
  /** Viewport in CSS pixels; 1280 by 800 when not given. */
  width?: number;
  height?: number;
  colorScheme?: "light" | "dark";
  javaScriptEnabled?: boolean;
  /** The screen can be touched; it cannot when not given. */
  hasTouch?: boolean;
  /** Status the address must answer with; 200 when not given. */
  status?: number;
  /** Address of another built site to read, with its base path; the site of the test run when not given. */
  site?: string;
}

/** A page in a reader's browser, with all that went wrong on it so far. */
export interface OpenedPage {
  page: Page;
  context: BrowserContext;
  /** Faults up to now; taking them keeps the test from failing because of them. */
  takeFaults(): string[];
}

interface Opened {
  context: BrowserContext;
  faults: string[];
}

const opened: Opened[] = [];
let browser: Promise<Browser> | undefined;

/**
 * Opens a page of the built site in a fresh browser profile. The page lives for one test: when that ends, the page is
 * closed, and the test fails if it wrote an error to the console, threw, broke the content security policy or asked
 * another host for anything.
 * @param path below the base path, such as `practicals/copper-or-iron/`, or '' for the home page
 */
export async function openPage(path: string, options: ReaderOptions = {}): Promise<OpenedPage> {
  const { width = 1280, height = 800, colorScheme = "light", status = 200 } = options;
  const { javaScriptEnabled = true, hasTouch = false } = options;
  const address = new URL(path, options.site ?? inject("builtSite").address);
  browser ??= startChromium();
  const context = await (await browser).newContext({
    viewport: { width, height },
    colorScheme,
    javaScriptEnabled,
    hasTouch,
    locale: "en-GB",
  });
  const faults: string[] = [];
  opened.push({ context, faults });
  watch(context, address, status, faults);

  const page = await context.newPage();
  const found = (await page.goto(address.href))?.status();
  if (found !== status) {
    // The error says it all; what the wrong page logged besides would only hide it.
    faults.length = 0;
    throw new Error(`${address.href} answered ${found ?? "nothing"}; expected ${status}.`);
  }
  return { page, context, takeFaults: () => faults.splice(0) };
}

function watch(context: BrowserContext, address: URL, status: number, faults: string[]): void {
  context.on("console", (message) => {
    if (message.type() !== "error") return;
    const { url, lineNumber } = message.location();
    // The browser logs the wanted "not found" answer as an error of its own.
    if (status !== 200 && url === address.href) return;
    faults.push(`console error: ${message.text()} (${url}:${lineNumber})`);
  });
  context.on("weberror", (error) => faults.push(`page error: ${error.error().message}`));
  context.on("request", (request) => {
    const target = new URL(request.url());
    if (/^https?:$|^wss?:$/.test(target.protocol) && target.host !== address.host) {
      faults.push(`request to another host: ${request.method()} ${request.url()}`);
    }
  });
}

/** Closes the pages of the test that just ended. @returns the faults nobody took */
export async function closePages(): Promise<string[]> {
  const pages = opened.splice(0);
  await Promise.all(pages.map(({ context }) => context.close()));
  return pages.flatMap(({ faults }) => faults);
}

/** Ends the browser of this test file, if one was started. */
export async function closeBrowser(): Promise<void> {
  const started = browser;
  browser = undefined;
  await (await started)?.close();
}
