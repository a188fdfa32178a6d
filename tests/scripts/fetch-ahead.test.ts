import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, type Rolldown } from "vite";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { fetchAhead } from "../../scripts/fetch-ahead.ts";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "fetch-ahead-"));
  const files = {
    "plain.js": 'export const later = () => import("./part.js");',
    "part.js": 'export { shared } from "./shared.js"; export const part = 1;',
    "other.js": 'import { shared } from "./shared.js"; globalThis.other = shared;',
    "shared.js": "export const shared = 2;",
    "styled.js": 'export const later = () => import("./with-style.js");',
    "with-style.js": 'import "./a.css"; export const part = 1;',
    "a.css": "p{margin:0}",
  };
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
});
afterAll(() => rm(folder, { recursive: true }));

async function bundled(entries: string[], of: "page" | "worker" = "page"): Promise<Rolldown.OutputChunk[]> {
  const made = (await build({
    root: folder,
    base: "/lab/",
    configFile: false,
    logLevel: "silent",
    plugins: [fetchAhead(of)],
    build: {
      write: false,
      modulePreload: { polyfill: false },
      rolldownOptions: { input: entries.map((name) => join(folder, name)), preserveEntrySignatures: "strict" },
    },
  })) as Rolldown.RolldownOutput;
  return made.output.filter((file) => file.type === "chunk");
}

describe("what is loaded later", () => {
  test("is asked for at once, with the files it imports, below the base path", async () => {
    const chunks = await bundled(["plain.js", "other.js"]);
    const [start] = chunks.filter(({ name }) => name === "plain");
    const asked: { rel: string; href: string }[] = [];
    const document = {
      createElement: () => ({}),
      head: { append: (link: (typeof asked)[number]) => asked.push(link) },
    };
    // The import itself fails: no browser is here to load it. What is asked for before is what counts.
    const text = start.code.replace(/export\{(\w+) as later\}/, "return $1").replaceAll("import(", "load(");
    const later = new Function("document", "load", text)(document, async () => "loaded");
    expect(await later()).toBe("loaded");
    const files = chunks.filter(({ name }) => name === "part" || name === "shared").map(({ fileName }) => fileName);
    expect(files).toHaveLength(2);
    expect(asked.map(({ href }) => href).sort()).toEqual(files.map((file) => `/lab/${file}`).sort());
    expect(asked.every(({ rel }) => rel === "modulepreload")).toBe(true);
  });

  test("is simply loaded where there is no page", async () => {
    const [start] = (await bundled(["plain.js"], "worker")).filter(({ name }) => name === "plain");
    const text = start.code.replace(/export\{(\w+) as later\}/, "return $1").replaceAll("import(", "load(");
    expect(text).not.toContain("document");
    expect(await new Function("load", text)(async () => "loaded")()).toBe("loaded");
  });

  test("brings no style sheet: the build says where one was asked for", async () => {
    await expect(bundled(["styled.js"])).rejects.toThrow(/loads a style sheet later on/);
  });
});
