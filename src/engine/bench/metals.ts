/** Which metals a species or solid holds. */
import { CATIONS } from "../constants/ions.ts";
import { parseFormula } from "../formula/parse.ts";

const NOT_METALS = ["N", "H"];
const METALS: ReadonlySet<string> = new Set(
  CATIONS.flatMap((cation) => Object.keys(parseFormula(cation).elements)).filter(
    (symbol) => !NOT_METALS.includes(symbol),
  ),
);

/** What was read so far: every test asks of the same few substances. */
const read = new Map<string, readonly string[]>();

/**
 * Symbols of the metals among the cations that a species or solid is made of.
 * @throws FormulaError for what is no formula
 */
export function metalsOf(id: string): readonly string[] {
  const before = read.get(id);
  if (before) return before;
  const found = Object.keys(parseFormula(id).elements).filter((symbol) => METALS.has(symbol));
  read.set(id, found);
  return found;
}
