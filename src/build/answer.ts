/** The author's answers among the salts of a prediction table. */
import { contentNamed } from "../engine/bench/contents.ts";
import type { PredictionTable, SaltEntry } from "../engine/bench/prediction-table.ts";
import type { Sample } from "../engine/practical.ts";

/** What holds the same ions as the salt or salts named; undefined when the table has no such entry. */
export function entryNamed({ salts }: PredictionTable, words: string): SaltEntry | undefined {
  const named = contentNamed(words);
  const same = (a: readonly string[], b: readonly string[]) =>
    a.length === b.length && a.every((ion) => b.includes(ion));
  return named && salts.find(({ cations, anions }) => same(cations, named.cations) && same(anions, named.anions));
}

export const answerOf = (table: PredictionTable, { salt }: Sample): SaltEntry | undefined => entryNamed(table, salt);
