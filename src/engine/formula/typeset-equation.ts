// Apart from the formulas: most pages with an island typeset no equation there.
import { toHtml, toUnicode } from "./typeset.ts";

const COEFFICIENT = /^(?:\d+\/\d+|\d+(?:\.\d+)?)/;

/** A whole equation: coefficients kept, ` -> ` and ` = ` as an arrow. */
export function equationToUnicode(equation: string): string {
  return typesetEquation(equation, toUnicode);
}

/** A whole equation as HTML: coefficients kept, ` -> ` and ` = ` as an arrow. */
export function equationToHtml(equation: string): string {
  return typesetEquation(equation, toHtml);
}

function typesetEquation(equation: string, typeset: (formula: string) => string): string {
  return equation
    .replace(/, ?[^(),]*\)/g, ")") // the form of a solid may hold spaces, and the words are parted at spaces next
    .split(" ")
    .map((word) => {
      if (word === "->" || word === "=") return "→";
      const coefficient = COEFFICIENT.exec(word)?.[0] ?? "";
      return coefficient + typeset(word.slice(coefficient.length));
    })
    .join(" ");
}
