/**
 * A conclusion held back: the walkthrough was opened by a link with `conclusion=asked`, so that a class first concludes by itself. A script of a
 * line at the head of the page marks it before anything is painted, the style sheet hides what tells the answer, and a button shows it.
 * Without JavaScript the whole walkthrough is shown.
 */
import { useEffect, useState } from "preact/hooks";
import { onlyUnderstood, quote } from "#words/record.ts";

/** The entry in a link, and the one thing it can say. */
export const CONCLUSION = "conclusion";
export const ASKED = "asked";

/** Runs at the head of the page. A link that means to hide the conclusion and is spoilt hides it all the same. */
export const MARK_HELD = `if(/[?&]${CONCLUSION}(=|&|$)/.test(location.search))document.documentElement.dataset.${CONCLUSION}="${ASKED}"`;

const QUOTED = 40;

/** What is wrong with such an entry, in a sentence. */
export function heldFault(search: string): string | undefined {
  const found = new URLSearchParams(search.slice(0, 20_000)).get(CONCLUSION);
  if (found === null || found === ASKED) return undefined;
  const shown = found.length > QUOTED ? `${found.slice(0, QUOTED)}…` : found;
  return onlyUnderstood(CONCLUSION, quote(shown), ASKED);
}

export interface HeldBack {
  isHeld: boolean;
  fault: string | undefined;
  show(): void;
}

export function useHeldBack(): HeldBack {
  const [{ isHeld, fault }, set] = useState<{ isHeld: boolean; fault?: string }>({ isHeld: false });
  useEffect(() => {
    const mark = document.documentElement.dataset[CONCLUSION] === ASKED;
    const wrong = heldFault(location.search);
    if (mark || wrong) set({ isHeld: mark, fault: wrong });
  }, []);
  const show = () => {
    delete document.documentElement.dataset[CONCLUSION];
    set({ isHeld: false, fault });
  };
  return { isHeld, fault, show };
}
