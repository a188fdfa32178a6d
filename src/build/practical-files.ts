/** The practicals on disk: each MDX file with its frontmatter read as a Practical, or the faults that keep it from being one. */
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { readPractical } from "../engine/practical/faults.ts";
import type { Practical } from "../engine/practical.ts";
import { type ContentFault, ContentFaults } from "./faults.ts";
import { type Frontmatter, readFrontmatter } from "./frontmatter.ts";

export interface PracticalFile {
  source: Frontmatter;
  practical: Practical;
}

/** Reads one page. Faults are collected, not thrown. */
export function readPracticalFile(file: string, text: string): PracticalFile | { faults: ContentFault[] } {
  let source: Frontmatter;
  try {
    source = readFrontmatter(file, text);
  } catch (error) {
    if (error instanceof ContentFaults) return { faults: [...error.faults] };
    throw error;
  }
  const read = readPractical(source.data);
  if ("practical" in read) return { source, practical: read.practical };
  return {
    faults: read.faults.map(({ path, message }) => ({
      ...source.placeOf(path),
      what: path.length > 0 ? path.join(" > ") : "the practical",
      found: message.replace(/^found /, ""),
      advice: "correct this entry; the guide for course authors is DEVELOPERS.md",
    })),
  };
}

/** Paths of all practicals below a folder, in a stable order, relative to `root`. */
export function practicalPaths(root: string, folder = "src/content/practicals"): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".mdx"))
    .sort()
    .map((name) => relative(root, join(root, folder, name)));
}

/** The text of a page. */
export const readPage = (root: string, path: string): string => readFileSync(join(root, path), "utf8");
