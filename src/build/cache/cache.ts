/**
 * Results of earlier runs, so that after one edit one practical is worked out anew. A result is known again by its whole input and by the
 * program (see `version.ts`), and is exactly what would be computed: numbers to the last bit, maps, what is undefined. Tests hold both
 * against each other.
 */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { fileFor, readResult, writeResult } from "./files.ts";
import { prune } from "./prune.ts";
import { programVersion } from "./version.ts";

/** The environment names the project whose cache is used. Without it, as in tests, everything is computed and nothing is kept. */
const VARIABLE = "IONWRIGHT_CACHE_OF";

export interface Cache {
  /** A result of this name made from this input; made now when there is none. */
  recall<T>(name: string, input: string, make: () => T): T;
  /** The same without making it. */
  read<T>(name: string, input: string): T | undefined;
  write(name: string, input: string, value: unknown): void;
}

/** Lets this process and its workers keep results in `<root>/.cache/predictions`, and removes what is old there. */
export function useCache(root: string): void {
  process.env[VARIABLE] = root;
  const folder = join(root, ".cache", "predictions");
  mkdirSync(folder, { recursive: true });
  prune(folder, programVersion(root));
}

const NOTHING_KEPT: Cache = { recall: (_name, _input, make) => make(), read: () => undefined, write: () => {} };

/** The cache of the project named in the environment, for the program as it stands now. */
export function openCache(root = process.env[VARIABLE]): Cache {
  return root === undefined ? NOTHING_KEPT : cacheIn(join(root, ".cache", "predictions", programVersion(root)));
}

/** A cache in a folder of its own. */
export function cacheIn(folder: string): Cache {
  const read = <T>(name: string, input: string) => readResult(fileFor(folder, name, input)) as { value: T } | undefined;
  const write = (name: string, input: string, value: unknown) => writeResult(fileFor(folder, name, input), value);
  return {
    read: <T>(name: string, input: string) => read<T>(name, input)?.value,
    write,
    recall: <T>(name: string, input: string, make: () => T) => {
      const before = read<T>(name, input);
      if (before) return before.value;
      const value = make();
      write(name, input, value);
      return value;
    },
  };
}
