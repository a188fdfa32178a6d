/** What the page for keeping the course says of sizes, of how it stands, and of what went wrong. */
import * as say from "#words/keep.ts";
import { figures, withFigures } from "../figures.ts";
import type { Edition } from "./course-edition.ts";
import type { StoringFault } from "./store-course.ts";

const MEGABYTE = 1_000_000;

/** "6.2 MB"; of less than a tenth "less than 0.1 MB". */
export function megabytes(bytes: number): string {
  const figure = bytes / MEGABYTE;
  if (figure < 0.1) return say.lessThan(`${figures(0.1)}\u00a0MB`);
  return `${figure < 100 ? withFigures(figure.toFixed(1)) : Math.round(figure)}\u00a0MB`;
}

/** The control that stores everything. */
export const keepWords = (newest: Edition, kept: boolean): string =>
  kept ? say.FETCH_NEWER : say.keep(megabytes(newest.bytes));

/** How it stands, in a sentence. @param newest absent while the course's host cannot be reached */
export function standingWords(kept: Edition | undefined, newest: Edition | undefined): string {
  if (!kept) return newest ? say.NOT_KEPT : say.UNREACHABLE;
  const stands = say.kept(kept.files, megabytes(kept.bytes));
  if (!newest) return `${stands} ${say.NOT_KNOWN}`;
  return `${stands} ${newest.version === kept.version ? say.NEWEST : say.newer(megabytes(newest.bytes))}`;
}

/** Not enough room, said before anything is fetched; undefined where there is enough or the browser does not tell. */
export function roomWords(needed: number, free: number | undefined): string | undefined {
  if (free === undefined || free >= needed) return undefined;
  return `${say.noRoom(megabytes(needed))} ${say.left(megabytes(free))}`;
}

export const faultWords = (fault: StoringFault, needed: number): string =>
  fault === "no room" ? say.noRoom(megabytes(needed)) : say.FAULTS[fault];
