/** Plain sentences that hold formulas in mhchem notation and units, made ready to print. */
import { toHtml, toUnicode } from "../engine/formula/typeset.ts";
import { withFigures } from "./figures.ts";

export { list } from "#words/language.ts";

/** Letters of samples such as "X1" look like formulas; these molecules with a 2 really are. */
const DIATOMIC = /^[HNOI]2$/;
const SAMPLE = /^[A-Z]\d?$/;
const FORMULA = /^[[(]?[A-Z][a-z]?[A-Za-z0-9()[\]^+*.-]*$/;
/** A hyphen that stands for the rest of a word is no charge: "Ammonium- und Eisen(II)-sulfat". No symbol has two small letters. */
const SUSPENDED = /[a-z]{2}.*-$/;
const HAS_FIGURES = /[\d^+)\]]|-$/;

/** Splits a word into brackets and stops around it and the word itself: "(BaSO4)." -> "(", "BaSO4", ")." */
function peel(word: string): [before: string, core: string, after: string] {
  const [, before, inner, stop] = /^(\(?)(.*?)([.?!]*)$/.exec(word) as RegExpExecArray;
  const wrapped = before + inner;
  const open = wrapped.split("(").length;
  const closed = wrapped.split(")").length;
  if (before && (open > closed || wrapped.endsWith(")"))) {
    return inner.endsWith(")") && open === closed ? [before, inner.slice(0, -1), `)${stop}`] : [before, inner, stop];
  }
  return closed > open ? ["", wrapped.slice(0, -1), `)${stop}`] : ["", wrapped, stop];
}

/** A number and its unit stay on one line. */
const UNIT = /(\d) (?=(?:[cd]m3|g|mm|mol|min|s|%)(?![\w²³]))/g;

function typeset(text: string, formula: (core: string) => string): string {
  return withFigures(text)
    .replace(UNIT, "$1\u00a0")
    .replace(/[^\s,;:"&]+/g, (word) => {
      const [before, core, after] = peel(word);
      if (/(?:^|\/)[cd]m\^?3$/.test(core)) return before + core.replace(/\^?3$/, "³") + after;
      const isFormula =
        FORMULA.test(core) &&
        HAS_FIGURES.test(core) &&
        !SUSPENDED.test(core) &&
        (!SAMPLE.test(core) || DIATOMIC.test(core));
      return isFormula ? before + formula(core) + after : word;
    });
}

/**
 * The sentence with Unicode sub- and superscripts for formulas, cm³ and dm³ for units, no break before them; all other words stay as they are.
 *
 * @example plain("7.8 g/dm3 of BaSO4.") // "7.8 g/dm³ of BaSO₄."
 */
export function plain(text: string): string {
  return typeset(text, toUnicode);
}

/** The same as HTML with `<sub>` and `<sup>`; everything else is escaped. */
export function rich(text: string): string {
  const safe = text.replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);
  return typeset(safe, (core) => `<span class="f">${toHtml(core)}</span>`);
}
