/** What the readings of one sentence share. */
import type { Gas, Observation } from "../../practical.ts";
import type { AskedOf } from "../asked-of.ts";
import type { Sentence } from "../sentence.ts";

/** What a record leaves out, so that a page can ask for it or mark it. */
export type Missing = "sight" | "colour" | "fate" | "solution" | "gas" | "gas test" | "hot" | "cold" | SaidTwice;

/** Of these, two that exclude one another are named: no mark is earned by naming several. */
export type SaidTwice = `one ${"precipitate" | "solution" | "flame" | "fate" | "gas name" | "gas test"}`;

/** A sentence being read: what is left of its words, what was seen, and what is to be asked. */
export interface Reading {
  words: Sentence;
  asked: AskedOf;
  seen: Observation;
  questions: string[];
  missing: Missing[];
  /** The gas that is named. */
  named?: Gas;
  /** A colour of the liquid is said not to be there. */
  denied?: true;
}

/** Asks the writer something. */
export function ask(reading: Reading, question: string, missing?: Missing): void {
  reading.questions.push(question);
  if (missing) reading.missing.push(missing);
}
