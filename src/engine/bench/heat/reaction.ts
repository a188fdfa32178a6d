/** Reactions of heated solids: written from the substances on either side, balanced by solving for the numbers of each. */
import { isBalanced, parseEquation } from "../../formula/equation.ts";
import { parseFormula } from "../../formula/parse.ts";

/** A substance with its state. Sulfur and iodine occur in both. */
export interface Substance {
  formula: string;
  state: "s" | "g";
}

export interface Share extends Substance {
  /** Whole number in the balanced equation. */
  count: number;
}

export interface HeatReaction {
  from: readonly Share[];
  to: readonly Share[];
  /** Balanced, mhchem with states. */
  equation: string;
}

export const solid = (formula: string): Substance => ({ formula, state: "s" });
export const gas = (formula: string): Substance => ({ formula, state: "g" });

/** Largest number tried for the least substance of an equation. */
const LARGEST = 60;
const ROUNDING = 1e-6;

/**
 * The reaction that turns the one side into the other, or undefined when the atoms do not allow one, leave a substance unused, or
 * allow more than one.
 *
 * @example reactionOf([solid("CaCO3")], [solid("CaO"), gas("CO2")])?.equation // "CaCO3(s) = CaO(s) + CO2(g)"
 */
export function reactionOf(from: readonly Substance[], to: readonly Substance[]): HeatReaction | undefined {
  const numbers = wholeNumbers(balance(from, to));
  if (numbers === undefined) return undefined;
  const counted = [...from, ...to].map((one, index): Share => ({ ...one, count: numbers[index] }));
  const left = counted.slice(0, from.length);
  const right = counted.slice(from.length);
  const equation = `${left.map(word).join(" + ")} = ${right.map(word).join(" + ")}`;
  if (!isBalanced(parseEquation(equation)))
    throw new Error(`Not balanced: "${equation}". This is a fault of reactionOf.`);
  return { from: left, to: right, equation };
}

const word = ({ formula, state, count }: Share): string => `${count === 1 ? "" : `${count} `}${formula}(${state})`;

/** The one direction in which all atoms cancel, by elimination; undefined when there is none or more than one. */
function balance(from: readonly Substance[], to: readonly Substance[]): number[] | undefined {
  const columns = [...from, ...to].map(({ formula }) => parseFormula(formula).elements);
  const elements = [...new Set(columns.flatMap((atoms) => Object.keys(atoms)))];
  const rows = elements.map((element) =>
    columns.map((atoms, index) => (atoms[element] ?? 0) * (index < from.length ? 1 : -1)),
  );
  const pivots: number[] = [];
  for (let column = 0; column < columns.length && pivots.length < rows.length; column++) {
    const at = rows.findIndex((row, index) => index >= pivots.length && Math.abs(row[column]) > ROUNDING);
    if (at < 0) continue;
    const place = pivots.length;
    [rows[place], rows[at]] = [rows[at], rows[place]];
    const scale = rows[place][column];
    rows[place] = rows[place].map((value) => value / scale);
    rows.forEach((row, index) => {
      if (index === place || row[column] === 0) return;
      const factor = row[column];
      rows[index] = row.map((value, each) => value - factor * rows[place][each]);
    });
    pivots.push(column);
  }
  if (pivots.length !== columns.length - 1) return undefined;
  const free = columns.findIndex((_, column) => !pivots.includes(column));
  const numbers = new Array<number>(columns.length).fill(0);
  numbers[free] = 1;
  pivots.forEach((column, index) => {
    numbers[column] = -rows[index][free];
  });
  return numbers;
}

function wholeNumbers(numbers: readonly number[] | undefined): number[] | undefined {
  if (numbers === undefined || numbers.some((value) => value < ROUNDING)) return undefined;
  const least = Math.min(...numbers);
  for (let factor = 1; factor <= LARGEST; factor++) {
    const scaled = numbers.map((value) => (value / least) * factor);
    if (scaled.every((value) => Math.abs(value - Math.round(value)) < ROUNDING * LARGEST))
      return scaled.map(Math.round);
  }
  return undefined;
}
