/** The whole build, and the first visit to what it made. */
import { spawn } from "node:child_process";
import { readdir } from "node:fs/promises";
import { join, resolve } from "node:path";
import { performance } from "node:perf_hooks";
import { startChromium } from "../chromium.ts";
import { type FirstVisit, weighFirstVisit } from "../page-weight.ts";
import { serve } from "../serve.ts";
import { rounded, say } from "./timing.ts";

const ROOT = resolve(import.meta.dirname, "../..");
/** Where the site that is measured is built. */
export const DIST = join(ROOT, ".cache", "site-bench");

export async function benchBuild() {
  say("build: the whole site");
  const begun = performance.now();
  await runBuild();
  const seconds = (performance.now() - begun) / 1000;
  const files = await readdir(DIST, { recursive: true });
  return { seconds: rounded(seconds), pages: files.filter((file) => file.endsWith(".html")).length };
}

/** The build speaks on the error stream, so that standard output stays one JSON object. */
function runBuild(): Promise<void> {
  const child = spawn(process.execPath, [join(ROOT, "scripts/build.ts"), "--out", DIST], {
    cwd: ROOT,
    env: { ...process.env, IONWRIGHT_BASE: "/" },
    stdio: ["ignore", process.stderr, process.stderr],
  });
  return new Promise((done, fail) => {
    child.on("error", fail);
    child.on("close", (code) => (code === 0 ? done() : fail(new Error("The site could not be built; see above."))));
  });
}

export async function benchPage(ids: readonly string[]) {
  const site = await serve({ port: 0, base: "/", dist: DIST });
  const browser = await startChromium();
  try {
    const weights: FirstVisit[] = [];
    for (const id of ids) {
      say(`page: first visit to ${id}`);
      weights.push(await weighFirstVisit(browser, `${site.address}practicals/${id}/`));
    }
    const heaviest = weights.reduce((a, b) => (b.total > a.total ? b : a));
    return { totalGz: heaviest.total, jsGz: heaviest.javaScript, requests: heaviest.requests };
  } finally {
    await browser.close();
    await site.close();
  }
}
