/** Keeping the whole course on the device. Sizes come as text. */

export const lessThan = (size: string) => `less than ${size}`;
export const FETCH_NEWER = "Fetch the newer edition";
export const keep = (size: string) => `Keep this course on this device: ${size}`;
/** How it stands. */
export const NOT_KEPT = "The course is not kept on this device.";
export const UNREACHABLE =
  "The course's host cannot be reached now, so nothing can be fetched. Try again when this device has a network.";
export const kept = (files: number, size: string) => `The course is kept on this device: ${files} files, ${size}.`;
export const NOT_KNOWN = "Its host cannot be reached now, so whether a newer edition is out is not known.";
export const NEWEST = "It is the newest edition.";
export const newer = (size: string) => `A newer edition is out, ${size} in all; only what has changed is fetched.`;
/** No room. */
export const left = (free: string) => `The browser has ${free} left for this site.`;
export const noRoom = (size: string) =>
  `There is no room for the course: it takes ${size}. Remove something from this device, then try again; until then save single walkthroughs or print them.`;
/** What went wrong. */
export const FAULTS = {
  unreachable:
    "The network was lost before all was stored. What has been fetched stays: go on when the network is back.",
  changed:
    "A file of the course was not the one its list names: perhaps a new edition is being put up just now. Try again in a few minutes.",
  refused:
    "The browser refuses to store anything for this site, as in a private window. Allow it in the browser's settings, or use a window that is not private.",
  stopped: "Stopped. What has been fetched stays on this device: go on whenever you like, or remove it.",
};
export const NOT_HERE =
  "This browser keeps no courses here: it is too old, or this address does not begin with https. The course works as before while there is a network.";
export const NOT_FOR_GOOD =
  "The browser does not promise to keep it: when the device runs short of room it may remove the course, and you would have to fetch it again.";
export const LOOKING = "Looking at what is kept on this device …";
export const FILES_STORED = "Files stored";
export const filesOf = (done: number, all: number) => `${done} of ${all} files`;
export const STOP = "Stop";
export const remove = (size: string) => `Remove it from this device: frees ${size}`;
export const REMOVE_FETCHED = "Remove what was fetched";
/** On a kept page when the course has changed: a sentence, the words of the link. */
export const KEPT_PAGE = "You are reading the edition kept on this device. A newer one is out:";
export const FETCH_IT = "fetch it";

/** The page around it. */
export const TITLE = "Keep this course on this device";
export const DESCRIPTION = "The whole course without a network: search, records and the engine included.";
export const ABOUT =
  "Kept on your phone or computer, the whole course works without a network: every walkthrough and its record, the curves, practising blind, a paper of your own, and the search. You are told its size first, and nothing is stored until you press the button.";
export const NEEDS_SCRIPT =
  "Keeping the course needs JavaScript, which is switched off. Without it you can print a walkthrough, or save its page in your browser.";
export const ONCE_KEPT = "Once it is kept";
export const WHEN_KEPT = [
  'Open it at the same address as before, or put it on the home screen: your browser\'s menu says "Install" or "Add to home screen".',
  "When the course has changed, a line at the head of its pages says so; the newer edition is fetched only when you ask for it on this page.",
  "What you write stays in this browser, as it does with a network. Nothing is sent anywhere.",
  "On a machine that others use, remove the course when you leave: what is kept in the browser stays for whoever comes next.",
];
export const NEWEST_FIRST = "Newest first";
export const DOES_NOT_CHANGE =
  "A kept course does not change by itself. Before you stand at a bench, look here once with a network: a caution may have been put right.";
