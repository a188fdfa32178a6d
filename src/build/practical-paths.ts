/** Where practicals lie on disk. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

/** The practicals that come with the course. */
export const SHIPPED = "src/content/practicals";

/** Pages of the course in another language than English: each stands in for that of the same name. */
export const translatedFolder = (language: string, folder = "practicals"): string =>
  `src/content/${language}/${folder}`;

/** Paths of all pages below a folder, in a stable order, relative to `root`, with forward slashes; none where there is no such folder. */
export function practicalPaths(root: string, folder = SHIPPED): string[] {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".mdx"))
    .sort()
    .map((name) => relative(root, join(root, folder, name)).replaceAll("\\", "/"));
}

/** The name a practical has in its address: its path below the folder of practicals. */
export const practicalName = (path: string): string => path.replace(/^.*?\/practicals\//, "").replace(/\.mdx$/, "");

/** The text of a page. */
export const readPage = (root: string, path: string): string => readFileSync(join(root, path), "utf8");
