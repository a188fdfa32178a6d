/** Checks every practical of the site and every equation of its pages, and reports all faults of the run at once. */
import { checkPractical } from "./check-practical.ts";
import { checkAllEquations } from "./equations/check-equations.ts";
import { type ContentFault, ContentFaults } from "./faults.ts";
import { practicalPaths, readPage, readPracticalFile } from "./practical-files.ts";

/**
 * @param root folder of the project
 * @returns number of practicals checked
 * @throws ContentFaults when any practical or equation must not be published
 */
export function checkContent(root: string): number {
  const paths = practicalPaths(root);
  const practicals: ContentFault[] = paths.flatMap((path) => {
    const read = readPracticalFile(path, readPage(root, path));
    return "faults" in read ? read.faults : checkPractical(read);
  });
  const faults = [...practicals, ...checkAllEquations(root)];
  if (faults.length > 0) throw new ContentFaults(faults);
  return paths.length;
}
