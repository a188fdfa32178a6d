/**
 * The instruction sentences of a paper as parts, tests and steps: a small grammar over what practical papers say. Every stretch of a
 * sentence comes back with the steps it was read as, what was taken for granted, and what must be asked; nothing is left out in silence.
 * Work is bounded: the text is cut at a length, each stretch is looked at once by each of a few patterns without nested repeats.
 */
import type { WrittenStep } from "../constants/standard-tests.ts";
import { ROMAN } from "../practical/cells.ts";
import { type ReadStretch, readStretch, type SoFar, WHICH_KEPT } from "./instruction/read-stretch.ts";
import { readable, sentencesOf, stretchesOf } from "./instruction/split.ts";

/** A stretch of a sentence and how it was understood. */
export interface UnderstoodStretch {
  /** As pasted. */
  words: string;
  /** Steps as an author writes them (see `practical/step.ts`); one that lacks an amount or a choice has a question beside it. */
  steps: WrittenStep[];
  assumed: string[];
  questions: string[];
}

/** One line of the record. */
export interface ReadTest {
  /** The sentences of the paper it was read from, the sentence whole where it makes several tests. */
  says: string;
  steps: WrittenStep[];
  stretches: UnderstoodStretch[];
}

/** Tests that follow one another in the same tube. */
export interface ReadPart {
  /** The samples it names; none where it speaks of the samples at large. */
  samples: string[];
  tests: ReadTest[];
}

export interface ReadInstruction {
  parts: ReadPart[];
  /** What was wrong with the text as a whole. */
  faults: string[];
}

/** Longest text that is read: a whole paper of tests is shorter. */
export const LONGEST_INSTRUCTION = 6000;
/** A sentence longer than this is no instruction. */
const LONGEST_SENTENCE = 400;
const MOST_PARTS = 26;

/**
 * @example readInstruction("To 1 cm3 of solution K add aqueous ammonia drop by drop, then in excess.").parts[0].tests.map((t) => t.steps)
 * // [[{ take: "1 cm3" }, { add: "NH3(aq)", drops: 5 }], [{ add: "NH3(aq)", until: "in excess" }]]
 */
export function readInstruction(pasted: string): ReadInstruction {
  const faults: string[] = [];
  if (pasted.length > LONGEST_INSTRUCTION) {
    faults.push(`The text is ${pasted.length} letters long; only the first ${LONGEST_INSTRUCTION} were read.`);
  }
  const reading = new Reading();
  for (const { words, mark } of sentencesOf(pasted.slice(0, LONGEST_INSTRUCTION))) {
    if (mark?.part) reading.newPart();
    else if (mark?.line) reading.newTest();
    if (words.length > LONGEST_SENTENCE) {
      faults.push(`A sentence of ${words.length} letters was left out: "${words.slice(0, 40)}…"`);
      continue;
    }
    reading.sentence(words);
  }
  const parts = reading.parts.filter(({ tests }) => tests.length > 0);
  if (parts.length > MOST_PARTS) faults.push(`${parts.length} parts were found; only ${MOST_PARTS} are kept.`);
  return { parts: parts.slice(0, MOST_PARTS), faults };
}

/** Verbs after which there is something to see, so that the next thing added begins a line of the record of its own. */
const shows = (step: WrittenStep): boolean =>
  ["warm", "boil", "stand", "heat", "testGas", "leadThrough", "indicator", "flame"].some((verb) => verb in step) ||
  ("add" in step && !MAKES_READY.test(String(step.add)));
/** Acid and water are added for what comes after them. */
const MAKES_READY = /^(?:HNO3|HCl|H2SO4|CH3COOH|H2O)\(/;
/** Steps that go on with the sight of the one before: nothing new to write down until they are done. */
const goesOn = (step: WrittenStep): boolean =>
  ["shake", "testGas", "leadThrough", "cool", "wash"].some((verb) => verb in step);
const looksForGas = (step: WrittenStep): boolean => "testGas" in step || "leadThrough" in step;

class Reading {
  readonly parts: ReadPart[] = [];
  #tube: SoFar = { taken: false, wet: false };
  #lineAsked = false;

  newPart(): void {
    this.parts.push({ samples: [], tests: [] });
    this.#tube = { taken: false, wet: false };
    this.#lineAsked = true;
  }

  newTest(): void {
    this.#lineAsked = true;
  }

  sentence(words: string): void {
    // What one sentence asks for belongs together, unless it says "then in excess".
    let begun = false;
    for (const stretch of stretchesOf(words)) {
      const read = readStretch(readable(stretch), stretch, this.#tube);
      if (read.takes && this.#tube.taken) this.newPart();
      this.#add(words, stretch, read, begun);
      begun = true;
    }
  }

  #add(sentence: string, words: string, read: ReadStretch, begun: boolean): void {
    if (this.parts.length === 0) this.newPart();
    const part = this.parts[this.parts.length - 1];
    if (read.takes) {
      const named = read.takes.samples.filter((letter) => !part.samples.includes(letter));
      part.samples.push(...named);
    }
    if (read.keeps) this.#keep(read.keeps);
    // A stretch that makes two lines of the record stands at both; what it leaves open is asked once.
    const told: [ReadTest, UnderstoodStretch][] = [];
    const tell = (test: ReadTest): UnderstoodStretch => {
      const known = told.find(([one]) => one === test);
      if (known) return known[1];
      const first = told.length === 0;
      const stretch: UnderstoodStretch = {
        words,
        steps: [],
        assumed: first ? read.assumed : [],
        questions: first ? read.questions : [],
      };
      told.push([test, stretch]);
      test.stretches.push(stretch);
      if (!test.says.includes(sentence)) test.says = test.says ? `${test.says} ${sentence}` : sentence;
      return stretch;
    };
    for (const [index, { step, newLine }] of read.steps.entries()) {
      const last = part.tests.at(-1);
      const goingOn = begun || index > 0;
      const test = last && !this.#begins(step, last, newLine === true, goingOn) ? last : this.#newTestIn(part);
      test.steps.push(step);
      tell(test).steps.push(step);
      this.#remember(step);
    }
    if (read.steps.length === 0) {
      // A mark stands for the line that comes: what is only said before it belongs there.
      const last = part.tests.at(-1);
      tell(last && !this.#lineAsked ? last : this.#newTestIn(part));
    }
  }

  /** Says of a filtration before it, which was asked about, what it keeps. */
  #keep(kept: "filtrate" | "residue"): void {
    for (const test of this.parts.at(-1)?.tests ?? []) {
      for (const stretch of test.stretches) {
        if (!stretch.questions.includes(WHICH_KEPT)) continue;
        stretch.questions = stretch.questions.filter((question) => question !== WHICH_KEPT);
        const decided = (step: WrittenStep) => (step.filter === "" ? { filter: kept } : step);
        stretch.steps = stretch.steps.map(decided);
        test.steps = test.steps.map(decided);
      }
    }
  }

  /** Whether a step begins a new line of the record. */
  #begins(step: WrittenStep, last: ReadTest, newLine: boolean, begun: boolean): boolean {
    if (this.#lineAsked) return true;
    if (last.steps.length === 0) return false;
    if (newLine) return true;
    // A line has room for one gas.
    if (looksForGas(step) && last.steps.some(looksForGas)) return true;
    if (begun || goesOn(step)) return false;
    return last.steps.some(shows);
  }

  #newTestIn(part: ReadPart): ReadTest {
    this.#lineAsked = false;
    const test: ReadTest = { says: "", steps: [], stretches: [] };
    if (part.tests.length >= ROMAN.length) {
      const more: ReadPart = { samples: part.samples, tests: [test] };
      this.parts.push(more);
    } else part.tests.push(test);
    return test;
  }

  #remember(step: WrittenStep): void {
    if ("take" in step) {
      this.#tube.taken = true;
      const cm3 = /^([\d.]+) cm3$/.exec(String(step.take));
      if (cm3) this.#tube = { ...this.#tube, sampleCm3: Number(cm3[1]), wet: true };
    }
    if ("flame" in step) this.#tube = { ...this.#tube, taken: true };
    if ("add" in step) this.#tube = { ...this.#tube, reagent: String(step.add), wet: true, taken: true };
  }
}
