/** A copy of this project with synthetic practicals in place of its own. */
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { SyntheticPractical } from "../../../tests/scale/synthetic-practical.ts";
import { rounded } from "../timing.ts";
import { type Cost, measuredRun } from "./measured-run.ts";

const ROOT = resolve(import.meta.dirname, "../../..");
const COPIED = [
  "src",
  "scripts",
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  "astro.config.mjs",
  "site.config.ts",
  "public",
];
const PRACTICALS = "src/content/practicals";

export interface OurRun {
  practicals: number;
  pages: number;
  /** Everything from nothing: the engine's check of every practical, pages, search index. */
  cold: Cost;
  /** The same after one practical was edited. */
  afterEdit: Cost;
  /** Bytes of a page that hangs on no practical, of the first walkthrough, and of the pages beside it together. */
  bytes: { plain: number; walkthrough: number; beside: number };
}

export async function runOurs(folder: string, practicals: readonly SyntheticPractical[]): Promise<OurRun> {
  for (const name of COPIED) {
    if (statSync(join(ROOT, name), { throwIfNoEntry: false }))
      cpSync(join(ROOT, name), join(folder, name), { recursive: true });
  }
  // Package by package: Astro keeps what it has read of the content in the folder itself, which must not be this project's.
  mkdirSync(join(folder, "node_modules"));
  for (const name of readdirSync(join(ROOT, "node_modules"))) {
    if (/^\.(?!bin$)/.test(name)) continue;
    symlinkSync(join(ROOT, "node_modules", name), join(folder, "node_modules", name));
  }
  rmSync(join(folder, PRACTICALS), { recursive: true });
  mkdirSync(join(folder, PRACTICALS));
  for (const { name, text } of practicals) writeFileSync(join(folder, PRACTICALS, `${name}.mdx`), text);

  const build = () => measuredRun(process.execPath, ["scripts/build.ts"], folder, { IONWRIGHT_BASE: "/" });
  const cold = await build();
  const dist = join(folder, "dist");
  const html = readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".html"));
  const sizeOf = (file: string) => statSync(join(dist, file)).size;
  const first = join("practicals", practicals[0].name);
  const own = html.filter((file) => file.startsWith(join(first, "/")));
  const bytes = {
    plain: sizeOf(join("cautions", "goggles", "index.html")),
    walkthrough: sizeOf(join(first, "index.html")),
    beside: own.reduce((sum, file) => sum + sizeOf(file), 0) - sizeOf(join(first, "index.html")),
  };

  // One line of the frontmatter is another: the whole practical is worked out anew.
  const edited = join(folder, PRACTICALS, `${practicals[0].name}.mdx`);
  writeFileSync(edited, readFileSync(edited, "utf8").replace("minutes: 60", "minutes: 61"));
  return {
    practicals: practicals.length,
    pages: html.length,
    cold: short(cold),
    afterEdit: short(await build()),
    bytes,
  };
}

/** With the figures that mean something. */
export const short = (cost: Cost): Cost =>
  Object.fromEntries(Object.entries(cost).map(([name, value]) => [name, rounded(value)])) as unknown as Cost;
