/** Sentences as read, turned into parts of the draft. */
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import { type Draft, type DraftPart, fitting, freeLetter } from "./draft.ts";
import { atHouse, type House } from "./house.ts";

/**
 * The tests as parts of the draft, under letters that are free. No sample stands for all; a letter that is no sample of the paper is kept,
 * and the form marks it.
 */
export function partsFrom(read: ReadInstruction, draft: Draft, house: House): DraftPart[] {
  const taken = draft.parts.map(({ label }) => label);
  const known = draft.samples.map(({ label }) => label);
  return read.parts.map(({ samples, tests }): DraftPart => {
    const label = freeLetter("abcdefghijklmnopqrstuvwxyz", taken);
    taken.push(label);
    const isAll = samples.length === known.length && samples.every((letter) => known.includes(letter));
    return {
      label,
      title: "",
      samples: isAll ? [] : samples,
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
