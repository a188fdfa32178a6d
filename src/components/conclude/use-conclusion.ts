/** The reasoning behind a conclusion, which a page loads when its reader first turns to the record. */
import { useRef, useState } from "preact/hooks";

type Reasoning = typeof import("./Conclusion.tsx");

export interface Loading {
  /** Absent until it has come. */
  reasoning: Reasoning | undefined;
  /** It could not be fetched. */
  failed: boolean;
  /** Fetches it, once: a browser does not ask again for a module that could not be fetched. */
  load(): Promise<Reasoning | undefined>;
}

export function useConclusion(): Loading {
  const [reasoning, keep] = useState<Reasoning>();
  const [failed, fail] = useState(false);
  const coming = useRef<Promise<Reasoning | undefined>>();
  const load = () => {
    coming.current ??= import("./Conclusion.tsx").then(
      (module) => {
        keep(module);
        fail(false);
        return module;
      },
      () => {
        fail(true);
        return undefined;
      },
    );
    return coming.current;
  };
  return { reasoning, failed, load };
}
