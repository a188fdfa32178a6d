/** An instruction cut into what is done one after the other: sentences, and in each the stretches that begin with a verb. */

/** A sentence, with the letter or figure that stands before it on the paper. */
export interface Sentence {
  /** As pasted, without its mark. */
  words: string;
  /** "(b)" begins a part, "(ii)" a line of the record. */
  mark?: { part?: string; line?: true };
}

/** Shortened words whose full stop ends no sentence. */
const SHORTENED = /\b(approx|conc|dil|aq|soln|ppt|temp|vol|min|mins|sec|secs|ca|e\.g|i\.e)\.(?=\s)/gi;

const ROMAN = "i{1,3}|iv|v|vi{1,3}|ix|x";
const MARK = new RegExp(`^\\s*(?:\\(?([a-hj-u])[).:]|\\(?(\\d{1,2})[).:])?\\s*(?:\\(?(${ROMAN})[).:])?\\s*`, "i");

/** Sentences in their order; empty ones are left out. */
export function sentencesOf(text: string): Sentence[] {
  return text
    .replace(SHORTENED, "$1")
    .split(/(?<=[.;!?])\s+|\n+/)
    .flatMap((piece): Sentence[] => {
      const marked = MARK.exec(piece);
      const [whole = "", letter, figure, line] = marked ?? [];
      const words = piece.slice(whole.length).replace(/\s+/g, " ").trim();
      if (!/[a-z]/i.test(words)) return [];
      const mark = {
        ...((letter ?? figure) && { part: (letter ?? figure ?? "").toLowerCase() }),
        ...(line && { line: true as const }),
      };
      return [{ words, ...((mark.part || mark.line) && { mark }) }];
    });
}

/** Words that begin something done, or something only looked at. */
const VERBS = [
  "take|place|put|pour|transfer|measure|dissolve|add|acidify|neutralise|neutralize",
  "warm|heat|boil|bring|cool|allow|leave|let|stand|continue|carry on|go on",
  "divide|split|filter|centrifuge|decant|wash|rinse|collect|keep|discard|shake|stir|mix|swirl",
  "test(?![- ]?tube)|identify|confirm|pass|bubble|lead|hold|insert|dip|touch|carry out|perform|do|use|repeat",
  "observe|note|record|describe|state|write|compare|look|followed by|in excess|until",
].join("|");
const ADVERB = "(?:(?:gently|carefully|slowly|cautiously|strongly|gradually|immediately|now|again|further|more) )?";
/** A verb begins a stretch at the start, after a comma or "and", "then", "before"; "add" after "To 1 cm3 of K" as well. */
/** "heat it, testing the gas with a splint", "heat it using a splint to test the gas". */
const TESTING =
  "testing(?=[^.]{0,60}\\b(?:gas|gases|vapours?|fumes)\\b)|using(?=[^.]{0,60}\\bto (?:test|identify) (?:the|any|for)\\b)";
const HEAD = new RegExp(
  `(?:^|,|:|\\b(?:and|then|before|when)\\b)\\s*(?:(?:and|then|to)\\s+){0,2}(${ADVERB}(?:${VERBS})\\b)|(?<!\\b(?:not|never|don't|without|continue to|go on to))\\s(add\\b)(?=\\s(?!to\\b))|(?<!\\b(?:by|of|for|when|before|after|without))[\\s,]((?:${TESTING})\\b)`,
  "gi",
);

/** The stretches of a sentence, as they stand in it. */
export function stretchesOf(words: string): string[] {
  const cuts = new Set<number>([0]);
  for (const match of words.matchAll(HEAD)) {
    const head = match[1] ?? match[2] ?? match[3] ?? "";
    cuts.add(match.index + match[0].length - head.length);
  }
  const from = [...cuts].sort((a, b) => a - b);
  return from
    .map((start, index) => words.slice(start, from[index + 1]))
    .map((piece) =>
      piece.replace(/[\s,:]*(?:\b(?:and|then|before|when|while|to)\b[\s,]*)*$/i, "").replace(/^[\s,.;]+|[\s.;]+$/g, ""),
    )
    .filter((piece) => /[a-z]/i.test(piece));
}

/** The same words as patterns read them: lower case, British f, plain figures and units, no stress of the layout. */
export function readable(words: string): string {
  return words
    .toLowerCase()
    .replace(/[’‘]/g, "'")
    .replace(/sulph/g, "sulf")
    .replace(/aluminum/g, "aluminium")
    .replace(/deionized/g, "deionised")
    .replace(/[₀-₉]/g, (sign) => String(sign.charCodeAt(0) - 0x2080))
    .replace(/c(?:m\^3|m³|\.c\.)/g, "cm3")
    .replace(/dm\^3|dm³/g, "dm3")
    .replace(/dm\^?[-−]3|dm⁻³/g, "dm-3")
    .replace(/[–—−]/g, "-")
    .replace(/\btest[- ]tube/g, "tube")
    .replace(/\b(?:xs|exs)\b/g, "excess")
    .replace(/\bppte?\b/g, "precipitate")
    .replace(/\bsolns?\b/g, "solution")
    .replace(/\bconc\b/g, "concentrated")
    .replace(/\bdil\b/g, "dilute")
    .replace(/\baq\b(?!\))/g, "aqueous")
    .replace(/\b(?:keep|continue|carry on|go on) (?:to add|adding|with)\b(?: (?:it|them|more)\b)?/g, "add more")
    .replace(/\bacidified (?:aqueous |dilute |a solution of )/g, "acidified ")
    .replace(/\s+/g, " ")
    .trim();
}
