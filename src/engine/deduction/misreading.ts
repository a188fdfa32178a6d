/** How easily one sight is taken for another: which observation to repeat first. Common practice, no source. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Observation } from "../practical.ts";
import { SOMETHING_ELSE } from "./something-else.ts";

/** From the easiest slip to the least likely one. */
const SLIP = {
  /** None of the sights predicted there: it is to be repeated whatever else is. */
  unlisted: 0,
  /** The salt stands on the border at this test: a little more or less of something shows the other sight. */
  border: 1,
  /** Nothing but bubbles or a gas apart: missed when the paper is dry, late or not damp. */
  gas: 2,
  /** A precipitate that dissolves or not: too little was added, or it was not shaken. */
  fate: 3,
  /** Colours apart. */
  colour: 4,
  /** A precipitate where there should be none, or none where there should be one. */
  solid: 5,
} as const;

function slip(recorded: Observation, expected: Observation): number {
  if (Boolean(recorded.precipitate) !== Boolean(expected.precipitate)) return SLIP.solid;
  const [one, other] = [recorded.precipitate, expected.precipitate];
  if (one && other && one.colour !== other.colour) return SLIP.colour;
  if (recorded.flame !== expected.flame || recorded.indicator !== expected.indicator) return SLIP.colour;
  if (JSON.stringify(recorded.residue) !== JSON.stringify(expected.residue)) return SLIP.colour;
  if ((recorded.fate ?? "remains") !== (expected.fate ?? "remains")) return SLIP.fate;
  const gasApart =
    JSON.stringify(recorded.gas) !== JSON.stringify(expected.gas) || recorded.effervescence !== expected.effervescence;
  return gasApart ? SLIP.gas : SLIP.colour;
}

/**
 * How likely it is that at cell `c` reading `recorded` was written down where the salt in this row of the set would show `expected`: 0 is
 * the easiest slip.
 */
export function easeOf(
  { sets, cells }: PredictionTable,
  set: number,
  row: number,
  c: number,
  recorded: number,
  expected: number,
): number {
  if (recorded === SOMETHING_ELSE) return SLIP.unlisted;
  if (sets[set].atBorder.some(([r, cell]) => r === row && cell === c)) return SLIP.border;
  const { readings } = cells[c];
  return slip(readings[recorded], readings[expected]);
}
