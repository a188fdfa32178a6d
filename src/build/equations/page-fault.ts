/** A fault at a character of a page, made into one at a line and column. */
import type { ContentFault } from "../../authoring/faults.ts";

/** What is wrong, `offset` characters into the page, counted from 0. */
export type PageFault = Pick<ContentFault, "what" | "stated" | "found" | "advice"> & { offset: number };

/** Faults of one page with their places in it. */
export const faultMaker =
  (file: string, page: string) =>
  ({ offset, ...rest }: PageFault): ContentFault => {
    const before = page.slice(0, offset).split("\n");
    const line = before.length;
    const excerpt = page.split("\n")[line - 1].replace(/\r$/, "");
    return { file, line, column: before[line - 1].length + 1, ...rest, excerpt };
  };
