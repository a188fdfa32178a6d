/** Weighs the first visit to a page in a real browser: what comes over the wire, not what the files would weigh. */
import type { Browser, BrowserContext, Page } from "playwright-core";

/** What one first visit costs, every island on the page started and nothing touched yet. Addresses of the scheme `data:` load nothing. */
export interface FirstVisit {
  /** Bytes received in all, heads of the answers included. */
  total: number;
  /** Bytes received for script files; the short scripts inside the page arrive with it and count there. */
  javaScript: number;
  requests: number;
}

/** Bytes of one request, as the browser reports them. */
interface Loaded {
  script: boolean;
  bytes: number;
}

/**
 * Opens the address in a fresh profile with an empty cache and reads the page to its end.
 * @throws Error when a request fails or answers with an error, or an island does not start
 */
export function weighFirstVisit(browser: Browser, address: string): Promise<FirstVisit> {
  return weighing(browser, address, readToTheEnd, true);
}

/**
 * The same, but counts only what is loaded for what the reader does once the page has been read.
 * @throws Error as above, or what `act` throws
 */
export function weighAfter(browser: Browser, address: string, act: (page: Page) => Promise<void>): Promise<FirstVisit> {
  return weighing(browser, address, act, false);
}

async function weighing(
  browser: Browser,
  address: string,
  act: (page: Page) => Promise<void>,
  visit: boolean,
): Promise<FirstVisit> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    const page = await context.newPage();
    const loaded = await countLoaded(context, page);
    await page.goto(address);
    if (!visit) {
      await readToTheEnd(page);
      await page.waitForLoadState("networkidle");
    }
    const before = visit ? 0 : loaded().length;
    await act(page);
    await page.waitForLoadState("networkidle");
    const requests = loaded().slice(before);
    return {
      total: sum(requests),
      javaScript: sum(requests.filter(({ script }) => script)),
      requests: requests.length,
    };
  } finally {
    await context.close();
  }
}

/** Scrolls down as a reader does, until every island on the page has started. */
export async function readToTheEnd(page: Page): Promise<void> {
  const islands = await page.locator("astro-island").all();
  for (const island of islands) await island.scrollIntoViewIfNeeded();
  // An island loses this attribute when its script has taken over.
  await page.locator("astro-island[ssr]").first().waitFor({ state: "detached" });
}

/** Listens to the browser's own account of the network. @returns all requests so far; throws when one failed */
async function countLoaded(context: BrowserContext, page: Page): Promise<() => Loaded[]> {
  const network = await context.newCDPSession(page);
  const asked = new Map<string, { url: string; script: boolean }>();
  const loaded: Loaded[] = [];
  const failed: string[] = [];
  network.on("Network.requestWillBeSent", ({ requestId, request, type }) => {
    if (!request.url.startsWith("data:")) asked.set(requestId, { url: request.url, script: type === "Script" });
  });
  network.on("Network.responseReceived", ({ response }) => {
    if (response.status >= 400) failed.push(`${response.url}: answered ${response.status}`);
  });
  network.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
    const request = asked.get(requestId);
    if (request) loaded.push({ script: request.script, bytes: encodedDataLength });
  });
  network.on("Network.loadingFailed", ({ requestId, errorText }) => {
    const request = asked.get(requestId);
    if (request) failed.push(`${request.url}: ${errorText}`);
  });
  await network.send("Network.enable");
  return () => {
    if (failed.length > 0)
      throw new Error(`The page could not be weighed, because requests failed.\n${failed.join("\n")}`);
    return [...loaded];
  };
}

const sum = (requests: readonly Loaded[]): number => requests.reduce((bytes, request) => bytes + request.bytes, 0);
