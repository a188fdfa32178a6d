/** A part of an island's code that a page loads only when its reader turns to it. */
import { useRef, useState } from "preact/hooks";

export interface Later<T> {
  /** Absent until it has come. */
  module: T | undefined;
  /** It could not be fetched. */
  failed: boolean;
  /** Fetches it, once: a browser does not ask again for a module that could not be fetched. */
  load(): Promise<T | undefined>;
}

/** @param fetch imports the module; the same on every call */
export function useLater<T>(fetch: () => Promise<T>): Later<T> {
  const [module, keep] = useState<T>();
  const [failed, fail] = useState(false);
  const coming = useRef<Promise<T | undefined>>();
  const load = () => {
    coming.current ??= fetch().then(
      (found) => {
        keep(() => found);
        fail(false);
        return found;
      },
      () => {
        fail(true);
        return undefined;
      },
    );
    return coming.current;
  };
  return { module, failed, load };
}
