/** How a check reports: a place in the practical, and what is wrong there. */
import type { ContentFault } from "../../authoring/faults.ts";
import type { Frontmatter } from "../../authoring/frontmatter.ts";

export type MakeFault = (
  path: (string | number)[],
  rest: Omit<ContentFault, "file" | "line" | "column" | "excerpt">,
) => ContentFault;

/** Faults with their place in a source file. */
export const faultsIn =
  (source: Frontmatter): MakeFault =>
  (path, rest) => ({ ...source.placeOf(path), ...rest });
