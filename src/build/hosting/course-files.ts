/** The list of a built course's files, from which a browser keeps them all and notices when one has changed. */
import { createHash } from "node:crypto";
import { FRAMED_FOLDER } from "../../components/framed/framed-pages.ts";
import {
  COURSE_FILES,
  type CourseFile,
  type CourseList,
  EDITION,
  type Edition,
} from "../../components/keep/course-edition.ts";
import { TAKE_AWAY_FOLDER } from "../../components/take-away/take-away-path.ts";

/** Name of the worker that answers from the copy, beside the first page. */
export const SERVICE_WORKER = "sw.js";

/** What a reader without a network has no use for: word to hosts and search engines, pages for frames of other sites, copies to take away. */
const NOT_KEPT = [/^_/, /^sitemap-/, new RegExp(`^(?:${FRAMED_FOLDER}|${TAKE_AWAY_FOLDER})/`)];
/** What tells of the list cannot be on it. */
const ABOUT_IT = [SERVICE_WORKER, EDITION, COURSE_FILES];

/** Built files lie in a folder that begins like the files that are word to hosts. */
const BUILT = /^_astro\//;

export function isKept(file: string): boolean {
  return BUILT.test(file) || (!ABOUT_IT.includes(file) && !NOT_KEPT.some((one) => one.test(file)));
}

/** "practicals/x/index.html" is asked for as "practicals/x/". */
const askedFor = (file: string): string => file.replace(/(^|\/)index\.html$/, "$1");

/** One line of the list. @param file below the site's folder, with forward slashes */
export const courseFile = (file: string, content: Uint8Array): CourseFile => ({
  path: askedFor(file),
  hash: `sha256-${createHash("sha256").update(content).digest("base64")}`,
  bytes: content.byteLength,
});

/** The whole list, with a version that is another as soon as any file is. */
export function courseList(files: readonly CourseFile[]): CourseList {
  const list = files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  const digest = createHash("sha256");
  for (const { path, hash } of list) digest.update(`${path} ${hash}\n`);
  return {
    version: digest.digest("hex").slice(0, 16),
    files: list.length,
    bytes: list.reduce((sum, { bytes }) => sum + bytes, 0),
    list,
  };
}

export const editionOf = ({ version, files, bytes }: CourseList): Edition => ({ version, files, bytes });
