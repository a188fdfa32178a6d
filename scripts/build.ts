import { mkdir, readdir, rm, writeFile } from "node:fs/promises";
import { join, relative, resolve } from "node:path";
import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { LANGUAGE } from "#words/language.ts";
import { useCache } from "../src/build/cache/cache.ts";
import { checkAll } from "../src/build/check-all.ts";
import { department, useDepartment } from "../src/build/department/department.ts";
import { editionFolder, siteLanguages } from "../src/build/languages.ts";
import { TAGS } from "../src/words/tags.ts";
import { buildApart, writeHeaders } from "./editions.ts";
import { finishPages } from "./finish-pages.ts";
import { writeKeeping } from "./keep-course.ts";
import { DIST, LAST_BUILD, type LastBuild, ROOT } from "./last-build.ts";
import { writeTerms } from "./mark-terms.ts";
import { writeSearchIndex } from "./search-index.ts";
import { type SiteAddress, siteAddress } from "./site-address.ts";
import { writeTakeAways } from "./take-away.ts";

/**
 * Builds the edition of the site in the language of this process with Astro, then writes its search index to `<dist>/pagefind`, marks the terms
 * of the glossary, takes out of the pages what only the build needed, writes the walkthroughs as single files, and lists all files for browsers that keep the course.
 * @param environment variables that say where the site will live, instead of the department's file
 * @returns number of pages written, and where they expect to be served
 * @throws the content check's own error, a setting's, Astro's, or an Error with the search index's complaints
 */
export async function buildSite(
  dist: string,
  environment: Readonly<Record<string, string | undefined>>,
): Promise<{ pages: number; address: SiteAddress }> {
  useCache(ROOT);
  useDepartment(ROOT);
  await checkAll(ROOT, true);
  const site = siteAddress(environment, department());
  const address = { ...site, base: site.base + editionFolder(LANGUAGE, siteLanguages(environment, department())) };
  process.env.ASTRO_TELEMETRY_DISABLED ??= "1";
  const { build } = await import("astro");
  await build({
    root: ROOT,
    outDir: dist,
    base: address.base,
    ...(address.site === undefined ? {} : { site: address.site }),
    logLevel: "warn",
  });
  await writeSearchIndex(dist);
  // The glossary is written in the language of the course.
  if (LANGUAGE === TAGS[0]) await writeTerms(dist, address.base, ROOT);
  await finishPages(dist);
  await writeTakeAways(dist, address);
  await writeKeeping(dist);
  return { pages: await countPages(dist), address };
}

async function countPages(dist: string): Promise<number> {
  const files = await readdir(dist, { recursive: true });
  return files.filter((file) => file.endsWith(".html")).length;
}

/** Errors whose message was written for the person at the keyboard; a stack would only bury it. */
const PLAIN_FAULTS = ["ContentFaults", "SettingFault"];

/**
 * What to print for a failed build: faults in content and settings speak for themselves, anything else keeps its stack.
 * Astro wraps some errors, so causes are searched too.
 */
export function failureText(error: unknown): string {
  const seen = new Set<unknown>();
  for (let link = error; link instanceof Error && !seen.has(link); link = link.cause) {
    seen.add(link);
    if (PLAIN_FAULTS.includes(link.name)) return link.message;
  }
  if (!(error instanceof Error)) return `The build failed: ${String(error)}`;
  return `The build failed: ${error.stack ?? error.message}`;
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: { out: { type: "string", default: DIST }, edition: { type: "boolean", default: false } },
  });
  const dist = resolve(ROOT, values.out);
  const begun = performance.now();
  if (dist === DIST) await rm(LAST_BUILD, { force: true });
  useDepartment(ROOT);
  const { base } = siteAddress(process.env, department());
  const languages = siteLanguages(process.env, department());
  // The first empties the folder, and lists its own files before the next come to lie among them.
  if (values.edition) return void (await buildSite(dist, process.env));
  for (const language of languages) {
    const folder = join(dist, editionFolder(language, languages));
    await (language === LANGUAGE ? buildSite(folder, process.env) : buildApart(language, folder));
  }
  await writeHeaders(dist, base);
  if (dist === DIST) await rememberBuild({ base });
  const pages = await countPages(dist);
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  console.log(`Built ${pages} ${pages === 1 ? "page" : "pages"} and the search index in ${seconds} s.`);
  console.log(`They are in ${relative(process.cwd(), dist) || dist}, to be served under ${base}`);
}

async function rememberBuild(build: LastBuild): Promise<void> {
  await mkdir(join(ROOT, ".cache"), { recursive: true });
  await writeFile(LAST_BUILD, JSON.stringify(build));
}

if (import.meta.main) {
  try {
    await main();
  } catch (error) {
    console.error(failureText(error));
    process.exitCode = 1;
  }
}
