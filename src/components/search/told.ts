/** What the search says it found, in a sentence. */
import * as say from "#words/search.ts";
import type { Question } from "./ask.ts";
import type { Term } from "./terms.ts";

/** @param count pages found */
export function told(count: number, question: Question, terms: readonly Term[]): string {
  const narrowed = Object.entries(question).some(([name, value]) => name !== "q" && value !== "");
  if (count === 0) return say.nothing(question.q, narrowed);
  const formulas = terms.flatMap(({ says, formula }) =>
    formula ? [formula.printed ? [says, formula.printed] : [says]] : [],
  );
  return say.found(count, question.q, formulas);
}
