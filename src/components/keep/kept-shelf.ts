/**
 * The copy of the course a browser keeps: one cache for each edition, named by the course's address and the edition's version. A cache counts
 * as kept once it holds the marker, which is stored last; one without is what an interrupted storing left, and is gone on with.
 */
import { type Edition, isEdition } from "./course-edition.ts";

/** Stands in a cache for "all of it is here", and holds the edition. No file of a course can have this name. */
const MARKER = "?kept";
/** Holds the newest edition the course's host has told of. */
const NEWEST = "?newest";

const prefixOf = (base: string) => `ionwright ${base} `;

/** @param base the course's whole address, ending in a slash: two courses on one host keep apart */
export const cacheName = (base: string, version: string): string => prefixOf(base) + version;

async function readEdition(cache: Cache, address: string): Promise<Edition | undefined> {
  const answer = await cache.match(address);
  const found: unknown = await answer?.json().catch(() => undefined);
  return isEdition(found) ? found : undefined;
}

const asAnswer = (value: Edition): Response => Response.json(value);

/** Names of all caches of this course. */
export async function ownCaches(base: string): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(prefixOf(base)));
}

/** The copy that is whole, the newest where an interruption left two. */
export async function keptCopy(base: string): Promise<{ cache: Cache; edition: Edition } | undefined> {
  for (const name of (await ownCaches(base)).reverse()) {
    const cache = await caches.open(name);
    const edition = await readEdition(cache, base + MARKER);
    if (edition) return { cache, edition };
  }
  return undefined;
}

/** Says that a cache holds all of an edition. */
export const markWhole = (cache: Cache, base: string, { version, files, bytes }: Edition): Promise<void> =>
  cache.put(base + MARKER, asAnswer({ version, files, bytes }));

/** The newest edition that was told of, where it is another than the one kept. */
export async function newerThan({ cache, edition }: { cache: Cache; edition: Edition }, base: string) {
  const newest = await readEdition(cache, base + NEWEST);
  return newest && newest.version !== edition.version ? newest : undefined;
}

export const tellNewest = (cache: Cache, base: string, newest: Edition): Promise<void> =>
  cache.put(base + NEWEST, asAnswer(newest));

/** Removes every cache of this course but one. */
export async function removeCaches(base: string, but?: string): Promise<void> {
  const names = (await ownCaches(base)).filter((name) => name !== but);
  await Promise.all(names.map((name) => caches.delete(name)));
}
