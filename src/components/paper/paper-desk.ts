/** Asks the worker. Loaded, and the worker with it, when a paper is first worked with. */
import * as say from "#words/paper-desk.ts";
import type { PracticalFault } from "../../engine/practical/faults.ts";
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import { type Answer, readAnswer } from "./paper-answer.ts";
import type { Question } from "./paper-question.ts";
import type { CautionEntry, Further, Order } from "./paper-work.types.ts";

/** Longest silence of the worker, ms. It speaks at least after every salt, which takes a slow phone about a second. */
export const TIME_LIMIT = 45_000;

/** What of a worker the desk needs. */
export type Clerk = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror" | "onmessageerror">;

type Listener = (said: Omit<Answer, "id">) => void;
type Asked = Question extends infer One ? (One extends Question ? Omit<One, "id"> : never) : never;

export interface PaperDesk {
  /** Works a paper out; what was asked before is not answered any more. */
  workOut(written: unknown, cautions: readonly CautionEntry[], hear: Listener): void;
  readSentences(pasted: string): Promise<ReadInstruction | { refused: string }>;
  check(written: unknown): Promise<PracticalFault[] | { refused: string }>;
  order(written: unknown): Promise<Order | { refused: string }>;
  lookFurther(
    written: unknown,
    left: Record<string, string[]>,
    cautions: readonly CautionEntry[],
  ): Promise<{ further: Further } | { refused: string }>;
}

/** A desk with a worker behind it, started with the first question. One that fails or falls silent is ended; the next question gets a new one. */
export function openDesk(start: () => Clerk, limit = TIME_LIMIT): PaperDesk {
  const waiting = new Map<number, Listener>();
  let clerk: Clerk | undefined;
  let clock: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;
  let working = -1;

  function fail(refused: string): void {
    clearTimeout(clock);
    clerk?.terminate();
    clerk = undefined;
    const all = [...waiting.values()];
    waiting.clear();
    for (const hear of all) hear({ refused, done: true });
  }

  function watch(): void {
    clearTimeout(clock);
    if (waiting.size > 0) clock = setTimeout(() => fail(say.TOO_LONG), limit);
  }

  function started(): Clerk {
    const fresh = start();
    // One that has been ended has no more say.
    const onDuty = (say: () => void) => fresh === clerk && say();
    fresh.onmessage = ({ data }) =>
      onDuty(() => {
        const read = readAnswer(data);
        if (!read) return fail(say.UNREADABLE);
        const { id, ...said } = read;
        const hear = waiting.get(id);
        if (said.done) waiting.delete(id);
        watch();
        hear?.(said);
      });
    fresh.onerror = () => onDuty(() => fail(say.FAILED));
    fresh.onmessageerror = () => onDuty(() => fail(say.UNREADABLE));
    return fresh;
  }

  function ask(question: Asked, hear: Listener): number {
    const id = asked++;
    waiting.set(id, hear);
    try {
      clerk ??= started();
      clerk.postMessage({ ...question, id } as Question);
      watch();
    } catch {
      fail(say.NOT_STARTED);
    }
    return id;
  }

  /** One answer, gathered until it is whole. */
  const once = (question: Asked) =>
    new Promise<Omit<Answer, "id">>((settle) => {
      let all: Omit<Answer, "id"> = {};
      ask(question, (said) => {
        all = { ...all, ...said };
        if (said.done) settle(all);
      });
    });

  return {
    workOut(written, cautions, hear) {
      waiting.delete(working);
      working = ask({ do: "work out", written, cautions: [...cautions] }, hear);
    },
    async readSentences(pasted) {
      const { sentences, refused = say.FAILED } = await once({ do: "read sentences", pasted });
      return sentences ?? { refused };
    },
    async check(written) {
      const { faults, refused = say.FAILED } = await once({ do: "check", written });
      return faults ?? { refused };
    },
    async order(written) {
      const { order, refused = say.FAILED } = await once({ do: "order", written });
      return order ?? { refused };
    },
    async lookFurther(written, left, cautions) {
      const { further, refused } = await once({ do: "look further", written, left, cautions: [...cautions] });
      return refused === undefined ? { further } : { refused };
    },
  };
}

/** The desk of this page. */
export const desk = openDesk(() => new Worker(new URL("./paper.worker.ts", import.meta.url), { type: "module" }));
