import { join, resolve } from "node:path";
import type { TestProject } from "vitest/node";
import { unpackedChromium } from "../../../scripts/chromium.ts";
import { serve } from "../../../scripts/serve.ts";
import { buildApart } from "./build-apart.ts";

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
  await Promise.all([
    buildApart(DIST, { IONWRIGHT_BASE: BASE, IONWRIGHT_DEPARTMENT: "" }),
    ownBrowser ? undefined : unpackedChromium(),
  ]);
  const dist = join(ROOT, DIST);
  const site = await serve({ port: 0, base: BASE, dist });
  project.provide("builtSite", { address: site.address, base: BASE, dist });
  return () => site.close();
}
