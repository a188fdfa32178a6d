/** Stores an edition of the course in the browser, file by file, and says how far it is. */
import {
  COURSE_FILES,
  type CourseFile,
  type CourseList,
  EDITION,
  type Edition,
  isCourseList,
  isEdition,
} from "./course-edition.ts";
import { cacheName, keptCopy, markWhole, removeCaches } from "./kept-shelf.ts";

/** Why something was not stored. */
export type StoringFault = "unreachable" | "changed" | "no room" | "refused" | "stopped";

export class NotStored extends Error {
  override name = "NotStored";
  readonly fault: StoringFault;
  constructor(fault: StoringFault, cause?: unknown) {
    super(fault, { cause });
    this.fault = fault;
  }
}

export interface Storing {
  /** The course's whole address, ending in a slash. */
  base: string;
  /** Stops it; what is stored by then stays for the next try. */
  signal: AbortSignal;
  onStored(files: number): void;
}

/** So many files are asked for at a time: a browser opens some six connections to a host. */
const AT_ONCE = 6;

/** The network itself is asked, past the copy that is kept and the browser's own cache. */
const FRESH = { cache: "no-store" } as const;

async function fetchJson(address: string): Promise<unknown> {
  const answer = await fetch(address, FRESH).catch((error: unknown) => {
    throw new NotStored("unreachable", error);
  });
  if (!answer.ok) throw new NotStored("unreachable", `${address}: ${answer.status}`);
  return answer.json().catch((error: unknown) => {
    throw new NotStored("changed", error);
  });
}

/** What the course's host has now. @throws NotStored */
export async function fetchEdition(base: string): Promise<Edition> {
  const found = await fetchJson(base + EDITION);
  if (!isEdition(found)) throw new NotStored("changed");
  return found;
}

async function fetchList(base: string): Promise<CourseList> {
  const found = await fetchJson(base + COURSE_FILES);
  if (!isCourseList(found)) throw new NotStored("changed");
  return found;
}

/** The list of the copy that is kept, by path: what has not changed since is taken from there. */
async function keptFiles(base: string): Promise<{ cache: Cache; hashes: Map<string, string> } | undefined> {
  const copy = await keptCopy(base);
  const found: unknown = await (await copy?.cache.match(base + COURSE_FILES))?.json();
  if (!copy || !isCourseList(found)) return undefined;
  return { cache: copy.cache, hashes: new Map(found.list.map(({ path, hash }) => [path, hash])) };
}

/**
 * Stores all files of the newest edition and removes older copies. The service worker answers from it from then on.
 * @throws NotStored
 */
export async function storeCourse({ base, signal, onStored }: Storing): Promise<Edition> {
  const list = await fetchList(base);
  const name = cacheName(base, list.version);
  try {
    const [cache, old] = [await caches.open(name), await keptFiles(base)];
    let stored = 0;
    await eachFew(list.list, signal, async (file, stopped) => {
      await storeFile(file, base, cache, old, stopped);
      stored += 1;
      onStored(stored);
    });
    await cache.put(base + COURSE_FILES, Response.json(list));
    await markWhole(cache, base, list);
  } catch (error) {
    const fault = faultOf(error, signal);
    // Where there is no room, half a course only takes up what others need.
    if (fault.fault === "no room") await caches.delete(name);
    throw fault;
  }
  await removeCaches(base, name);
  return { version: list.version, files: list.files, bytes: list.bytes };
}

/** Does something with each, a few at a time; after the first failure nothing more is begun, and what is under way is stopped and waited for. */
async function eachFew<T>(
  all: readonly T[],
  signal: AbortSignal,
  act: (one: T, stopped: AbortSignal) => Promise<void>,
) {
  const failing = new AbortController();
  const stopped = AbortSignal.any([signal, failing.signal]);
  let first: { error: unknown } | undefined;
  const waiting = all.values();
  const takeNext = async (): Promise<void> => {
    for (const one of waiting) {
      if (stopped.aborted) throw new NotStored("stopped");
      await act(one, stopped);
    }
  };
  const hands = Array.from({ length: AT_ONCE }, () =>
    takeNext().catch((error: unknown) => {
      first ??= { error };
      failing.abort();
    }),
  );
  await Promise.all(hands);
  if (first) throw first.error;
}

async function storeFile(
  { path, hash }: CourseFile,
  base: string,
  cache: Cache,
  old: Awaited<ReturnType<typeof keptFiles>>,
  signal: AbortSignal,
): Promise<void> {
  const address = base + path;
  if (await cache.match(address)) return;
  const same = old?.hashes.get(path) === hash ? await old.cache.match(address) : undefined;
  await cache.put(address, same ?? (await fetchFile(address, hash, signal)));
}

/** The browser itself refuses a file that is not the one of the list. */
async function fetchFile(address: string, integrity: string, signal: AbortSignal): Promise<Response> {
  const answer = await fetch(address, { ...FRESH, signal, integrity }).catch(async (error: unknown) => {
    if (signal.aborted) throw new NotStored("stopped");
    // A wrong file and no network look the same: asked once more without the hash, only the first of them answers.
    const reached = await fetch(address, { ...FRESH, signal }).then(
      ({ ok }) => ok,
      () => false,
    );
    throw new NotStored(reached ? "changed" : "unreachable", error);
  });
  if (!answer.ok) throw new NotStored("changed", `${address}: ${answer.status}`);
  return answer;
}

function faultOf(error: unknown, signal: AbortSignal): NotStored {
  if (error instanceof NotStored) return error;
  if (signal.aborted) return new NotStored("stopped", error);
  const name = error instanceof DOMException ? error.name : "";
  return new NotStored(name === "QuotaExceededError" ? "no room" : "refused", error);
}
