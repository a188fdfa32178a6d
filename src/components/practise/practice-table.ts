/** What the page of a practice hands to its script. */
import type { Practice } from "../../build/practice.ts";
import type { AskedOf } from "../../engine/wording/asked-of.ts";

/** One line of the record, as it is carried out. */
export interface PracticeTest {
  /** "a(ii)" */
  id: string;
  part: string;
  /** The first of its part: fresh tubes. */
  fresh: boolean;
  /** The instruction as the paper words it, where it does. */
  says?: string;
  /** What the hands do, in sentences. */
  steps: string[];
  /** The same in a few words. */
  brief: string;
  asked: AskedOf;
  cautions: TakeCare[];
}

export interface TakeCare {
  hazard: string;
  summary: string;
  title: string;
  href: string;
}

export interface PracticeProps {
  /** Name of the practical in addresses. */
  slug: string;
  title: string;
  practice: Practice;
  tests: PracticeTest[];
  /** Names of the ions the paper allows. */
  names: Record<string, string>;
  /** How many ions of each kind each sample holds. */
  holds: Record<string, { cations: number; anions: number }>;
  /** What the paper says, in sentences. */
  paper: string[];
  /** Address of the walkthrough. */
  walkthrough: string;
}

export type { Practice };
