/** A stretch of text as it is to be drawn. */
export interface Stretch {
  text: string;
  /** The element it stands in; plain text without one. */
  as?: "sub" | "sup";
}

const SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";
const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻";

/**
 * Takes the figures of formulas apart, for not every system has a font with a raised minus.
 *
 * @example stretchesOf("SO₄²⁻;") // "SO", "4" (sub), "2−" (sup), ";"
 */
export function stretchesOf(text: string): Stretch[] {
  return [...text.matchAll(/[₀-₉]+|[⁰¹²³⁴-⁹⁺⁻]+|[^₀-₉⁰¹²³⁴-⁹⁺⁻]+/g)].map(([run]) => {
    if (SUBSCRIPTS.includes(run[0])) return { text: plain(run, SUBSCRIPTS, "0123456789"), as: "sub" };
    if (SUPERSCRIPTS.includes(run[0])) return { text: plain(run, SUPERSCRIPTS, "0123456789+\u2212"), as: "sup" };
    return { text: run };
  });
}

const plain = (run: string, from: string, to: string) => [...run].map((sign) => to[from.indexOf(sign)]).join("");
