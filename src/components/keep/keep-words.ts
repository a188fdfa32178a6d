/** What the page for keeping the course says of sizes, of how it stands, and of what went wrong. */
import type { Edition } from "./course-edition.ts";
import type { StoringFault } from "./store-course.ts";

const MEGABYTE = 1_000_000;

/** "6.2 MB"; of less than a tenth "less than 0.1 MB". */
export function megabytes(bytes: number): string {
  const figure = bytes / MEGABYTE;
  if (figure < 0.1) return "less than 0.1\u00a0MB";
  return `${figure < 100 ? figure.toFixed(1) : Math.round(figure)}\u00a0MB`;
}

/** The control that stores everything. */
export const keepWords = (newest: Edition, kept: boolean): string =>
  kept ? "Fetch the newer edition" : `Keep this course on this device: ${megabytes(newest.bytes)}`;

/** How it stands, in a sentence. @param newest absent while the course's host cannot be reached */
export function standingWords(kept: Edition | undefined, newest: Edition | undefined): string {
  if (!kept) return newest ? "The course is not kept on this device." : UNREACHABLE;
  const stands = `The course is kept on this device: ${kept.files} files, ${megabytes(kept.bytes)}.`;
  if (!newest) return `${stands} Its host cannot be reached now, so whether a newer edition is out is not known.`;
  if (newest.version === kept.version) return `${stands} It is the newest edition.`;
  return `${stands} A newer edition is out, ${megabytes(newest.bytes)} in all; only what has changed is fetched.`;
}

const UNREACHABLE =
  "The course's host cannot be reached now, so nothing can be fetched. Try again when this device has a network.";

/** Not enough room, said before anything is fetched; undefined where there is enough or the browser does not tell. */
export function roomWords(needed: number, free: number | undefined): string | undefined {
  if (free === undefined || free >= needed) return undefined;
  return `${roomNeeded(needed)} The browser has ${megabytes(free)} left for this site.`;
}

const roomNeeded = (bytes: number) =>
  `There is no room for the course: it takes ${megabytes(bytes)}. Remove something from this device, then try again; until then save single walkthroughs or print them.`;

export function faultWords(fault: StoringFault, needed: number): string {
  switch (fault) {
    case "unreachable":
      return "The network was lost before all was stored. What has been fetched stays: go on when the network is back.";
    case "changed":
      return "A file of the course was not the one its list names: perhaps a new edition is being put up just now. Try again in a few minutes.";
    case "no room":
      return roomNeeded(needed);
    case "refused":
      return "The browser refuses to store anything for this site, as in a private window. Allow it in the browser's settings, or use a window that is not private.";
    case "stopped":
      return "Stopped. What has been fetched stays on this device: go on whenever you like, or remove it.";
  }
}

export const NOT_HERE =
  "This browser keeps no courses here: it is too old, or this address does not begin with https. The course works as before while there is a network.";

export const NOT_FOR_GOOD =
  "The browser does not promise to keep it: when the device runs short of room it may remove the course, and you would have to fetch it again.";
