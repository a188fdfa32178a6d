/** One file of a practical: held against the engine, once for all runs. */

import type { ContentFault } from "../authoring/faults.ts";
import { houseFaults } from "./department/house-faults.ts";
import { workOutPages } from "./kept-pages.ts";
import { type PracticalFile, readPracticalFile } from "./practical-files.ts";

/** @param pages whether to work out what the pages of a practical without faults will ask for */
export function checkFile(path: string, text: string, pages: boolean): ContentFault[] {
  const read: PracticalFile | { faults: ContentFault[] } = readPracticalFile(path, text);
  if ("faults" in read) return read.faults;
  const faults = houseFaults(read);
  if (pages && faults.length === 0) workOutPages(read.practical);
  return faults;
}
