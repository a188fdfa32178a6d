/** The work of a practical as hands and burners see it: the shapes the order of work is made from. Times in quarter minutes. */

import type { Step } from "../../practical.ts";

/** A stretch of work on one tube that cannot be broken off, and how long the tube is then left alone. */
export interface Turn {
  /** The lines of the record it belongs to: "a(ii)". Two when a gas is tested that the line before has set free. */
  cells: string[];
  /** What of the paper is done in it, in order. A portion that the paper does not mention is not there. */
  steps: Step[];
  work: number;
  /** A burner is in use all through it. */
  burner: boolean;
  /** Time that must pass before the tube's next turn. */
  wait: number;
  /** What the tube is left alone for. */
  waitsTo?: "stand" | "cool" | "drip through the filter";
}

/** Tubes that can be rinsed and used again; a tube for a heated solid must be dry, so each is used once. */
export type Rinsed = "test-tube" | "boiling tube";

/** One part of the paper on one sample, in a tube of its own: its turns in order. */
export interface TubeWork {
  sample: string;
  /** Place of the part in the paper. */
  part: number;
  turns: Turn[];
  /** Tubes it occupies from its first turn to the end of its last: two when it filters. */
  tubes?: { kind: Rinsed; count: number };
}

/** What there is to work with. */
export interface Means {
  people: number;
  burners: number;
  /** How many tubes of a kind there are; absent when there are enough. */
  tubes: Partial<Record<Rinsed, number>>;
  /** How many tubes can stand in the rack at a time; absent when there is room for all. A dry tube for a heated solid lies on the mat. */
  places?: number;
  /** True: no part is begun before the part before it has been begun for every sample. */
  partsInOrder: boolean;
  /** Time to rinse a tube. */
  rinse: number;
}

/** A turn with its place in time. */
export interface Bar {
  /** Index of the tube work, and of the turn in it. */
  tube: number;
  turn: number;
  start: number;
  /** Rinsing included. */
  work: number;
  rinsed: boolean;
}
