import { FormulaError } from "./formula-error.ts";
import { type Formula, parseFormula } from "./parse.ts";

export type Term = { readonly coefficient: number; readonly formula: Formula };

export type Equation = { readonly text: string; readonly left: readonly Term[]; readonly right: readonly Term[] };

export type Imbalance = {
  /** Atoms on the right minus atoms on the left; elements that agree are left out. */
  readonly elements: Readonly<Record<string, number>>;
  /** Charge on the right minus charge on the left. */
  readonly charge: number;
};

const SEPARATOR = / (?:=|->) /g;
const COEFFICIENT = /^(?:(\d+)\/(\d+)|(\d+(?:\.\d+)?)) */;

/** Below this, a difference of atoms or charge is rounding of fractional coefficients. */
const ROUNDING = 1e-9;

/**
 * Reads an equation in mhchem notation. The sides are parted by ` = ` or ` -> `, the terms by ` + ` (a space on either
 * side: a `+` that touches a formula is its charge). Coefficients are integers, decimals or fractions: `2`, `0.5`, `1/2`.
 *
 * @throws {FormulaError} with the position counted in the whole equation.
 * @example parseEquation("Ag+ + 2 NH3 = [Ag(NH3)2]+").left.map((term) => term.coefficient) // [1, 2]
 */
export function parseEquation(text: string): Equation {
  const arrows = [...text.matchAll(SEPARATOR)];
  if (arrows.length !== 1) {
    const second = arrows[1];
    const position = second === undefined ? text.length + 1 : second.index + 2;
    const found = second === undefined ? "the end" : `a second "${second[0].trim()}"`;
    throw new FormulaError(text, position, found, 'exactly one "=" or "->" with a space on either side');
  }
  const [arrow] = arrows;
  const rightStart = arrow.index + arrow[0].length;
  return {
    text,
    left: parseSide(text, 0, text.slice(0, arrow.index)),
    right: parseSide(text, rightStart, text.slice(rightStart)),
  };
}

/** What the right side has in excess of the left, in atoms and in charge. */
export function imbalance(equation: Equation): Imbalance {
  const elements: Record<string, number> = {};
  let charge = 0;
  for (const [side, sign] of [[equation.left, -1] as const, [equation.right, 1] as const]) {
    for (const { coefficient, formula } of side) {
      charge += sign * coefficient * formula.charge;
      for (const [symbol, n] of Object.entries(formula.elements)) {
        elements[symbol] = (elements[symbol] ?? 0) + sign * coefficient * n;
      }
    }
  }
  return {
    elements: Object.fromEntries(Object.entries(elements).filter(([, n]) => Math.abs(n) > ROUNDING)),
    charge: Math.abs(charge) > ROUNDING ? charge : 0,
  };
}

/** Whether atoms and charge agree on both sides. */
export function isBalanced(equation: Equation): boolean {
  const { elements, charge } = imbalance(equation);
  return charge === 0 && Object.keys(elements).length === 0;
}

function parseSide(whole: string, start: number, side: string): Term[] {
  let offset = start;
  return side.split(" + ").map((term) => {
    const termStart = offset + (term.length - term.trimStart().length);
    offset += term.length + " + ".length;
    return parseTerm(whole, termStart, term.trim());
  });
}

function parseTerm(whole: string, start: number, term: string): Term {
  const match = COEFFICIENT.exec(term);
  const coefficient = match === null ? 1 : coefficientValue(match);
  if (!Number.isFinite(coefficient) || coefficient <= 0) {
    throw new FormulaError(whole, start + 1, `"${match?.[0].trim()}"`, "a coefficient above 0");
  }
  const skipped = match?.[0].length ?? 0;
  try {
    return { coefficient, formula: parseFormula(term.slice(skipped)) };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    throw new FormulaError(whole, start + skipped + error.position, error.found, error.expected);
  }
}

function coefficientValue([, numerator, denominator, decimal]: RegExpExecArray): number {
  return decimal === undefined ? Number(numerator) / Number(denominator) : Number(decimal);
}
