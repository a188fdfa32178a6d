/** The reasoning behind a conclusion, which a page loads when its reader first turns to the record. */
import { type Later, useLater } from "../later.ts";

type Reasoning = typeof import("./Conclusion.tsx");

export interface Loading extends Pick<Later<Reasoning>, "failed" | "load"> {
  /** Absent until it has come. */
  reasoning: Reasoning | undefined;
}

export function useConclusion(): Loading {
  const { module, failed, load } = useLater<Reasoning>(() => import("./Conclusion.tsx"));
  return { reasoning: module, failed, load };
}
