/** A stretch of an instruction and what it is read as. */
import type { WrittenStep } from "../../constants/standard-tests.ts";

/** What has been read before in the same tube. */
export interface SoFar {
  /** The sample taken, cm3, where a volume was. */
  sampleCm3?: number;
  /** Something is in the tube. */
  taken: boolean;
  /** There is a liquid in it. */
  wet: boolean;
  /** A liquid stands ready in the tube for a sample that is still to come. */
  poured?: boolean;
  /** The reagent added last. */
  reagent?: string;
}

export interface ReadStretch {
  /** In the order in which they are done; `newLine`: the step begins a line of the record of its own. */
  steps: { step: WrittenStep; newLine?: true }[];
  /** The sample of which it takes a fresh portion: letters, none for "each sample". */
  takes?: { samples: string[]; solid: boolean };
  /** A liquid that the paper puts into the tube first; the sample it waits for is taken before it. */
  pours?: ReadStretch["steps"];
  /** Which of the two a filtration before it keeps, where that is said only here. */
  keeps?: "filtrate" | "residue";
  /** What was taken for granted, in half-sentences. */
  assumed: string[];
  /** What must be asked. */
  questions: string[];
}

/** Reads one sort of stretch; undefined for any other. */
export type Reader = (text: string, words: string, before: SoFar) => ReadStretch | undefined;

export const nothing = (): ReadStretch => ({ steps: [], assumed: [], questions: [] });
/** One step, and what is said of it. */
export const only = (step: WrittenStep, more: Partial<ReadStretch> = {}): ReadStretch => ({
  ...nothing(),
  steps: [{ step }],
  ...more,
});

/** A reader of one thing done, after the sample and the reagents of its clause. */
export function after(mixed: ReadStretch, done: ReadStretch): ReadStretch {
  return {
    ...done,
    ...(mixed.takes && { takes: mixed.takes }),
    steps: [...mixed.steps, ...done.steps],
    assumed: [...mixed.assumed, ...done.assumed],
    questions: [...mixed.questions, ...done.questions],
  };
}
