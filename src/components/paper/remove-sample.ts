/** What goes with a sample that is removed: its letter, wherever it stands, and what is about it alone. */
import * as say from "#words/paper-form.ts";
import type { Draft, DraftPart, DraftStatement } from "./draft.ts";

/** Samples a statement must name to say something; one on an ion may name one, and with none it would be about all. */
const FEWEST: Record<DraftStatement["says"], number> = { share: 2, differ: 2, same: 2, contains: 1 };

/**
 * The draft without a sample. A part or statement that would be left with nobody to be about goes too: without letters it would be about all.
 * @returns the draft, and in a sentence what is gone
 */
export function withoutSample(draft: Draft, index: number): { draft: Draft; told: string } {
  const { label } = draft.samples[index];
  const samples = draft.samples.filter((_, at) => at !== index);
  const who = label === "" ? say.numbered(index + 1) : label;
  // While two share a letter, nobody can tell which of them is named.
  if (samples.some((one) => one.label === label))
    return { draft: { ...draft, samples }, told: say.sampleRemoved(who, [], 0) };

  const without = <T extends { samples: string[] }>(one: T): T => ({
    ...one,
    samples: one.samples.filter((letter) => letter !== label),
  });
  const isAlone = (part: DraftPart) => part.samples.length > 0 && part.samples.every((letter) => letter === label);
  const staysSaid = (one: DraftStatement) =>
    !one.samples.includes(label) || without(one).samples.length >= FEWEST[one.says];
  const statements = draft.statements.filter(staysSaid).map(without);
  const parts = draft.parts
    .filter((part) => !isAlone(part))
    .map((part) => ({
      ...without(part),
      tests: part.tests.map((test) => {
        const { [label]: _, ...seen } = test.seen;
        return { ...test, seen };
      }),
    }));
  const gone = draft.parts.filter(isAlone).map((part) => part.label);
  return {
    draft: { ...draft, samples, statements, parts },
    told: say.sampleRemoved(who, gone, draft.statements.length - statements.length),
  };
}
