/**
 * Answers for the course from the copy the reader has chosen to keep, and passes everything else on. It stores nothing itself but the newest
 * edition the host tells of; a page that is shown while another edition is there says so in a line.
 *
 * It is bundled to `sw.js` beside the first page, for a worker serves the folder it lies in. It is the same for every edition.
 */
import { EDITION, isEdition } from "./course-edition.ts";
import { keptCopy, newerThan, tellNewest } from "./kept-shelf.ts";
import { withNotice } from "./notice.ts";

/** The part of a service worker's scope that is used here; the compiler's own list of browser types is that of a page. */
interface Worker {
  registration: { scope: string };
  clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", listen: (event: Extendable) => void): void;
  addEventListener(type: "fetch", listen: (event: Asked) => void): void;
}
interface Extendable {
  waitUntil(what: Promise<unknown>): void;
}
interface Asked extends Extendable {
  request: Request;
  respondWith(answer: Promise<Response>): void;
}

const worker = self as unknown as Worker;
const base = worker.registration.scope;

worker.addEventListener("install", (event) => event.waitUntil(worker.skipWaiting()));
worker.addEventListener("activate", (event) => event.waitUntil(worker.clients.claim()));

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const asksForNetwork = request.cache === "no-store" || request.cache === "reload";
  if (request.method !== "GET" || asksForNetwork || !request.url.startsWith(base)) return;
  const isPage = request.mode === "navigate";
  if (isPage) event.waitUntil(lookForNewer().catch(() => undefined));
  event.respondWith(answer(request, isPage));
});

/** Hosts that compress say that the file differs by what a browser takes; the copy was made by this one. */
const SAME_FILE = { ignoreVary: true };

async function answer(request: Request, isPage: boolean): Promise<Response> {
  const copy = await keptCopy(base).catch(() => undefined);
  if (!copy) return fetch(request);
  const address = new URL(request.url);
  // What was chosen on a page stands after "?": the file is the same.
  const found = await copy.cache.match(address.origin + address.pathname, SAME_FILE);
  if (found) return isPage ? withNotice(found, (await newerThan(copy, base)) !== undefined, base) : found;
  if (isPage && !address.pathname.endsWith("/")) {
    const folder = `${address.origin}${address.pathname}/`;
    if (await copy.cache.match(folder, SAME_FILE)) return Response.redirect(folder + address.search, 301);
  }
  // A course that has grown since has more pages than the copy.
  try {
    return await fetch(request);
  } catch (error) {
    const lost = isPage ? await copy.cache.match(`${base}404.html`, SAME_FILE) : undefined;
    if (!lost) throw error;
    return new Response(lost.body, { status: 404, headers: lost.headers });
  }
}

async function lookForNewer(): Promise<void> {
  const copy = await keptCopy(base);
  if (!copy) return;
  const told = await fetch(base + EDITION, { cache: "no-cache" });
  const newest: unknown = told.ok ? await told.json() : undefined;
  if (isEdition(newest)) await tellNewest(copy.cache, base, newest);
}
