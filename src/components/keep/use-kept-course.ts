/** How keeping the course stands in this browser, and what a reader can do about it. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Edition } from "./course-edition.ts";
import { keptCopy, ownCaches, removeCaches } from "./kept-shelf.ts";
import { fetchEdition, NotStored, type StoringFault, storeCourse } from "./store-course.ts";

export interface Standing {
  at: "standing";
  kept: Edition | undefined;
  /** What the course's host has; absent while it cannot be reached. */
  newest: Edition | undefined;
  /** Bytes the browser would still store for this site; absent where it does not tell. */
  free: number | undefined;
  /** Files of a storing that was interrupted lie here. */
  partly: boolean;
  fault?: StoringFault;
}

export type KeepState =
  | { at: "looking" }
  | { at: "impossible" }
  | Standing
  | { at: "storing"; files: number; of: number };

export interface KeptCourse {
  state: KeepState;
  /** The browser promises not to remove it by itself; undefined where it has not been asked. */
  isPersistent: boolean | undefined;
  keep(): void;
  stop(): void;
  remove(): void;
}

/** A worker and its caches are given only to pages that came safely. */
const canKeep = (): boolean => "serviceWorker" in navigator && "caches" in globalThis;

async function look(base: string, fault?: StoringFault): Promise<KeepState> {
  try {
    const [copy, names, newest, room] = await Promise.all([
      keptCopy(base),
      ownCaches(base),
      fetchEdition(base).catch(() => undefined),
      navigator.storage?.estimate?.().catch(() => undefined),
    ]);
    const free = room?.quota === undefined ? undefined : room.quota - (room.usage ?? 0);
    return { at: "standing", kept: copy?.edition, newest, free, partly: !copy && names.length > 0, fault };
  } catch {
    return { at: "standing", kept: undefined, newest: undefined, free: undefined, partly: false, fault: "refused" };
  }
}

export function useKeptCourse(path: string): KeptCourse {
  const [state, set] = useState<KeepState>({ at: "looking" });
  const [isPersistent, promise] = useState<boolean>();
  const stopping = useRef(new AbortController());
  const base = () => new URL(path, location.href).href;
  const lookAgain = async (fault?: StoringFault) => set(await look(base(), fault));

  useEffect(() => {
    if (!canKeep()) return set({ at: "impossible" });
    lookAgain();
    navigator.storage?.persisted?.().then(promise, () => {});
  }, []);

  const store = async () => {
    const newest = state.at === "standing" ? state.newest : undefined;
    if (!newest) return;
    stopping.current = new AbortController();
    set({ at: "storing", files: 0, of: newest.files });
    try {
      await navigator.serviceWorker.register(`${base()}sw.js`, { scope: base() }).catch((error: unknown) => {
        throw new NotStored("refused", error);
      });
      promise(await navigator.storage?.persist?.().catch(() => undefined));
      await storeCourse({
        base: base(),
        signal: stopping.current.signal,
        onStored: (files) => set({ at: "storing", files, of: newest.files }),
      });
      await lookAgain();
    } catch (error) {
      await lookAgain(error instanceof NotStored ? error.fault : "refused");
    }
  };
  const remove = async () => {
    await removeCaches(base());
    const worker = await navigator.serviceWorker.getRegistration(base());
    // Another worker of this host, of a folder further up, is not ours to end.
    if (worker?.scope === base()) await worker.unregister();
    await lookAgain();
  };
  return { state, isPersistent, keep: store, stop: () => stopping.current.abort(), remove };
}
