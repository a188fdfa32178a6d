/** A question as it was probably meant: each word that no page is called by is put right by the nearest one that is. */
import { wordsOf } from "./terms.ts";

/** Words shorter than this are left as they are: too many others lie near. */
const SHORTEST = 4;
/** Slips of the finger that are put right: one in a short word, two in a long one. */
const slips = (word: string): number => (word.length < 8 ? 1 : 2);

/** The words of the names of pages, ions and reagents, each once. */
export const wordsKnown = (names: readonly string[]): string[] => [
  ...new Set(names.flatMap(wordsOf).filter((word) => word.length >= SHORTEST)),
];

/**
 * @param question as typed
 * @returns undefined where there is nothing to put right, or nothing near
 * @example nearest("silver nitrat", ["silver", "nitrate"]) // "silver nitrate"
 */
export function nearest(question: string, known: readonly string[]): string | undefined {
  const words = question.toLowerCase().replace(/sulph/g, "sulf").split(/\s+/);
  const meant = words.map((word) => {
    if (word.length < SHORTEST || /[^\p{L}]/u.test(word) || known.includes(word)) return word;
    const near = known
      .map((one) => ({ one, far: distance(word, one, slips(word)) }))
      .filter(({ far }) => far <= slips(word))
      .toSorted((a, b) => a.far - b.far);
    return near[0]?.one ?? word;
  });
  const text = meant.join(" ");
  return text === words.join(" ") ? undefined : text;
}

/** Letters to put in, leave out, change or exchange with their neighbour (optimal string alignment); more than `most` is not counted out. */
function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = last[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      row[j] = Math.min(last[j] + 1, row[j - 1] + 1, changed);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        row[j] = Math.min(row[j], before[j - 2] + 1);
    }
    before = last;
    last = row;
  }
  return last[b.length];
}
