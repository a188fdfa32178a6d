/** Sentences an author adds beside a part or at the end: plain text, with formulas in mhchem notation. */
import * as z from "zod/mini";
import { FormulaError, parseFormula } from "../formula/parse.ts";
import { describe } from "./quantity.ts";

/** Long enough for a reason, short enough for a margin. */
const LENGTH = { least: 20, most: 400 } as const;

const MARKUP = /[*_`<>]|\]\(/;
/** A word with a charge, or a capital with figures after it: meant as a formula. A sample's letter, "X1", is none. */
const MEANT = /\^|^[[(]*[A-Z][A-Za-z()]*\d/;
const SAMPLE = /^[A-Z]\d?$/;

export const authorText = z
  .string({ error: (issue) => `found ${describe(issue.input)}, expected a sentence or two` })
  .check(
    z.minLength(LENGTH.least, { error: `expected a sentence, of at least ${LENGTH.least} characters` }),
    z.maxLength(LENGTH.most, { error: `expected at most ${LENGTH.most} characters: a margin is narrow` }),
    z.refine((text) => !MARKUP.test(text), {
      error: "found Markdown or HTML, expected plain text; a formula is written SO4^2- and needs no tag",
    }),
    z.refine((text) => unreadable(text) === undefined, { error: (issue) => unreadable(String(issue.input)) }),
  );

/** What is wrong with the first word that is meant as a formula but cannot be read. */
function unreadable(text: string): string | undefined {
  for (const word of text.split(/[\s,;:]+/)) {
    const bare = word.replace(/[.?!]+$/, "").replace(/^\((.*)\)$/, "$1");
    if (!MEANT.test(bare) || SAMPLE.test(bare)) continue;
    try {
      parseFormula(bare);
    } catch (error) {
      if (error instanceof FormulaError) return error.message;
      throw error;
    }
  }
  return undefined;
}
