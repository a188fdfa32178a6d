/** What the worker makes of the paper: asked when the tests change and typing pauses, and when an observation has no words in the table yet. */

import { useEffect, useRef, useState } from "preact/hooks";
import * as say from "#words/paper.ts";
import type { PracticalFault } from "../../engine/practical/faults.ts";
import { type Draft, written } from "./draft.ts";
import type { CautionEntry, PaperWork } from "./paper-work.types.ts";
import { recordOf } from "./record-of.ts";

/** Pause in typing after which the paper is worked out, ms. */
const PAUSE = 400;

export interface WorkState {
  work: PaperWork | undefined;
  /** The work is that of the paper as it stands, the record aside. */
  fresh: boolean;
  faults: PracticalFault[];
  refused: string | undefined;
  progress: { done: number; of: number } | undefined;
  working: boolean;
}

const NOTHING: WorkState = {
  work: undefined,
  fresh: false,
  faults: [],
  refused: undefined,
  progress: undefined,
  working: false,
};

/** What the work hangs on: the paper without what was recorded. */
const signatureOf = (paper: Record<string, unknown>) =>
  JSON.stringify({ ...paper, record: undefined, title: undefined });

/** @param wanted false until something has been entered: then nothing is loaded */
export function useWork(draft: Draft, cautions: readonly CautionEntry[], wanted: boolean): WorkState {
  const [state, set] = useState(NOTHING);
  const done = useRef("");
  const paper = written(draft);
  const signature = signatureOf(paper);
  const fresh = done.current === signature && state.work !== undefined;
  const unknown = fresh && state.work !== undefined && recordOf(draft, state.work).unknown;
  /** An observation that has no place even now is one the schema refuses; it is not asked about again. */
  const asked = useRef("");
  const recorded = unknown ? JSON.stringify(paper.record) : "";

  useEffect(() => {
    if (!wanted) return;
    if (unknown && asked.current === recorded) return;
    asked.current = recorded;
    set((now) => ({ ...now, working: true, progress: undefined }));
    const clock = setTimeout(async () => {
      try {
        const { desk } = await import("./paper-desk.ts");
        desk.workOut(paper, cautions, ({ progress, faults, work, refused, done: end }) => {
          if (work) done.current = signature;
          set((now) => ({
            ...now,
            ...(progress && { progress }),
            ...(faults && { faults }),
            ...(work && { work, refused: undefined }),
            ...(faults && !work && !refused && { work: undefined, refused: undefined }),
            ...(refused && { refused }),
            ...(end && { working: false, progress: undefined }),
          }));
        });
      } catch {
        set((now) => ({ ...now, working: false, refused: say.NOT_LOADED }));
      }
    }, PAUSE);
    return () => clearTimeout(clock);
  }, [signature, recorded, wanted]);

  return { ...state, fresh };
}
