/** One stretch of an instruction, such as "add aqueous ammonia until in excess", as the steps it asks for. */
import { DIVIDES } from "./from-before.ts";
import { readAdd } from "./read-add.ts";
import { readFilter, readWait } from "./read-filter.ts";
import { readFlame, readGas } from "./read-gas.ts";
import { readHeat } from "./read-heat.ts";
import { readMixed } from "./read-mixed.ts";
import { readTake } from "./read-take.ts";
import { after, nothing, only, type Reader, type ReadStretch, type SoFar } from "./stretch.ts";
import { keptIn, lettersIn, mixedWithOneAnother } from "./which-sample.ts";

/** What is done to mix, and what is only looked at or written down. */
const readRest: Reader = (text, words, before) => {
  const mixed = lettersIn(words.replace(/^\w+/, ""));
  if (/^(?:\w+ly )?mix\b/.test(text) && mixed.length > 1 && !/\beach\b|\bseparate/.test(text))
    return mixedWithOneAnother(mixed);
  if (DIVIDES.test(text)) return { ...nothing(), assumed: ["each portion is a tube of its own"] };
  if (/^(?:\w+ly )?(?:shake|stir|mix|swirl)\b/.test(text))
    return after(readMixed(text, words, before), only({ shake: true }));
  if (/^discard the (?:filtrate|residue)\b/.test(text))
    return { ...nothing(), keeps: keptIn(text) === "residue" ? "filtrate" : "residue" };
  if (/^(?:observe|note|record|describe|state|write|compare|look|identify|confirm|discard|until)\b/.test(text))
    return nothing();
  if (/^(?:\w+ly )?repeat\b/.test(text)) {
    return {
      ...nothing(),
      questions: ["A repetition is not read: enter the steps of the test it repeats, with what is changed."],
    };
  }
  if (/^(?:keep|use) (?:the|this|it)\b/.test(text)) return nothing();
  return undefined;
};

const READERS: readonly Reader[] = [readFlame, readGas, readTake, readAdd, readHeat, readWait, readFilter, readRest];

/**
 * @param text the stretch made readable; `words`: as the paper has it, for the letters of samples
 */
export function readStretch(text: string, words: string, before: SoFar): ReadStretch {
  if (FORBIDS.test(text)) return { ...nothing(), assumed: ["this says what not to do"] };
  for (const reader of READERS) {
    const read = reader(text, words, before);
    if (read) return withGasTest(reader === readRest ? read : withKept(read, text), text);
  }
  if (isStatement(text)) return { ...nothing(), assumed: ["this is a statement: enter it with the samples"] };
  return { ...nothing(), questions: [`Not understood: "${words}". What is done here?`] };
}

const FORBIDS = /^(?:please )?(?:do not|don't|never|avoid|without [a-z]+ing)\b/;

/** "Warm the filtrate", "add NaOH to the residue": says of the filtration before it which of the two goes on. */
function withKept(read: ReadStretch, text: string): ReadStretch {
  const spokenOf = /\b(?:the|this|your) (?:\w+ )?(?:filtrate|residue)\b/.test(text) && !read.takes;
  const filters = read.steps.some(({ step }) => "filter" in step);
  return read.keeps || filters || !spokenOf ? read : { ...read, keeps: keptIn(text) };
}

/** Asks about a gas test that stands in a clause which was read as something else. */
function withGasTest(read: ReadStretch, text: string): ReadStretch {
  const isRead = ["testGas", "leadThrough", "indicator"].some((verb) => read.steps.some(({ step }) => verb in step));
  if (isRead || read.steps.length === 0 || !/\bsplint\b|\blitmus\b/.test(text)) return read;
  return {
    ...read,
    steps: [...read.steps, { step: { testGas: "" } }],
    questions: [...read.questions, "With what is the gas tested?"],
  };
}

/** "Each contains one cation and one anion": something told of the samples, and nothing done. */
const isStatement = (text: string): boolean =>
  /\b(?:contains?|holds?|consists? of|shares?|differs?|(?:has|have) (?:the same|different|a different|one|two|no)|(?:is|are) (?:a|an|the same|different|two|three|four|salts|solutions|solids|provided|given|supplied|labelled))\b/.test(
    text,
  ) && !/\b(?:added|warmed|heated|boiled|tested|filtered|mixed|shaken|dissolved|treated|acidified)\b/.test(text);
