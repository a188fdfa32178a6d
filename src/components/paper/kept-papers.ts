/**
 * Papers kept in this browser, each as it is written, under a number of its own. Shape: { papers: { "3": written }, open: "3" }. The browser
 * may refuse to keep anything (a private window, a full store); then the page works on, and says so.
 */
import * as say from "#words/paper.ts";

const KEY = "ionwright papers";

export interface KeptPapers {
  /** By number; the paper as written. */
  papers: Record<string, unknown>;
  /** The one that is open. */
  open: string;
}

export const NOTHING_KEPT: KeptPapers = { papers: {}, open: "" };

const isGroup = (input: unknown): input is Record<string, unknown> =>
  typeof input === "object" && input !== null && !Array.isArray(input);

/** What is kept; `refused` where the browser does not let the page look, or what it holds cannot be read. */
export function loadKept(): Kept {
  let text: string | null;
  try {
    text = localStorage.getItem(KEY);
  } catch {
    return { ...NOTHING_KEPT, refused: say.KEEPS_NOTHING };
  }
  if (text === null) return NOTHING_KEPT;
  try {
    const kept: unknown = JSON.parse(text);
    if (isGroup(kept) && isGroup(kept.papers)) {
      const papers = Object.fromEntries(Object.entries(kept.papers).filter(([id]) => /^\d{1,9}$/.test(id)));
      return { papers, open: typeof kept.open === "string" ? kept.open : "" };
    }
  } catch {
    // Told below: either way it cannot be read.
  }
  try {
    // Put aside, for the next paper that is kept takes its place.
    localStorage.setItem(`${KEY}, could not be read`, text);
  } catch {
    // No room: there is nothing more to be done.
  }
  return { ...NOTHING_KEPT, refused: say.KEPT_UNREADABLE };
}

/** What a change of the list came to. */
export interface Kept extends KeptPapers {
  /** Why nothing was kept, as a sentence. */
  refused?: string;
}

/**
 * Changes the list as it stands in the browser at this moment, not as this tab last saw it: another tab may have kept papers since.
 * @param seen the list as this tab knows it, for a browser that keeps nothing
 */
export function changeKept(seen: KeptPapers, change: (now: KeptPapers) => KeptPapers): Kept {
  const { refused, ...found } = loadKept();
  const next = change(refused === say.KEEPS_NOTHING ? seen : found);
  try {
    localStorage.setItem(KEY, JSON.stringify(next));
    return next;
  } catch {
    return { ...next, refused: say.KEEPS_NOTHING };
  }
}

/** Calls back with the list when another tab has changed it; returns what ends that. */
export function onKeptElsewhere(hear: (kept: KeptPapers) => void): () => void {
  const listen = ({ key }: StorageEvent) => {
    if (key === KEY || key === null) hear(loadKept());
  };
  addEventListener("storage", listen);
  return () => removeEventListener("storage", listen);
}

/** The number of a kept paper that is just this one, as written; undefined where there is none. */
export function sameAs(papers: Record<string, unknown>, paper: unknown): string | undefined {
  const text = JSON.stringify(paper);
  return Object.keys(papers).find((id) => JSON.stringify(papers[id]) === text);
}

/** A number no paper has yet. */
export const freeNumber = (papers: Record<string, unknown>): string =>
  String(Math.max(0, ...Object.keys(papers).map(Number)) + 1);

/** What a paper is called in the list. */
export function nameOf(written: unknown): string {
  const title = isGroup(written) ? written.title : undefined;
  return typeof title === "string" && title.trim() !== "" ? title.slice(0, 80) : say.NO_TITLE;
}
