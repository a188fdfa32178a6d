import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";

/** Root of the repository, absolute. */
export const ROOT = resolve(import.meta.dirname, "../..");

/** Source text by path from the root of the repository, with forward slashes: `src/engine/formula/parse.ts`. */
export type SourceFiles = ReadonlyMap<string, string>;

/** All files below `folder` whose names end as given. */
export function sourceFiles(folder: string, endings: readonly string[]): SourceFiles {
  const names = readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" });
  const paths = names.filter((name) => endings.some((ending) => name.endsWith(ending))).sort();
  return new Map(
    paths.map((name) => [`${folder}/${name.replaceAll("\\", "/")}`, readFileSync(join(ROOT, folder, name), "utf8")]),
  );
}
