/** The samples a stretch names, and what it says of a portion of them. */
import { listed } from "../listed.ts";
import { amountOfSample } from "./how-much.ts";
import { nothing, type ReadStretch } from "./stretch.ts";

export const SAMPLE =
  /\b(?:solutions?|solids?|samples?|salts?|substances?|compounds?|unknowns?|portions?|crystals|powders?)\b(?! of (?:the )?(?:filtrate|residue))/;
/** Letters of samples: "K", "F, G and H", "X1"; a letter that is a word or an element in a formula stands alone only after such a word. */
const LETTERS = /(?<![\w(]|[°º] ?)([A-Z][0-9]?)(?![\w)'^+\-(])/g;

export function lettersIn(words: string): string[] {
  // An article begins a sentence; after "solid" or "and" the same letter is a sample.
  const plain = words.replace(/^\W*A(?= [a-z])/, "");
  return [...new Set([...plain.matchAll(LETTERS)].map(([, letter]) => letter))];
}

/** A tube begins with one sample. */
export const mixedWithOneAnother = (letters: readonly string[]): ReadStretch => ({
  ...nothing(),
  questions: [
    `${listed(letters, "and")} are mixed with one another, and a tube here begins with one sample: enter the test by hand, or leave it out.`,
  ],
});

/** Which of the two a filtration leaves is spoken of. */
export const keptIn = (text: string): "filtrate" | "residue" | undefined =>
  /\bfiltrate\b/.test(text) ? "filtrate" : /\bresidue\b/.test(text) ? "residue" : undefined;

/** A portion that is taken anew, by what is said of it. */
export const PORTIONED =
  /\bcm3\b|\bml\b|\b\d+(?:\.\d+)? ?m?g\b|\bspatula|\bportion|\bdrops? of\b|\bdepth\b|\ba little\b|\bcrystals/;

/** What is in the tube already. */
export const IN_TUBE = /\b(?:mixture|filtrate|residue|resulting|precipitate|product)\b|\bfrom (?:part |test |step )?\(/;

/** "to 1 cm3 of solution K", up to what is said of the reagent again; in "1 to 2 cm3" nothing is taken of. */
export const OF_SAMPLE =
  /(?<!\b(?:\d|one|two|three|four|five|six) )\bto (?!excess\b|in excess\b)(?:(?!\b(?:to|until|in excess)\b)[^,])*?(?:\b(?:solutions?|solids?|samples?|salts?|substances?|compounds?|unknowns?|portions?|crystals|powders?|filtrate|residue|mixture|tubes?)\b(?: of)?(?: (?:the )?(?:solution|solid|filtrate|mixture))?(?: [a-z]\d?(?:(?:,| and) [a-z]\d?)*\b)?|(?:cm3|ml|drops?) of [a-z]\d?\b)/;

/** The sample in "add sodium hydroxide to 1 cm3 of solution K". */
export function sampleOf(text: string, words: string) {
  const at = text.search(/(?<!\b(?:\d|one|two|three|four|five|six) )\bto\b (?!excess)/);
  const rest = at < 0 ? "" : text.slice(at);
  const samples = at < 0 ? [] : lettersIn(words.slice(Math.max(0, words.search(/\bto\b /i))));
  if (
    !(SAMPLE.test(rest) || samples.length > 0) ||
    /\b(?:mixture|filtrate|residue|resulting|the (?:same )?(?:solution|tube))\b(?! [a-z]\b)|\bfrom (?:part |test |step )?\(/.test(
      rest,
    )
  )
    return undefined;
  const solid = /\bsolid|\bcrystals|\bpowder/.test(rest);
  return {
    amount: amountOfSample(rest, solid),
    takes: { samples, solid },
    isFresh: samples.length > 0 && PORTIONED.test(rest),
  };
}

/** Takes a portion before anything else is done. */
export function takeFirst(
  read: ReadStretch,
  { takes, amount }: Pick<NonNullable<ReturnType<typeof sampleOf>>, "takes" | "amount">,
): void {
  read.takes = takes;
  read.steps.push({ step: amount.entry });
  if (amount.assumed) read.assumed.push(amount.assumed);
}
