/**
 * Asks Lighthouse, as on a phone, what it thinks of four pages of the site as built: `npm run lighthouse`, after a build. Lighthouse is fetched
 * when it is asked for, since it weighs more than all else here together; its scores for speed depend on the machine and are no test.
 */
import { execFile } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:net";
import { promisify } from "node:util";
import { startChromium } from "./chromium.ts";
import { DIST, LAST_BUILD, type LastBuild } from "./last-build.ts";
import { serve } from "./serve.ts";

/** Pinned: another version weighs things differently. */
const LIGHTHOUSE = "lighthouse@13.5.0";
const CATEGORIES = ["performance", "accessibility", "best-practices", "seo"];
/** The first page, a walkthrough, an ion test, and the page for a paper of one's own. */
const PAGES = ["", "practicals/lamp-room-shelf/", "ion-tests/sodium-hydroxide/", "paper/"];

interface Report {
  categories: Record<string, { score: number | null; auditRefs: { id: string; weight: number }[] }>;
  audits: Record<string, { score: number | null; title: string; displayValue?: string }>;
}

/** A port that nothing listens on. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, "localhost", done));
  const address = server.address();
  await new Promise((done) => server.close(done));
  if (address === null || typeof address === "string") throw new Error("There is no free port.");
  return address.port;
}

async function reportOn(url: string, port: number): Promise<Report> {
  const { stdout } = await promisify(execFile)(
    "npx",
    [
      "--yes",
      LIGHTHOUSE,
      url,
      `--port=${port}`,
      "--output=json",
      "--quiet",
      `--only-categories=${CATEGORIES.join(",")}`,
    ],
    { maxBuffer: 64 * 1024 * 1024, shell: process.platform === "win32" },
  );
  return JSON.parse(stdout) as Report;
}

/** What keeps a category from its full score. */
function wanting({ categories, audits }: Report): string[] {
  const counted = CATEGORIES.flatMap((name) => categories[name].auditRefs.filter(({ weight }) => weight > 0));
  return [...new Set(counted.map(({ id }) => id))]
    .filter((id) => (audits[id].score ?? 1) < 0.9)
    .map((id) => `    ${audits[id].title}${audits[id].displayValue ? `: ${audits[id].displayValue}` : ""}`);
}

if (!existsSync(LAST_BUILD)) {
  console.error("There is no built site. Build it first: npm run build");
  process.exit(1);
}
const { base } = JSON.parse(readFileSync(LAST_BUILD, "utf8")) as LastBuild;
const site = await serve({ dist: DIST, base, port: 0 });
const port = await freePort();
const browser = await startChromium([`--remote-debugging-port=${port}`]);
try {
  console.log(`${CATEGORIES.join(", ")}, of 100`);
  for (const path of PAGES) {
    const report = await reportOn(site.address + path, port);
    const scores = CATEGORIES.map((name) => Math.round((report.categories[name].score ?? 0) * 100));
    console.log(
      [`${scores.map((score) => String(score).padStart(3)).join(" ")}  /${path}`, ...wanting(report)].join("\n"),
    );
  }
} finally {
  await browser.close();
  await site.close();
}
