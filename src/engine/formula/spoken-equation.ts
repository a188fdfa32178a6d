/** Equations as one reads them aloud, for listeners: a screen reader says "Zn2" for a charge as it does for a count. */

const STATES: Readonly<Record<string, string>> = { aq: "aqueous", s: "solid", l: "liquid", g: "gas" };
const BRACKETS: Readonly<Record<string, string>> = {
  "(": "open bracket",
  ")": "close bracket",
  "[": "open square bracket",
  "]": "close square bracket",
};

/** In order: a state, with a form or without; a charge at the end; water of crystallisation; a number, a symbol, a bracket. */
const PARTS =
  /\((aq|s|l|g)(?:, ?[^()]*)?\)$|(?:\^(\d*))?([+-])(?=$|\((?:aq|s|l|g)\b)|([*.])(?=\d*[A-Z([])|\d+(?:\/\d+|\.\d+)?|[A-Z][a-z]?|[()[\]]|\S/g;

/**
 * A whole equation in words and symbols. "and" joins the terms, because "plus" is already the word for a charge.
 *
 * @example spokenEquation("Ag+(aq) + Cl-(aq) -> AgCl(s)")
 *   // "Ag plus, aqueous, and Cl minus, aqueous, gives Ag Cl, solid"
 */
export function spokenEquation(equation: string): string {
  return equation
    .replace(/, ?[^(),]*\)/g, ")") // the form of a solid may hold spaces, and the words are parted at spaces next
    .split(" ")
    .filter((word) => word !== "")
    .map((word) => {
      if (word === "+") return "and";
      return word === "->" || word === "=" ? "gives" : spokenFormula(word);
    })
    .join(" ")
    .replace(/,$/, "");
}

function spokenFormula(formula: string): string {
  let spoken = "";
  for (const [part, state, size, sign, dot] of formula.matchAll(PARTS)) {
    if (state !== undefined) spoken += `, ${STATES[state]},`;
    else if (sign !== undefined) spoken += spokenCharge(size, sign, /\d$/.test(spoken));
    else if (dot !== undefined) spoken += " dot";
    else spoken += ` ${BRACKETS[part] ?? part}`;
  }
  return spoken.trim();
}

/** Set off by a comma where it could be taken for, or with, the count before it: "S O 4, 2 minus". */
function spokenCharge(size: string | undefined, sign: string, afterCount: boolean): string {
  const word = sign === "+" ? "plus" : "minus";
  if (size) return `, ${size} ${word}`;
  return `${afterCount ? "," : ""} ${word}`;
}
