/** Writes into a built site what lets a browser keep it: the worker, the list of files, and the line that names the edition. */
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join, sep } from "node:path";
import { courseFile, courseList, editionOf, isKept, SERVICE_WORKER } from "../src/build/hosting/course-files.ts";
import { COURSE_FILES, type CourseFile, EDITION, type Edition } from "../src/components/keep/course-edition.ts";
import { bundled } from "./bundle.ts";

/** To be called when every other file is as it will be published. */
export async function writeKeeping(dist: string): Promise<Edition> {
  const list = courseList(await keptFiles(dist));
  await writeFile(join(dist, COURSE_FILES), JSON.stringify(list));
  await writeFile(join(dist, EDITION), JSON.stringify(editionOf(list)));
  await writeFile(join(dist, SERVICE_WORKER), await bundled("src/components/keep/service-worker.ts"));
  return editionOf(list);
}

async function keptFiles(dist: string): Promise<CourseFile[]> {
  const entries = await readdir(dist, { recursive: true, withFileTypes: true });
  const kept: CourseFile[] = [];
  for (const entry of entries) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    const file = path
      .slice(dist.length + 1)
      .split(sep)
      .join("/");
    if (isKept(file)) kept.push(courseFile(file, await readFile(path)));
  }
  return kept;
}
