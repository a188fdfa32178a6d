/** What the search says it found, in a sentence. */
import type { Question } from "./ask.ts";
import type { Term } from "./terms.ts";

/** @param count pages found */
export function told(count: number, question: Question, terms: readonly Term[]): string {
  const asked = question.q && ` for “${question.q}”`;
  const narrowed = Object.entries(question).some(([name, value]) => name !== "q" && value !== "");
  if (count === 0) {
    const tip = narrowed ? "Take away a choice under “Narrow down”." : "Try one word, or the name of an ion.";
    return `Nothing found${asked}. ${tip}`;
  }
  return `${count} ${count === 1 ? "page" : "pages"}${asked}${readAs(terms)}.`;
}

/** ", read as sulfate or SO₄": how formulas were understood. */
function readAs(terms: readonly Term[]): string {
  const formulas = terms.flatMap(({ says, formula }) =>
    formula ? [formula.printed ? `${says} or ${formula.printed}` : says] : [],
  );
  return formulas.length === 0 ? "" : `, read as ${formulas.join(", ")}`;
}
