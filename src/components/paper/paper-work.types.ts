/** All that the page shows of a paper, worked out by the worker: data and words, no code. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { BenchPlan } from "../../engine/planning/bench-plan.ts";
import type { PracticalFault } from "../../engine/practical/faults.ts";
import type { AskedOf } from "../../engine/wording/asked-of.ts";
import type { FurtherList } from "../conclude/further-list.ts";
import type { IonNames } from "../names.ts";
import type OrderOfWork from "../prepare/order/OrderOfWork.tsx";
import type { DrawnRack } from "../prepare/rack.ts";
import type { ImpossiblePairs } from "../read/impossible-pairs.ts";
import type { Sight } from "../read/purpose-words.ts";

/** What the order of work is drawn from. */
export type Order = Parameters<typeof OrderOfWork>[0];

/** A caution as the page carries it. */
export interface CautionEntry {
  id: string;
  data: { title: string; summary: string; covers: string[]; kind: string };
}

export interface WorkedTest {
  id: string;
  says?: string;
  /** Instructions, in order. */
  steps: string[];
  /** What may mislead here. Empty until it has been looked for. */
  warnings: string[];
}

export interface WorkedPart {
  label: string;
  title: string;
  /** Letters, where it is not done on all samples. */
  only: string[];
  /** Why the teacher is asked before it is begun. */
  askFirst: string[];
  cautions: { title: string; says: string; href: string }[];
  tests: WorkedTest[];
}

export interface Purposes {
  id: string;
  test: string;
  tells: string;
  /** It tells ions of one kind apart, so that its sights are few. */
  byIon: boolean;
  sights: Sight[];
  gases: string[];
}

export interface PaperWork {
  table: PredictionTable;
  /** What is done at each cell, in words, in the order of the table. */
  tests: string[];
  /** What each cell makes one look for. */
  asked: AskedOf[];
  /** Place of each cell in the draft. */
  lines: [part: number, test: number][];
  names: IonNames;
  given: string[];
  says: string[];
  pairs: ImpossiblePairs[];
  purposes: Purposes[];
  plan: BenchPlan;
  rack: DrawnRack;
  parts: WorkedPart[];
  /** What of the record the table has words for: the observation as written, and its reading. */
  seen: Record<string, Record<string, { of: string; reading: number }>>;
  /** False: what stands near a limit and what may mislead has still to be looked for. */
  whole: boolean;
}

export interface Worked {
  faults: PracticalFault[];
  work?: PaperWork;
  /** Why nothing could be worked out from what reads well, as a sentence. */
  refused?: string;
}

export type Further = FurtherList | undefined;
