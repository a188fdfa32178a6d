/** The papers of the course without their answers, as their authors wrote them: what a paper of one's own can be started from. */

import { readFrontmatter } from "../../authoring/frontmatter.ts";
import { coursePaths } from "../../build/department/course.ts";
import { department, projectRoot } from "../../build/department/department.ts";
import { withHouseIons } from "../../build/department/strengths.ts";
import { practicalName, readPage } from "../../build/practical-paths.ts";

/** What is not on a paper: the answer, what was seen, and what the course says of the practical. */
function paperOf(data: unknown): unknown {
  const { title, minutes, samples, paper, parts } = data as Record<string, unknown>;
  return {
    title,
    minutes,
    samples: (samples as Record<string, unknown>[]).map(({ salt: _, ...given }) => given),
    paper,
    parts,
  };
}

export function GET(): Response {
  const root = projectRoot();
  const papers = coursePaths(root).map((path) => {
    const { data } = readFrontmatter(path, readPage(root, path));
    return [practicalName(path), paperOf(withHouseIons(data, department()))];
  });
  return Response.json(Object.fromEntries(papers));
}
