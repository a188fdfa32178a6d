/**
 * What the worker answers, and a look at it by the page. By hand: the worker is this site's own, and a schema would cost every reader 9 kB for
 * what a few lines tell.
 */
import type { PracticalFault } from "../../engine/practical/faults.ts";
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import type { Further, Order, PaperWork } from "./paper-work.types.ts";

export interface Answer {
  /** The number of the question. */
  id: number;
  /** How far the work has come. */
  progress?: { done: number; of: number };
  faults?: PracticalFault[];
  work?: PaperWork;
  refused?: string;
  sentences?: ReadInstruction;
  further?: NonNullable<Further>;
  order?: Order;
  /** Nothing more comes to this question. */
  done?: true;
}

const isGroup = (input: unknown): input is Record<string, unknown> => typeof input === "object" && input !== null;
const isCount = (input: unknown): boolean => Number.isInteger(input) && (input as number) >= 0;
const isFault = (input: unknown): boolean =>
  isGroup(input) && Array.isArray(input.path) && typeof input.message === "string";

const ENTRIES: { [Key in keyof Required<Answer>]: (input: unknown) => boolean } = {
  id: isCount,
  progress: (input) => isGroup(input) && isCount(input.done) && isCount(input.of),
  faults: (input) => Array.isArray(input) && input.every(isFault),
  work: (input) =>
    isGroup(input) && isGroup(input.table) && isGroup(input.plan) && Array.isArray(input.lines) && isGroup(input.seen),
  refused: (input) => typeof input === "string",
  sentences: (input) => isGroup(input) && Array.isArray(input.parts) && Array.isArray(input.faults),
  further: (input) => isGroup(input) && Array.isArray(input.cells) && Array.isArray(input.tests),
  order: (input) => isGroup(input) && Array.isArray(input.work) && Array.isArray(input.letters) && isGroup(input.words),
  done: (input) => input === true,
};

/** The answer, when it is one; undefined for anything else. */
export function readAnswer(input: unknown): Answer | undefined {
  if (!isGroup(input) || !isCount(input.id)) return undefined;
  const good = Object.entries(input).every(
    ([key, value]) => value === undefined || (Object.hasOwn(ENTRIES, key) && ENTRIES[key as keyof Answer](value)),
  );
  return good ? (input as unknown as Answer) : undefined;
}
