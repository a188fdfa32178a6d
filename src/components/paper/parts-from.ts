/** Sentences as read, turned into parts of the draft, with the samples they name. */
import { MOST } from "../../engine/practical/bounds.ts";
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import { type Draft, type DraftPart, type DraftSample, emptySample, fitting, freeLetter, isFresh } from "./draft.ts";
import { atHouse, type House } from "./house.ts";

const LETTERS = "abcdefghijklmnopqrstuvwxyz";

/**
 * The tests as parts of the draft, under the letters of the paper, or such as are free. A part that names samples is done on these alone, also when one is added
 * later; none stands for all.
 */
export function partsFrom(read: ReadInstruction, draft: Draft, house: House): DraftPart[] {
  const taken = draft.parts.map(({ label }) => label);
  const withSteps = read.parts.filter(({ tests }) => tests.some(({ steps }) => steps.length > 0));
  const marks = withSteps.flatMap(({ mark }) => mark ?? []);
  let last = "";
  return withSteps.map(({ mark, samples, tests }): DraftPart => {
    // A second tube under a mark, or a letter that is taken: the next letter that the paper does not use.
    const after = marks.length > 0 && last ? LETTERS.slice(LETTERS.indexOf(last) + 1) : "";
    const label = mark && !taken.includes(mark) ? mark : freeLetter(`${after}${LETTERS}`, [...taken, ...marks]);
    taken.push(label);
    last = label;
    return {
      label,
      title: "",
      samples,
      from: "",
      tests: tests
        .filter(({ steps }) => steps.length > 0)
        .map(({ says, steps }) => ({
          says: fitting(says),
          steps: steps.map((step) => atHouse(step, house)),
          seen: {},
        })),
    };
  });
}

/** The samples of the paper with those that the sentences name beside them; `added` are the letters of these. */
export function samplesFrom(read: ReadInstruction, draft: Draft): { samples: DraftSample[]; added: string[] } {
  const named = [...new Set(read.parts.flatMap(({ samples }) => samples))];
  // The sample an empty form begins with gives way to those of the paper.
  const isUnused = isFresh(draft) && named.length > 0 && !named.includes(draft.samples[0].label);
  const kept = isUnused ? [] : draft.samples;
  const known = kept.map(({ label }) => label);
  const added = named.filter((letter) => !known.includes(letter)).slice(0, MOST.samples - kept.length);
  const fresh = added.map((label) => ({ ...(kept.at(-1) ?? emptySample(label)), label, given: givenAs(read, label) }));
  return { samples: [...kept, ...fresh], added };
}

/** By how it is taken: weighed out, or by volume. */
function givenAs({ parts }: ReadInstruction, label: string): DraftSample["given"] {
  const taken = parts
    .filter(({ samples }) => samples.includes(label))
    .flatMap(({ tests }) => tests.flatMap(({ steps }) => steps.flatMap(({ take }) => (take ? String(take) : []))));
  const weighed = taken.some((amount) => /g$/.test(amount));
  if (weighed && taken.some((amount) => /cm3$/.test(amount))) return "both";
  return weighed ? "solid" : "solution";
}
