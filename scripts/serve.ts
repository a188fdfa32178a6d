import { existsSync, readFileSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import compression from "compression";
import sirv from "sirv";
import { headersFor } from "../src/build/hosting/headers.ts";
import { rulesOf } from "./editions.ts";
import { DIST, LAST_BUILD, type LastBuild } from "./last-build.ts";

/** What to serve, and where. */
export interface ServeOptions {
  /** Folder of the built site. */
  dist: string;
  /** Path the site was built for; starts and ends with a slash. */
  base: string;
  /** TCP port; 0 takes any free one. */
  port: number;
  /** Name or address to listen on; `localhost` keeps the site on this machine. */
  host?: string;
}

/** A running server. */
export interface ServedSite {
  /** Address of the home page, with host, port and base path, ending in a slash. */
  address: string;
  close(): Promise<void>;
}

/** Types that the file name alone does not tell sirv in full: text needs its encoding, search data is already packed. */
const CONTENT_TYPES: readonly (readonly [RegExp, string])[] = [
  [/\.m?js$/, "text/javascript; charset=utf-8"],
  [/\.css$/, "text/css; charset=utf-8"],
  [/\.txt$/, "text/plain; charset=utf-8"],
  [/\.json$/, "application/json; charset=utf-8"],
  [/\.(?:pf_\w+|pagefind)$/, "application/octet-stream"],
];

/**
 * Serves a built site as a plain static host would: folders by their index page, a redirect where the closing slash is
 * missing, the site's own 404 page, gzip where the browser takes it, and the headers that the build writes down for hosts.
 * @throws Error that says what to do when nothing is built there or the port is taken
 */
export async function serve({ port, base, dist, host = "localhost" }: ServeOptions): Promise<ServedSite> {
  if (!existsSync(join(dist, "index.html"))) {
    throw new Error(`There is no built site in ${dist}. Build it first: npm run build`);
  }
  const compress = compression();
  const rules = await rulesOf(dist);
  const answer = siteHandler(dist, base, (path) => headersFor(rules, path));
  const server = createServer((request, response) => compress(request, response, () => answer(request, response)));
  await listen(server, port, host);
  const bound = (server.address() as AddressInfo).port;
  return {
    address: `http://${host}:${bound}${base}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

function siteHandler(
  dist: string,
  base: string,
  headersOf: (path: string) => Record<string, string>,
): (request: IncomingMessage, response: ServerResponse) => void {
  const notFoundPage = join(dist, "404.html");
  const files = sirv(dist, {
    etag: true,
    extensions: [],
    setHeaders(response, pathname) {
      const type = CONTENT_TYPES.find(([ending]) => ending.test(pathname))?.[1];
      if (type !== undefined) response.setHeader("Content-Type", type);
    },
  });

  const notFound = (response: ServerResponse): void => {
    response.statusCode = 404;
    const page = existsSync(notFoundPage) ? readFileSync(notFoundPage) : "There is no page at this address.";
    const type = typeof page === "string" ? "text/plain" : "text/html";
    response.setHeader("Content-Type", `${type}; charset=utf-8`);
    response.end(page);
  };
  const redirect = (response: ServerResponse, status: 301 | 302, target: string): void => {
    response.writeHead(status, { Location: target });
    response.end();
  };

  return (request, response) => {
    const address = `http://localhost${request.url}`;
    if (!URL.canParse(address)) return notFound(response);
    const { pathname, search } = new URL(address);
    if (!pathname.startsWith(base)) {
      if (pathname === "/" || `${pathname}/` === base) redirect(response, 302, base);
      else notFound(response);
      return;
    }
    const inner = pathname.slice(base.length - 1);
    for (const [name, value] of Object.entries(headersOf(inner.slice(1)))) response.setHeader(name, value);
    request.url = inner.endsWith("/") ? `${inner}index.html` : inner;
    files(request, response, () => {
      const isFolder = !inner.endsWith("/") && existsSync(join(dist, inner, "index.html"));
      if (isFolder) redirect(response, 301, `${pathname}/${search}`);
      else notFound(response);
    });
  };
}

function listen(server: Server, port: number, host: string): Promise<void> {
  return new Promise((done, fail) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      fail(error.code === "EADDRINUSE" ? new Error(portTaken(port)) : error);
    });
    server.listen(port, host, () => done());
  });
}

function portTaken(port: number): string {
  return `Port ${port} is already in use. Stop the program that uses it, or choose another port: PORT=${port + 1} npm start`;
}

function lastBuild(): LastBuild {
  if (!existsSync(LAST_BUILD)) throw new Error("There is no complete build to serve. Build first: npm run build");
  return JSON.parse(readFileSync(LAST_BUILD, "utf8")) as LastBuild;
}

function portFrom(given: string | undefined): number {
  const port = Number(given ?? "4321");
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  throw new Error(`PORT is "${given}". Give a whole number from 0 to 65535, such as 4321.`);
}

if (import.meta.main) {
  try {
    const site = await serve({
      port: portFrom(process.env.PORT),
      base: lastBuild().base,
      dist: DIST,
      host: process.env.HOST ?? "localhost",
    });
    console.log(`The site is at ${site.address}`);
    console.log("Stop it with Ctrl+C.");
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
