/** Lines of practicals that were predicted and that their authors have not yet confirmed. */
import { coursePaths } from "../department/course.ts";
import { readPage } from "../practical-paths.ts";
import { MARK } from "./write-practical.ts";

const MARKED = new RegExp(` # ${MARK}$`);

/** A sentence for each practical that has such lines. */
export function unconfirmed(root: string): string[] {
  return coursePaths(root).flatMap((path) => {
    const lines = readPage(root, path)
      .split(/\r?\n/)
      .flatMap((line, index) => (MARKED.test(line) ? [index + 1] : []));
    if (lines.length === 0) return [];
    const count = lines.length === 1 ? "one line is" : `${lines.length} lines are`;
    return [`${path}:${lines[0]}: ${count} predicted and not yet confirmed (marked "# ${MARK}").`];
  });
}
