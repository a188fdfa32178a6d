/** What is taken: a fresh portion of a sample, or of what is in the tube already. */
import { FIRST_PORTION, FROM_MARK } from "./from-before.ts";
import { amountOfLiquid, amountOfSample } from "./how-much.ts";
import { pour, pourAll } from "./pour.ts";
import { reagentsIn } from "./reagent-names.ts";
import { nothing, type Reader, type ReadStretch } from "./stretch.ts";
import { keptIn, lettersIn, mixedWithOneAnother, PORTIONED, SAMPLE } from "./which-sample.ts";

/** "To 1 cm3 of solution K", "Place a spatula measure of solid P in a tube", "Dissolve the solid in 5 cm3 of water". */
export const readTake: Reader = (text, words, before) => {
  const dissolve = /^dissolve\b/.test(text);
  const begins = /^(?:to\b|take\b|place\b|put\b|pour\b|transfer\b|measure\b|use\b)/.test(text) || dissolve;
  const letters = lettersIn(words);
  const kept = keptIn(text);
  if (/^to\b/.test(text) && kept && (letters.length === 0 || /^to the\b/.test(text))) {
    const part = PORTIONED.test(text) ? [`the ${kept} is used whole`] : [];
    return { ...nothing(), keeps: kept, assumed: part };
  }
  if (
    /^to (?:[^,]{0,30} of )?(?:the|this|that|each) (?:same |resulting )?(?:mixture|tube|product|precipitate)s?\b/.test(
      text,
    )
  )
    return nothing();
  if (begins && !dissolve && letters.length === 0) {
    if (before.taken && FIRST_PORTION.test(text)) return { ...nothing(), assumed: ["it is what is in the tube"] };
    if (FROM_MARK.test(text))
      return { ...nothing(), assumed: PORTIONED.test(text) ? ["all that is in the tube is used"] : [] };
    const ready = before.taken ? undefined : pouredFirst(text);
    if (ready) return ready;
  }
  if (letters.length > 1 && EACH_ITS_OWN.test(text)) return mixedWithOneAnother(letters);
  // Of a mixture already in the tube nothing is taken anew.
  if (!begins || !(SAMPLE.test(text) || letters.length > 0)) return undefined;
  if (/\b(?:mixture|filtrate|residue|resulting|product from)\b/.test(text)) return nothing();
  const liquid = text.match(/\b(?:in|into|with)\b.*\bwater\b/)?.[0];
  const solid = dissolve || /\bsolid|\bcrystals|\bpowder|\bspatula/.test(text);
  if (/^to (?:the|this|these|that) (?:same |resulting )?(?:solution|tube)/.test(text) && letters.length === 0)
    return nothing();
  const taken = amountOfSample(liquid ? text.slice(0, text.indexOf(liquid)) : text, solid);
  const read: ReadStretch = {
    steps: [{ step: taken.entry }],
    takes: { samples: letters, solid },
    assumed: taken.assumed ? [taken.assumed] : [],
    questions: [],
  };
  const into = /\b(?:in|into|with|to)\b(?! ?$).*/.exec(text.replace(/^to\b/, ""))?.[0] ?? "";
  if (liquid) pour(read, "H2O(l)", amountOfLiquid(liquid), liquid);
  else if (reagentsIn(into).length > 0) pourAll(read, into, {});
  return read;
};

/** "1 cm3 of P and 1 cm3 of Q", both into one tube. */
const EACH_ITS_OWN =
  /\bof (?:(?:solution|solid|sample) )?[a-z]\d? and (?:[\d.]+ (?:cm3|ml|g|drops?)|an? [a-z ]{3,20}) of [a-z ]*\b/;

/** "To 2 cm3 of dilute nitric acid" before any sample: the acid waits for the sample, which this bench takes first. */
function pouredFirst(text: string): ReadStretch | undefined {
  if (amountOfLiquid(text) === undefined || /\bbath\b|\bbeaker\b/.test(text)) return undefined;
  const found = reagentsIn(text);
  const beside = found.reduceRight((left, { from, to }) => `${left.slice(0, from)}~${left.slice(to)}`, text);
  if (found.length === 0 || SAMPLE.test(beside.replace(/~ solution/g, "~"))) return undefined;
  const poured = nothing();
  pourAll(poured, text.replace(/^\w+ /, ""), {});
  return {
    ...poured,
    steps: [],
    pours: poured.steps,
    assumed: [...poured.assumed, "the sample is taken first, and this is added to it"],
  };
}
