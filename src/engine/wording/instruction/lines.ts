/** Stretches put together to parts and lines of the record: where a fresh tube begins, and where there is something new to write down. */
import type { WrittenStep } from "../../constants/standard-tests.ts";
import { ROMAN } from "../../practical/cells.ts";
import { askWhichTube, DIVIDES, elsewhere, FIRST_PORTION, GOES_ON } from "./from-before.ts";
import { keep } from "./kept.ts";
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
  /** The sentences of the paper it was read from; empty where one of them makes several tests, whose steps then speak for themselves. */
  says: string;
  steps: WrittenStep[];
  stretches: UnderstoodStretch[];
}

/** Tests that follow one another in the same tube. */
export interface ReadPart {
  /** The letter it stands under on the paper. */
  mark?: string;
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

/** Parts as they are read, sentence by sentence. */
export class Lines {
  readonly parts: ReadPart[] = [];
  /** Of each test the sentences it was read from. */
  readonly #sentences = new Map<ReadTest, { words: string }[]>();
  #tube: SoFar = { taken: false, wet: false };
  #lineAsked = false;
  /** Marks on the paper under which the tube in hand has been worked on. */
  #marks: string[] = [];
  /** The mark of an earlier tube that is spoken of, which is not the one in hand. */
  #elsewhere: string | undefined;
  readonly #portioned = new Set<string>();
  /** More was in the tube than what was taken when it was divided. */
  #made = false;
  /** What waits in the tube for its sample. */
  #poured: { test: ReadTest; stretch: UnderstoodStretch; steps: ReadStretch["steps"] } | undefined;

  newPart(mark?: string): void {
    this.#askForSample();
    this.parts.push({ ...(mark && /^[a-z]$/.test(mark) && { mark }), samples: [], tests: [] });
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
      this.newPart(mark);
      this.#marks = [mark];
      this.#portioned.clear();
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
    const sentence = { words };
    for (const stretch of stretchesOf(words)) {
      const text = readable(stretch);
      const read = readStretch(text, stretch, { ...this.#tube, poured: this.#poured !== undefined });
      if (this.#elsewhere === undefined)
        askWhichTube(text, stretch, read, { marks: this.#marks, portioned: this.#portioned, made: this.#made });
      else read.questions.push(elsewhere(this.#elsewhere));
      this.#elsewhere = undefined;
      if (DIVIDES.test(text) || FIRST_PORTION.test(text)) this.#made = this.#isMade();
      else if (read.takes && read.takes.samples.length > 0) this.#made = false;
      if (read.takes && this.#tube.taken) this.newPart();
      this.#add(sentence, stretch, read, begun);
      begun = true;
    }
  }

  #add(sentence: { words: string }, words: string, read: ReadStretch, begun: boolean): void {
    if (this.parts.length === 0) this.newPart();
    const part = this.parts[this.parts.length - 1];
    if (read.takes) {
      const named = read.takes.samples.filter((letter) => !part.samples.includes(letter));
      part.samples.push(...named);
    }
    if (read.keeps) keep(this.parts.at(-1), read, read.keeps);
    if (this.#poured && read.takes) {
      read.steps.splice(1, 0, ...this.#poured.steps);
      this.#poured = undefined;
    } else if (read.steps.length > 0) this.#askForSample();
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
      const sentences = this.#sentences.get(test) ?? [];
      if (!sentences.includes(sentence)) this.#sentences.set(test, [...sentences, sentence]);
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
      const test = last && !this.#lineAsked ? last : this.#newTestIn(part);
      const stretch = tell(test);
      if (read.pours) this.#poured = { test, stretch, steps: read.pours };
    }
  }

  /** What was poured into the tube for a sample that does not come is a step all the same, and asked about. */
  #askForSample(): void {
    if (!this.#poured) return;
    const { test, stretch, steps } = this.#poured;
    this.#poured = undefined;
    stretch.steps.push(...steps.map(({ step }) => step));
    test.steps.unshift(...steps.map(({ step }) => step));
    stretch.questions.push("Which sample goes into this? None is named.");
  }

  #isMade(): boolean {
    return this.parts.at(-1)?.tests.some(({ steps }) => steps.some((step) => !("take" in step))) ?? false;
  }

  /** The parts, once all is read. */
  finished(): ReadPart[] {
    this.#askForSample();
    const all = [...this.#sentences.values()];
    for (const [test, sentences] of this.#sentences) {
      const isShared = sentences.some((one) => all.some((others) => others !== sentences && others.includes(one)));
      test.says = isShared ? "" : sentences.map(({ words }) => words).join(" ");
    }
    return this.parts.filter(({ tests }) => tests.length > 0);
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
