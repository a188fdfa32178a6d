/** The practicals on disk: each MDX file with its frontmatter read as a Practical, or the faults that keep it from being one. */

import { type ContentFault, ContentFaults } from "../authoring/faults.ts";
import { type Frontmatter, readFrontmatter } from "../authoring/frontmatter.ts";
import { readPractical } from "../engine/practical/faults.ts";
import type { Practical } from "../engine/practical.ts";
import { department } from "./department/department.ts";
import { atHouseStrengths, strengthsAtWork, withHouseIons } from "./department/strengths.ts";

export { practicalPaths, readPage } from "./practical-paths.ts";

export interface PracticalFile {
  source: Frontmatter;
  /** At the strengths of the school's bottles. */
  practical: Practical;
  /** Bottles of the school at work in it that are other than the usual ones, in words. */
  atHouse: string[];
  /** At the usual strengths. */
  asWritten: Practical;
}

/** Reads one page. Faults are collected, not thrown. */
export function readPracticalFile(file: string, text: string): PracticalFile | { faults: ContentFault[] } {
  let source: Frontmatter;
  try {
    source = readFrontmatter(file, text);
  } catch (error) {
    if (error instanceof ContentFaults) return { faults: [...error.faults] };
    throw error;
  }
  const house = department();
  const read = readPractical(withHouseIons(source.data, house));
  if ("practical" in read) {
    const asWritten = read.practical;
    const practical = { ...asWritten, parts: atHouseStrengths(asWritten.parts, house) };
    return { source, practical, asWritten, atHouse: strengthsAtWork(asWritten, house) };
  }
  return {
    faults: read.faults.map(({ path, message }) => ({
      ...source.placeOf(path),
      what: path.length > 0 ? path.join(" > ") : "the practical",
      found: message.replace(/^found /, ""),
      advice: "correct this entry; the guide for course authors is DEVELOPERS.md",
    })),
  };
}
