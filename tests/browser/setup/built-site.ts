import { spawn } from "node:child_process";
import { join, resolve } from "node:path";
import type { TestProject } from "vitest/node";
import { unpackedChromium } from "../../../scripts/chromium.ts";
import { serve } from "../../../scripts/serve.ts";

const ROOT = resolve(import.meta.dirname, "../../..");
const DIST = join(".cache", "site-test");
/** Deep on purpose: a link that forgets the base path leads nowhere. */
const BASE = "/any/where/";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the site under test lies and answers. */
    builtSite: { address: string; base: string; dist: string };
  }
}

/** Builds the site once for all tests of the project, serves it, and has the browser unpacked before the first test. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const ownBrowser = process.env.CHROMIUM_PATH;
  await Promise.all([build(), ownBrowser ? undefined : unpackedChromium()]);
  const dist = join(ROOT, DIST);
  const site = await serve({ port: 0, base: BASE, dist });
  project.provide("builtSite", { address: site.address, base: BASE, dist });
  return () => site.close();
}

/** A process of its own: the test runner's environment (NODE_ENV and module hooks) must not colour the build. */
function build(): Promise<void> {
  const { NODE_ENV: _, VITEST: __, ...environment } = process.env;
  const child = spawn(process.execPath, [join(ROOT, "scripts/build.ts"), "--out", DIST], {
    cwd: ROOT,
    env: { ...environment, IONWRIGHT_BASE: BASE },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const said: string[] = [];
  child.stdout.on("data", (chunk: Buffer) => said.push(chunk.toString()));
  child.stderr.on("data", (chunk: Buffer) => said.push(chunk.toString()));
  return new Promise((done, fail) => {
    child.on("error", fail);
    child.on("close", (code) => {
      if (code === 0) done();
      else fail(new Error(`The site under test could not be built.\n${said.join("")}`));
    });
  });
}
