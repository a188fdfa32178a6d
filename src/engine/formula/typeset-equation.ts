// Apart from the formulas: most pages with an island typeset no equation there.
import { toHtml } from "./typeset.ts";

const COEFFICIENT = /^(?:\d+\/\d+|\d+(?:\.\d+)?)/;

/** A whole equation as HTML: coefficients kept, ` -> ` and ` = ` as an arrow. */
export function equationToHtml(equation: string): string {
  return equation
    .replace(/, ?[^(),]*\)/g, ")") // the form of a solid may hold spaces, and the words are parted at spaces next
    .split(" ")
    .map((word) => {
      if (word === "->" || word === "=") return "→";
      const coefficient = COEFFICIENT.exec(word)?.[0] ?? "";
      return coefficient + toHtml(word.slice(coefficient.length));
    })
    .join(" ");
}
