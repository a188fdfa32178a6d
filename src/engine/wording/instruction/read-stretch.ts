/** One stretch of an instruction, such as "add aqueous ammonia until in excess", as the steps it asks for. */
import { readAdd } from "./read-add.ts";
import { readFilter, readWait } from "./read-filter.ts";
import { readFlame, readGas } from "./read-gas.ts";
import { readHeat } from "./read-heat.ts";
import { readMixed } from "./read-mixed.ts";
import { readTake } from "./read-take.ts";
import { after, nothing, only, type Reader, type ReadStretch, type SoFar } from "./stretch.ts";

/** What is done to mix, and what is only looked at or written down. */
const readRest: Reader = (text, words, before) => {
  if (/^(?:\w+ly )?(?:shake|stir|mix|swirl)\b/.test(text))
    return after(readMixed(text, words, before), only({ shake: true }));
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
    if (read) return read;
  }
  return { ...nothing(), questions: [`Not understood: "${words}". What is done here?`] };
}

const FORBIDS = /^(?:please )?(?:do not|don't|never|avoid)\b/;
