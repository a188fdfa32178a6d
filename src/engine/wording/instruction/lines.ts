/** Stretches put together to parts and lines of the record: where a fresh tube begins, and where there is something new to write down. */
import type { WrittenStep } from "../../constants/standard-tests.ts";
import { ROMAN } from "../../practical/cells.ts";
import { WHICH_KEPT } from "./read-filter.ts";
import { readStretch } from "./read-stretch.ts";
import { readable, stretchesOf } from "./split.ts";
import type { ReadStretch, SoFar } from "./stretch.ts";

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

/** Words that speak of what is in the tube already, with the mark it stands under where the paper names one: "the mixture from (a)". */
const GOES_ON =
  /^(?:\w+ ){1,3}(?:[\d.]+ (?:cm3|ml) of )?(?:the|this|your) (?:\w+ )?(?:mixture|filtrate|residue|precipitate|product|contents|(?<=resulting )\w+|(?:solution|tube)(?= (?:from|in|of) (?:part |test )?\())(?:[^(,]{0,30}\(([a-z]|\d{1,2})\))?/;

/** Parts as they are read, sentence by sentence. */
export class Lines {
  readonly parts: ReadPart[] = [];
  #tube: SoFar = { taken: false, wet: false };
  #lineAsked = false;
  /** Marks on the paper under which the tube in hand has been worked on. */
  #marks: string[] = [];
  /** The mark of an earlier tube that is spoken of, which is not the one in hand. */
  #elsewhere: string | undefined;

  newPart(): void {
    this.parts.push({ samples: [], tests: [] });
    this.#tube = { taken: false, wet: false };
    this.#lineAsked = true;
  }

  newTest(): void {
    this.#lineAsked = true;
  }

  /**
   * Begins what stands under a mark of its own: a part with a fresh tube, unless its first words go on with what is in the last one.
   * @param mark the letter or figure on the paper
   */
  underMark(mark: string, words: string): void {
    const [first = ""] = stretchesOf(words);
    const goesOnWith = GOES_ON.exec(readable(first));
    if (!goesOnWith || this.parts.length === 0) {
      this.newPart();
      this.#marks = [mark];
      return;
    }
    const from = goesOnWith[1];
    this.newTest();
    this.#elsewhere = from !== undefined && !this.#marks.includes(from) ? from : undefined;
    this.#marks.push(mark);
  }

  sentence(words: string): void {
    // What one sentence asks for belongs together, unless it says "then in excess".
    let begun = false;
    for (const stretch of stretchesOf(words)) {
      const read = readStretch(readable(stretch), stretch, this.#tube);
      if (this.#elsewhere !== undefined) {
        read.questions.push(
          `This goes on with the tube of (${this.#elsewhere}), which is not the last one: enter its steps there.`,
        );
        this.#elsewhere = undefined;
      }
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
