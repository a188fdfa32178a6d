/**
 * What a build says of its own files, so that a browser can keep them all and notice a newer edition: `edition.json`, a line that is asked
 * for often, and `course-files.json`, the whole list, which is asked for only to store something.
 */
import { type Guarded, listOf, shape, text, wholeNumber } from "../stored-shape.ts";

/** Names of the two, below the course's base path. */
export const EDITION = "edition.json";
export const COURSE_FILES = "course-files.json";

const MOST_FILES = 100_000;
const MOST_BYTES = 10_000_000_000;

const edition = {
  /** Another one as soon as any file is another. */
  version: text(64, /^[0-9a-f]{16,64}$/),
  files: wholeNumber(1, MOST_FILES),
  /** What all files take on the device. */
  bytes: wholeNumber(1, MOST_BYTES),
};

export const isEdition = shape(edition);
export type Edition = Guarded<typeof isEdition>;

const isCourseFile = shape({
  /** Below the base path; a page is named by its folder, "" for the first one. */
  path: text(500, /^(?!\/)[^?#\\:]*$/),
  /** As the attribute `integrity` takes it: "sha256-" and base 64 (Subresource Integrity, W3C, section 3.1). */
  hash: text(60, /^sha256-[A-Za-z0-9+/]{43}=$/),
  bytes: wholeNumber(0, MOST_BYTES),
});
export type CourseFile = Guarded<typeof isCourseFile>;

export const isCourseList = shape({ ...edition, list: listOf(isCourseFile, MOST_FILES) });
/** An edition with all its files. */
export type CourseList = Guarded<typeof isCourseList>;

export const sameEdition = (a: Edition | undefined, b: Edition | undefined): boolean => a?.version === b?.version;
