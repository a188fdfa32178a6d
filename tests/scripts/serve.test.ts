import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type ServedSite, serve } from "../../scripts/serve.ts";

let dist: string;
let site: ServedSite;

beforeAll(async () => {
  dist = await mkdtemp(join(tmpdir(), "served-"));
  await mkdir(join(dist, "tubes"));
  await mkdir(join(dist, "pagefind"));
  await writeFile(join(dist, "index.html"), "<h1>Home</h1>");
  await writeFile(join(dist, "404.html"), "<h1>Nothing here</h1>");
  await writeFile(join(dist, "tubes", "index.html"), `<h1>Tubes</h1>${"<p>rack</p>".repeat(500)}`);
  await writeFile(join(dist, "a.js"), "1");
  await writeFile(join(dist, "a.css"), "p{}");
  await writeFile(join(dist, "pagefind", "x.pf_meta"), "x");
  site = await serve({ port: 0, base: "/lab/", dist });
});

afterAll(async () => {
  await site.close();
  await rm(dist, { recursive: true });
});

const get = (path: string) => fetch(new URL(path, site.address), { redirect: "manual" });

/** A request line as written, which `fetch` would tidy up first. */
function getRaw(path: string): Promise<number | undefined> {
  const { hostname, port } = new URL(site.address);
  return new Promise((done, fail) => {
    const sent = request({ hostname, port, path, agent: false }, (response) => {
      response.resume();
      done(response.statusCode);
    });
    sent.on("error", fail);
    sent.end();
  });
}

test("the address names host, port and base path", () => {
  expect(site.address).toMatch(/^http:\/\/localhost:\d+\/lab\/$/);
});

test.each([
  ["/lab/", "text/html;charset=utf-8"],
  ["/lab/tubes/?r=1", "text/html;charset=utf-8"],
  ["/lab/a.js", "text/javascript; charset=utf-8"],
  ["/lab/a.css", "text/css; charset=utf-8"],
  ["/lab/pagefind/x.pf_meta", "application/octet-stream"],
])("%s answers as %s", async (path, type) => {
  const response = await get(path);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe(type);
});

test.each([
  ["/", 302, "/lab/"],
  ["/lab", 302, "/lab/"],
  ["/lab/tubes", 301, "/lab/tubes/"],
  ["/lab/tubes?r=1", 301, "/lab/tubes/?r=1"],
])("%s sends on (%i) to %s", async (path, status, target) => {
  const response = await get(path);
  expect(response.status).toBe(status);
  expect(response.headers.get("location")).toBe(target);
});

test.each(["/lab/beakers/", "/tubes/", "/lab/pagefind/"])("%s answers 404 with the page of the site", async (path) => {
  const response = await get(path);
  expect(response.status).toBe(404);
  expect(await response.text()).toContain("Nothing here");
});

test.each(["/lab/../../package.json", "/lab/..%2f..%2fpackage.json", "//[", "/lab/%", "/lab/%00"])(
  "the odd request %s gets 404 and does no harm",
  async (path) => {
    expect(await getRaw(path)).toBe(404);
    expect((await get("/lab/")).status).toBe(200);
  },
);

test("text is packed for a browser that takes gzip", async () => {
  const response = await get("/lab/tubes/");
  expect(response.headers.get("content-encoding")).toBe("gzip");
});

test("a taken port is explained", async () => {
  const port = Number(new URL(site.address).port);
  await expect(serve({ port, base: "/", dist })).rejects.toThrow(
    `Port ${port} is already in use. Stop the program that uses it, or choose another port: PORT=${port + 1} npm start`,
  );
});

test("a folder without a site is explained", async () => {
  await expect(serve({ port: 0, base: "/", dist: join(dist, "pagefind") })).rejects.toThrow(/npm run build/);
});
