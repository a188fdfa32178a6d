/** The editions of a built site, one for each language: where they lie, and how one in another language than this process's is built. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type HeaderRule, headerRules, headersFile } from "../src/build/hosting/headers.ts";
import { EDITION } from "../src/components/keep/course-edition.ts";
import { type Language, TAGS } from "../src/words/tags.ts";
import { ROOT } from "./last-build.ts";

/** What every file of a built site should be sent with, its other languages included. */
export async function rulesOf(dist: string): Promise<HeaderRule[]> {
  const others = TAGS.filter((tag) => existsSync(join(dist, tag, EDITION)));
  const editions = others.map(async (tag) => ({ at: `${tag}/`, folders: await foldersOfPages(join(dist, tag)) }));
  const folders = (await foldersOfPages(dist)).filter((name) => !others.some((tag) => tag === name));
  return headerRules(folders, await Promise.all(editions));
}

/** Writes the headers for the host. */
export async function writeHeaders(dist: string, base: string): Promise<void> {
  await writeFile(join(dist, "_headers"), headersFile(await rulesOf(dist), base));
}

/** Folders right below the site's own that hold pages. */
export async function foldersOfPages(dist: string): Promise<string[]> {
  const files = await readdir(dist, { recursive: true });
  const folders = files.filter((file) => file.endsWith(".html")).map((file) => file.split(/[\\/]/));
  return [...new Set(folders.filter(({ length }) => length > 1).map(([folder]) => folder))].sort();
}

/**
 * Builds an edition in a process of its own: which words a module holds is settled when it is first loaded (`imports` in package.json).
 * @param dist folder of the edition
 * @throws Error when it fails; what is wrong has been printed
 */
export function buildApart(language: Language, dist: string): Promise<void> {
  const child = spawn(
    process.execPath,
    [`--conditions=${language}`, join(ROOT, "scripts/build.ts"), "--edition", "--out", dist],
    { stdio: "inherit" },
  );
  return new Promise((done, fail) => {
    child.on("error", fail);
    child.on("close", (code) => {
      if (code === 0) done();
      else fail(new EditionFault(`The edition in ${language} was not built.`));
    });
  });
}

/** The edition's own process has said what is wrong. */
class EditionFault extends Error {
  override name = "SettingFault";
}
