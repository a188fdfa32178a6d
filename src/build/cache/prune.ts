/** Keeps the cache from growing for ever. */
import { readdirSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";

/** Versions of the program whose results are kept, newest first: a branch and the one it came from. */
const VERSIONS = 2;
/** Bytes in all; a thousand practicals have some tenth of it. */
const MOST_BYTES = 2_000_000_000;

/**
 * Removes the results of old versions, then the oldest results until the rest is small enough.
 * @param folder the cache, with a folder for each version
 * @param current the version in use, which is kept in any case
 */
export function prune(folder: string, current: string, most = MOST_BYTES): void {
  const versions = filesIn(folder).toSorted((a, b) => b.changed - a.changed);
  const kept = [current, ...versions.map(({ name }) => name).filter((name) => name !== current)].slice(0, VERSIONS);
  for (const { name, path } of versions) if (!kept.includes(name)) rmSync(path, { recursive: true, force: true });
  const results = kept
    .flatMap((version) => filesIn(join(folder, version)).flatMap(({ path }) => filesIn(path)))
    .toSorted((a, b) => b.changed - a.changed);
  let bytes = 0;
  for (const { path, size } of results) {
    bytes += size;
    if (bytes > most) rmSync(path, { force: true });
  }
}

/** What lies in a folder; nothing when there is none, or when another run has just removed it. */
function filesIn(folder: string): { name: string; path: string; size: number; changed: number }[] {
  try {
    return readdirSync(folder).flatMap((name) => {
      const path = join(folder, name);
      const found = statSync(path, { throwIfNoEntry: false });
      return found ? [{ name, path, size: found.size, changed: found.mtimeMs }] : [];
    });
  } catch {
    return [];
  }
}
