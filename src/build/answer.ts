/** The author's answers among the salts of a prediction table. */
import { contentNamed, sameIons } from "../engine/bench/contents.ts";
import type { PredictionTable, SaltEntry } from "../engine/bench/prediction-table.ts";
import type { Sample } from "../engine/practical.ts";

/** What holds the same ions as the salt or salts named; undefined when the table has no such entry. */
export function entryNamed({ salts }: PredictionTable, words: string): SaltEntry | undefined {
  const named = contentNamed(words);
  return (
    named && salts.find(({ cations, anions }) => sameIons(cations, named.cations) && sameIons(anions, named.anions))
  );
}

/**
 * The walkthrough's own set: the index of each sample's salt.
 * @throws RangeError where a sample's answer is no salt of the table: the check of the content says it with its line
 */
export function ownSet(table: PredictionTable, samples: readonly Sample[]): number[] {
  return samples.map((sample) => {
    const answer = answerOf(table, sample);
    if (!answer) throw new RangeError(`sample ${sample.label}: ${sample.salt} is no salt this paper allows`);
    return table.salts.indexOf(answer);
  });
}

export const answerOf = (table: PredictionTable, { salt }: Sample): SaltEntry | undefined => entryNamed(table, salt);
