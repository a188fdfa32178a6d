/**
 * While somebody writes (`npm run dev`), the check runs anew after every change: all faults of the content stand in the terminal and over
 * the page, and go when they are mended. The check is a process of its own, so that a page is never kept waiting for it.
 */
import { spawn } from "node:child_process";
import { join } from "node:path";
import type { AstroIntegration } from "astro";

/** What the server of Astro's developers' mode gives: the part that is used here. */
export interface DevServer {
  watcher: { on(event: "add" | "change" | "unlink", seen: (file: string) => void): unknown };
  ws: { on(event: "connection", connected: () => void): unknown; send(payload: unknown): void };
}

/** Runs the check. @returns its report; empty when nothing is wrong */
export type Check = () => Promise<string>;

export interface Told {
  info(message: string): void;
  error(message: string): void;
}

/** Saving a file may come as several changes; common practice, no source. */
const SETTLED_MS = 200;

const IS_CONTENT = /(?:\.mdx|\.yaml|[\\/]theme\.css)$/;

export function faultsInDev(root: string): AstroIntegration {
  return {
    name: "faults-in-dev",
    hooks: {
      "astro:server:setup": ({ server, logger }) => {
        watchFaults(server as DevServer, () => checkApart(root), logger);
      },
    },
  };
}

/** Checks at once and after every change, one run at a time; what changes meanwhile is looked at afterwards. */
export function watchFaults(server: DevServer, check: Check, told: Told): void {
  let standing = "";
  let running = false;
  let stale = false;
  let settling: ReturnType<typeof setTimeout> | undefined;

  const run = async (): Promise<void> => {
    if (running) {
      stale = true;
      return;
    }
    running = true;
    const before = standing;
    standing = await check();
    running = false;
    if (stale) {
      stale = false;
      return run();
    }
    if (standing !== "") {
      told.error(`\n${standing}`);
      server.ws.send(overlay(standing));
    } else if (before !== "") {
      told.info("The content has no faults any more.");
      server.ws.send({ type: "full-reload" });
    }
  };

  const changed = (file: string) => {
    if (!IS_CONTENT.test(file)) return;
    clearTimeout(settling);
    settling = setTimeout(run, SETTLED_MS);
  };
  for (const event of ["add", "change", "unlink"] as const) server.watcher.on(event, changed);
  // A page that is opened later shows what stands against the content, too.
  server.ws.on("connection", () => {
    if (standing !== "") server.ws.send(overlay(standing));
  });
  void run();
}

/** The report goes where plain text is shown: a quotation from a page may hold tags. */
function overlay(report: string) {
  const [first, ...rest] = report.split("\n");
  const escaped = first.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
  return {
    type: "error",
    err: {
      name: "ContentFaults",
      title: "Not to be published as it is",
      message: escaped,
      stack: rest.join("\n").trim(),
    },
  };
}

function checkApart(root: string): Promise<string> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [join(root, "scripts/check.ts")], {
      cwd: root,
      stdio: ["ignore", "ignore", "pipe"],
    });
    const said: string[] = [];
    child.stderr.on("data", (chunk: Buffer) => said.push(chunk.toString()));
    child.on("error", (error) => done(`The check could not be run: ${error.message}`));
    child.on("close", (code) => done(code === 0 ? "" : said.join("").trim()));
  });
}
