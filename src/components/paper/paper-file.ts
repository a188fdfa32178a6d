/**
 * A paper as the file of a practical: MDX with frontmatter in YAML, which builds in the site once its author has filled in what a paper does
 * not say. Read again by the same frontmatter reader that reads the course.
 */

import * as say from "#words/paper-files.ts";
import { ContentFaults } from "../../authoring/faults.ts";
import { readFrontmatter } from "../../authoring/frontmatter.ts";

/** Largest file that is read, in letters. */
export const LONGEST_FILE = 64_000;

export interface FileText {
  data: unknown;
  /** "Line 12, column 5" of an entry, or of the nearest around it that exists. */
  placeOf(path: readonly (string | number)[]): string;
}

/** The frontmatter of a file, or what is wrong with it, each fault with its line and column. */
export function readFile(name: string, text: string): FileText | { faults: string[] } {
  if (text.length > LONGEST_FILE) {
    return { faults: [say.tooLong(text.length, LONGEST_FILE)] };
  }
  try {
    const { data, placeOf } = readFrontmatter(name, text);
    const place = (path: readonly (string | number)[]) => {
      const { line, column } = placeOf(path);
      return say.line(line, column);
    };
    return { data, placeOf: place };
  } catch (error) {
    if (!(error instanceof ContentFaults)) throw error;
    return {
      faults: error.faults.map(({ line, column, what, found, advice }) =>
        say.fault(say.line(line, column), what, found, advice),
      ),
    };
  }
}
