/** The paper that is being entered: kept in the browser as it is typed, with a way back from every change. */

import { useEffect, useRef, useState } from "preact/hooks";
import * as say from "#words/paper.ts";
import { type Draft, emptyDraft, stored } from "./draft.ts";
import { draftOf } from "./draft-of.ts";
import {
  changeKept,
  freeNumber,
  type KeptPapers,
  loadKept,
  NOTHING_KEPT,
  onKeptElsewhere,
  sameAs,
} from "./kept-papers.ts";

/** What parts of the form do with the paper. */
export interface Editing {
  edit(next: Draft): void;
  /** Moves the focus to an element, by id, once it is drawn. */
  focus(id: string): void;
}

export interface OpenPaper extends Editing {
  draft: Draft;
  kept: KeptPapers;
  /** Why nothing is kept, as a sentence. */
  refused: string | undefined;
  /** Nothing has been entered yet. */
  untouched: boolean;
  canUndo: boolean;
  undo(): void;
  /** Opens a paper as one more of the list; the one that was open stays in it. */
  open(draft: Draft): void;
  choose(id: string): void;
  remove(id: string): void;
}

/** Changes that can be taken back. */
const MOST_BACK = 100;
/** Pause in typing after which the paper is kept, ms. */
const PAUSE = 300;

const EMPTY = JSON.stringify(stored(emptyDraft()));
const isEmpty = (paper: unknown) => JSON.stringify(paper) === EMPTY;

/** The paper in the form: the number it is kept under ("" for none yet), and what of it this tab last read or wrote, as text. */
interface Place {
  id: string;
  known: string;
}
const NOWHERE: Place = { id: "", known: "" };

/** @param tell hears what of a kept paper could not be read, and that another tab wrote to the same one */
export function useDraft(tell: (news: string) => void): OpenPaper {
  const [{ draft, past }, set] = useState<{ draft: Draft; past: Draft[] }>({ draft: emptyDraft(), past: [] });
  const [kept, setKept] = useState<KeptPapers>(NOTHING_KEPT);
  const [refused, refuse] = useState<string>();
  const wanted = useRef<string>();
  const place = useRef<Place>(NOWHERE);
  const newest = useRef({ draft, kept, changed: false });
  newest.current = { draft, kept, changed: past.length > 0 };

  const show = (next: Draft) => set({ draft: next, past: [] });

  /** Shows a paper of the list. */
  const read = (papers: KeptPapers["papers"], id: string) => {
    if (!(id in papers)) {
      place.current = NOWHERE;
      return show(emptyDraft());
    }
    const found = draftOf(papers[id]);
    place.current = { id, known: JSON.stringify(papers[id]) };
    show(found.draft);
    if (found.leftOut.length > 0) tell(found.leftOut.join(" "));
  };

  /** Puts the paper in the form into the list, and nothing else; one that another tab has changed since keeps its own place. */
  const withOpen = (now: KeptPapers): KeptPapers => {
    const paper = stored(newest.current.draft);
    const text = JSON.stringify(paper);
    const { id, known } = place.current;
    if ((id === "" && isEmpty(paper)) || text === known) return { ...now, open: id };
    const isElsewhere = id in now.papers && JSON.stringify(now.papers[id]) !== known;
    if (isElsewhere) tell(say.OTHER_TAB);
    const own = id === "" || isElsewhere ? freeNumber(now.papers) : id;
    place.current = { id: own, known: text };
    return { papers: { ...now.papers, [own]: paper }, open: own };
  };

  const store = (change: (now: KeptPapers) => KeptPapers): KeptPapers => {
    const { refused: why, ...next } = changeKept(newest.current.kept, change);
    newest.current = { ...newest.current, kept: next };
    setKept(next);
    refuse(why);
    return next;
  };

  useEffect(() => {
    const { refused: why, ...found } = loadKept();
    refuse(why);
    setKept(found);
    read(found.papers, found.open);
    return onKeptElsewhere(({ papers }) => {
      const { id, known } = place.current;
      setKept({ papers, open: id });
      if (!newest.current.changed && id in papers && JSON.stringify(papers[id]) !== known) read(papers, id);
    });
  }, []);

  // Typing is not held up by writing, and a page that is left keeps what was typed last.
  useEffect(() => {
    if (past.length === 0) return;
    const save = () => void store(withOpen);
    const clock = setTimeout(save, PAUSE);
    addEventListener("pagehide", save);
    return () => {
      clearTimeout(clock);
      removeEventListener("pagehide", save);
    };
  }, [draft]);

  useEffect(() => {
    const id = wanted.current;
    wanted.current = undefined;
    if (id) document.getElementById(id)?.focus();
  });

  return {
    draft,
    kept,
    refused,
    untouched: kept.open === "" && past.length === 0,
    canUndo: past.length > 0,
    edit: (next) => set({ draft: next, past: [...past.slice(-MOST_BACK), draft] }),
    focus: (id) => {
      wanted.current = id;
    },
    undo: () => {
      const last = past.at(-1);
      if (!last) return;
      // The step back is kept as well, also when it leads to the beginning.
      set({ draft: last, past: past.slice(0, -1) });
      if (past.length === 1) {
        newest.current = { ...newest.current, draft: last };
        store(withOpen);
      }
    },
    open: (next) => {
      const paper = stored(next);
      store((now) => {
        const { papers } = withOpen(now);
        if (isEmpty(paper)) {
          place.current = NOWHERE;
          return { papers, open: "" };
        }
        // The same link opened again is the same paper.
        const id = sameAs(papers, paper) ?? freeNumber(papers);
        place.current = { id, known: JSON.stringify(paper) };
        return { papers: { ...papers, [id]: paper }, open: id };
      });
      show(next);
    },
    choose: (id) => {
      const { papers } = store((now) => ({ ...withOpen(now), open: id }));
      read(papers, id);
    },
    remove: (id) => {
      const isOpen = place.current.id === id;
      store((now) => {
        const { [id]: _, ...papers } = now.papers;
        return { papers, open: isOpen ? "" : place.current.id };
      });
      if (isOpen) read({}, "");
    },
  };
}
