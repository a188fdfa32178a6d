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

export const answerOf = (table: PredictionTable, { salt }: Sample): SaltEntry | undefined => entryNamed(table, salt);
