/** Asks the engine's worker for curves, one question at a time. Loaded, and the worker with it, when a reader first changes something. */
import { REFUSED } from "#words/curves.ts";
import type { ChangedCurve, CurveChange, CurveSource } from "../../../engine/bench/changed-curve.ts";
import { answer, type CurveQuestion } from "./curve-message.ts";

/** Longest wait for one curve, ms. Measured: 20 to 160 ms, the worker loaded. */
export const TIME_LIMIT = 10_000;

/** What of a worker the desk needs. */
export type Drawer = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror" | "onmessageerror">;

export interface CurveDesk {
  /** The curve; why there is none, as half a sentence; or undefined when the same curve was asked for again before its turn came. */
  ask(curveId: string, source: CurveSource, change: CurveChange): Promise<ChangedCurve | undefined>;
}

interface Asked {
  curveId: string;
  question: CurveQuestion;
  settle(found: ChangedCurve | undefined): void;
}

/**
 * A desk with a worker behind it, started with the first question. A worker that fails or does not answer within the limit is ended, its
 * question is refused, and the next one gets a new worker.
 */
export function openDesk(start: () => Drawer, limit = TIME_LIMIT): CurveDesk {
  const waiting = new Map<string, Asked>();
  let drawer: Drawer | undefined;
  let busy: Asked | undefined;
  let clock: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;

  function next(): void {
    const first = waiting.values().next().value;
    if (busy || !first) return;
    waiting.delete(first.curveId);
    busy = first;
    clock = setTimeout(() => fail(REFUSED.tooLong), limit);
    try {
      drawer ??= started();
      drawer.postMessage(first.question);
    } catch {
      fail(REFUSED.notStarted);
    }
  }

  function finish(found: ChangedCurve): void {
    clearTimeout(clock);
    const done = busy;
    busy = undefined;
    done?.settle(found);
    next();
  }

  function fail(refused: string): void {
    drawer?.terminate();
    drawer = undefined;
    finish({ refused });
  }

  function started(): Drawer {
    const fresh = start();
    // One that has been ended has no more say.
    const onDuty = (say: () => void) => fresh === drawer && say();
    const unreadable = () => fail(REFUSED.unreadable);
    fresh.onmessage = ({ data }) =>
      onDuty(() => {
        const read = answer.safeParse(data);
        if (!read.success) unreadable();
        else if (read.data.id === busy?.question.id) finish(read.data.answer);
      });
    fresh.onerror = () => onDuty(() => fail(REFUSED.failed));
    fresh.onmessageerror = () => onDuty(unreadable);
    return fresh;
  }

  return {
    ask: (curveId, source, change) =>
      new Promise((settle) => {
        waiting.get(curveId)?.settle(undefined);
        waiting.set(curveId, { curveId, question: { id: asked++, source, change }, settle });
        next();
      }),
  };
}

/** The desk of this page. */
export const desk = openDesk(() => new Worker(new URL("./curve.worker.ts", import.meta.url), { type: "module" }));
