/** What a reader types, made into what the pages say: one spelling, and for a formula its name or the formula as it is printed. */
import { isFiller, ourSpelling } from "#words/search.ts";
import { type Meaning, meaningOf, meaningOfName } from "./formula.ts";

/** One thing asked for. A page holds it when it holds all the words, or the formula. */
export interface Term {
  /** In words: "sulfate", "copper(II) sulfate". */
  says: string;
  /** As a formula is printed: "SO₄". */
  formula?: Meaning;
}

const RAISED_AND_LOWERED = "₀₁₂₃₄₅₆₇₈₉⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻−";
const PLAIN = "01234567890123456789+--";

/**
 * The things a question asks for.
 *
 * @example termsOf("the test for SO4 2-") // [{ says: "sulfate", formula: { name: "sulfate", printed: "SO₄" } }]
 */
export function termsOf(question: string): Term[] {
  const typed = question.replace(/[₀-₉⁰¹²³⁴-⁹⁺⁻−]/g, (sign) => PLAIN[RAISED_AND_LOWERED.indexOf(sign)]);
  // A charge that stands apart belongs to the word before it, "SO4 2-"; so does one written sign first, "SO4-2".
  const joined = typed
    .replace(/([\w)\]]) (?=\^?\d?[+-](?:\s|$))/g, "$1^")
    .replace(/\^\^/g, "^")
    .replace(/([A-Za-z)\]]\d?)\^?([+-])(\d)(?=\s|$)/g, "$1^$3$2");
  const alone = !/\s/.test(joined.trim());
  const terms: Term[] = [];
  const words: string[] = [];
  for (const raw of joined.trim().split(/\s+/)) {
    const word = raw.replace(/[,;:?!]+$|\.$/, "");
    // "I", "K" and "In" in a sentence are no formulas.
    const formula = word.length > 2 || /[\d+-]/.test(word) || alone ? meaningOf(word) : undefined;
    if (formula) terms.push({ says: formula.name, formula });
    else words.push(word.toLowerCase());
  }
  const ours = ourSpelling(words.join(" "));
  const plain = ours.split(" ").filter((word) => wordsOf(word).length > 0 && !isFiller(word));
  // A name alone finds what its formula finds, and the other way round.
  const formula = terms.length === 0 && plain.length === 1 ? meaningOfName(plain[0]) : undefined;
  return formula ? [{ says: formula.name, formula }] : [...terms, ...plain.map((says) => ({ says }))];
}

/** Combinations of name and formula that are asked of the index; more than so many would take a reader who types a list of formulas. */
const MOST_WORDINGS = 8;

/** The questions to put to the index: each formula once by its name and once as it is printed. */
export function wordingsOf(terms: readonly Term[]): string[] {
  const wordings = terms.reduce<string[]>(
    (before, { says, formula }) =>
      [says, ...(formula?.printed ? [formula.printed] : [])]
        .flatMap((one) => before.map((text) => `${text} ${one}`.trim()))
        // Cut at every term: their number would double with each formula that is typed.
        .slice(0, MOST_WORDINGS),
    [""],
  );
  return wordings.filter((text) => text !== "");
}

/** The words of a text, in small letters; marks between them go. */
export function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** A word begins with another, an ending of grammar left aside. */
const begins = (own: string, word: string) =>
  own.startsWith(word.length > 4 ? word.replace(/(?:ing|ed|es|s)$/, "") : word);

/** The page holds everything that was asked for. The index itself falls back to beginnings of words it does not know: "asdf" would find "as". */
export function holds(text: string, terms: readonly Term[]): boolean {
  const own = wordsOf(text);
  return terms.every(({ says, formula }) => {
    if (formula?.printed && prints(text, formula)) return true;
    return wordsOf(says).every((word) => own.some((one) => begins(one, word)));
  });
}

/** No more of the same formula may follow; a molecule stands alone, without a charge too. No lookbehind: old tablets lack it. */
function prints(text: string, { printed = "", whole }: Meaning): boolean {
  const safe = printed.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const pattern = whole ? `(?:^|[^A-Za-z₀-₉)\\]])${safe}(?![A-Za-z₀-₉⁰-⁹⁺⁻[])` : `${safe}(?![a-z₀-₉])`;
  return new RegExp(pattern).test(text);
}
