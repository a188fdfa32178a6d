/** What is added: "add dilute nitric acid followed by aqueous silver nitrate", "acidify with dilute nitric acid", "then in excess". */
import { amountOfLiquid, amountOfSample, saysExcess } from "./how-much.ts";
import { pourAll, unknownReagent } from "./pour.ts";
import { readMixed } from "./read-mixed.ts";
import { reagentsIn } from "./reagent-names.ts";
import { nothing, type Reader, type ReadStretch, type SoFar } from "./stretch.ts";
import { lettersIn, OF_SAMPLE, SAMPLE, sampleOf, takeFirst } from "./which-sample.ts";

export const readAdd: Reader = (text, words, before) => {
  const again =
    /^(?:in excess|until)\b/.test(text) ||
    (/^add\b/.test(text) && /^add (?:it |them )?(?:in |an |to )?excess$|^add (?:more|further)\b/.test(text));
  const found = reagentsIn(text);
  if (again && found.length === 0) return readAgain(text, before);
  if (/^(?:\w+ly )?(?:acidify|neutralise|treat)\b/.test(text)) {
    const read = readMixed(text, words, before);
    return read.steps.length > 0 ? read : { ...read, ...unknownReagent(text, words) };
  }
  if (!/^(?:\w+ly )?(?:add|followed by|pour)\b/.test(text)) return undefined;
  const read = nothing();
  if (before.poured && found.length === 0) {
    const samples = lettersIn(words.replace(/^\w+/, ""));
    if (samples.length > 0 || SAMPLE.test(text)) {
      const solid = /\bsolid|\bcrystals|\bpowder|\bspatula|\d ?m?g\b/.test(text);
      takeFirst(read, { amount: amountOfSample(text, solid), takes: { samples, solid } });
      return read;
    }
  }
  const [, sample = "", into = ""] = /^(.*?\bof\b.*?) (?:in)?to (?!excess\b)(.+)$/.exec(text) ?? [];
  const letters = lettersIn(words.slice(0, sample.length + 1).replace(/^\w+/, ""));
  if (letters.length > 0 && !before.taken && reagentsIn(sample).length === 0 && reagentsIn(into).length > 0) {
    const solid = /\bsolid|\bcrystals|\bpowder|\bspatula|\d ?m?g\b/.test(sample);
    takeFirst(read, { amount: amountOfSample(sample, solid), takes: { samples: letters, solid } });
    read.assumed.push("the sample is taken first, and the reagent added to it");
    pourAll(read, into, before);
    return read;
  }
  const portion = sampleOf(text, words);
  if (portion && (!before.taken || portion.isFresh)) takeFirst(read, portion);
  pourAll(read, text.replace(OF_SAMPLE, " "), before);
  return read.steps.some(({ step }) => "add" in step) ? read : { ...read, ...unknownReagent(text, words, read) };
};

/** "then in excess", "until in excess", "add more": of the reagent added last. */
function readAgain(text: string, { reagent }: SoFar): ReadStretch | undefined {
  if (/^until\b/.test(text) && !saysExcess(text)) return nothing();
  if (reagent === undefined) return { ...nothing(), questions: ["In excess of what? No reagent stands before it."] };
  const amount = amountOfLiquid(text) ?? { entry: { until: "in excess" } };
  return { ...nothing(), steps: [{ step: { add: reagent, ...amount.entry }, newLine: true }] };
}
