/** A clause that takes a sample and adds to it before it says what is done with both. */
import { amountOfSample } from "./how-much.ts";
import { pourAll } from "./pour.ts";
import { nameOfReagent, reagentsIn } from "./reagent-names.ts";
import { nothing, type ReadStretch, type SoFar } from "./stretch.ts";
import { IN_TUBE, lettersIn, PORTIONED, SAMPLE, takeFirst } from "./which-sample.ts";

/**
 * "Warm 2 cm3 of solution B with aqueous sodium hydroxide", "shake solid C with 5 cm3 of water": the sample is taken and the reagents are
 * added; what is then done is the reader's own. A reagent that is named before the "with", or without one, is asked about.
 */
export function readMixed(text: string, words: string, before: SoFar, isDry = false): ReadStretch {
  const read = nothing();
  const clause = text.replace(/\b(?:until|to (?:drive|expel|remove))\b.*/, "");
  const [, what = clause, and = ""] = /^(.*?)(\b(?:with|in|using|and)\b.*)$/.exec(clause) ?? [];
  const letters = lettersIn(words.slice(0, what.length + 2).replace(/^\w+/, ""));
  const solid = isDry || /\bsolid|\bcrystals|\bpowder/.test(what);
  const named = letters.length > 0 || (SAMPLE.test(what) && PORTIONED.test(what));
  const fresh = !before.taken || PORTIONED.test(what) || (letters.length > 0 && solid && before.wet);
  if (named && fresh && !IN_TUBE.test(what))
    takeFirst(read, { amount: amountOfSample(what, solid), takes: { samples: letters, solid } });
  const cm3 = /^([\d.]+) cm3$/.exec(String(read.steps[0]?.step.take ?? ""));
  pourAll(read, and, cm3 ? { sampleCm3: Number(cm3[1]) } : before, /^(?:\w+ly )?acidify\b/.test(text));
  for (const { id } of reagentsIn(what)) read.questions.push(`Is ${nameOfReagent(id)} added here, and how much?`);
  return read;
}
