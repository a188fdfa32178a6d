/** The paper that is being entered: kept in the browser as it is typed, with a way back from every change. */
import { useEffect, useRef, useState } from "preact/hooks";
import { type Draft, emptyDraft, written } from "./draft.ts";
import { draftOf } from "./draft-of.ts";
import { freeNumber, type KeptPapers, keep, loadKept } from "./kept-papers.ts";

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

const EMPTY = JSON.stringify(written(emptyDraft()));
const isEmpty = (paper: unknown) => JSON.stringify(paper) === EMPTY;

export function useDraft(): OpenPaper {
  const [{ draft, past }, set] = useState<{ draft: Draft; past: Draft[] }>({ draft: emptyDraft(), past: [] });
  const [kept, setKept] = useState<KeptPapers>({ papers: {}, open: "" });
  const [refused, refuse] = useState<string>();
  const wanted = useRef<string>();
  const newest = useRef({ draft, kept });
  newest.current = { draft, kept };

  const store = (next: KeptPapers) => {
    newest.current = { ...newest.current, kept: next };
    setKept(next);
    refuse(keep(next));
  };

  useEffect(() => {
    const { refused: why, ...found } = loadKept();
    refuse(why);
    setKept(found);
    if (found.open in found.papers) set({ draft: draftOf(found.papers[found.open]).draft, past: [] });
  }, []);

  /** The list with the open paper as it stands now; an empty one is not put into it. */
  const withOpen = (): KeptPapers => {
    const { draft: now, kept: all } = newest.current;
    const paper = written(now);
    if (all.open === "" && isEmpty(paper)) return all;
    const id = all.open || freeNumber(all.papers);
    return { papers: { ...all.papers, [id]: paper }, open: id };
  };

  // Typing is not held up by writing, and a page that is left keeps what was typed last.
  useEffect(() => {
    if (past.length === 0) return;
    const save = () => store(withOpen());
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

  const show = (next: Draft) => set({ draft: next, past: [] });

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
        store(withOpen());
      }
    },
    open: (next) => {
      const { papers } = withOpen();
      const id = freeNumber(papers);
      store(isEmpty(written(next)) ? { papers, open: "" } : { papers: { ...papers, [id]: written(next) }, open: id });
      show(next);
    },
    choose: (id) => {
      const all = withOpen();
      store({ ...all, open: id });
      show(draftOf(all.papers[id]).draft);
    },
    remove: (id) => {
      const { [id]: _, ...papers } = newest.current.kept.papers;
      const open = newest.current.kept.open === id ? "" : newest.current.kept.open;
      store({ papers, open });
      if (open === "") show(emptyDraft());
    },
  };
}
