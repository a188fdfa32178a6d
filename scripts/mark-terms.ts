/** Marks the terms of the glossary on the built pages of practicals, ions and tests. Its own pages name theirs themselves. */
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { parse } from "yaml";
import { term } from "../src/build/pages/schemas.ts";
import { markTerms } from "../src/build/terms/mark-terms.ts";

const GLOSSARY = "src/content/glossary.yaml";
const PAGES = /^(?:practicals|ions|ion-tests)[\\/][^\\/]+[\\/]index\.html$/;

/**
 * @param dist folder of the built site
 * @param base path it is served under
 * @param root folder of the course
 */
export async function writeTerms(dist: string, base: string, root: string): Promise<void> {
  const terms = term.array().parse(parse(await readFile(join(root, GLOSSARY), "utf8")));
  for (const file of (await readdir(dist, { recursive: true })).filter((one) => PAGES.test(one))) {
    const path = join(dist, file);
    await writeFile(path, markTerms(await readFile(path, "utf8"), terms, `${base}method/glossary/`));
  }
}
