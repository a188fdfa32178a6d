/** Salts of one cation and one anion: their formula from the charges, and back. */
import { ANIONS, CATIONS } from "../constants/ions.ts";
import { parseFormula } from "../formula/parse.ts";

/** What a sample may hold: a salt, a double salt or a mixture of salts. */
export interface Content {
  /** mhchem, without water of crystallisation; the salts of a mixture joined by " + ". */
  formula: string;
  cations: string[];
  anions: string[];
  /** Number of each ion in one formula unit; of a mixture, in one of each salt. */
  ions: Record<string, number>;
}

export interface SimpleSalt extends Content {
  cation: string;
  anion: string;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** The salt of two ions: `saltOf("Al^3+", "SO4^2-").formula === "Al2(SO4)3"`. */
export function saltOf(cation: string, anion: string): SimpleSalt {
  const plus = parseFormula(cation).charge;
  const minus = -parseFormula(anion).charge;
  const divisor = commonDivisor(plus, minus);
  const cations = minus / divisor;
  const anions = plus / divisor;
  return {
    formula: part(cation, cations) + part(anion, anions),
    cation,
    anion,
    cations: [cation],
    anions: [anion],
    ions: { [cation]: cations, [anion]: anions },
  };
}

/** An ion within a formula: without its charge, in brackets when several of a group. */
function part(ion: string, count: number): string {
  const bare = ion.replace(/(\^\d+)?[+-]$/, "");
  if (count === 1) return bare;
  const oneElement = /^[A-Z][a-z]?$/.test(bare);
  return oneElement ? `${bare}${count}` : `(${bare})${count}`;
}

/** A formula without its water of crystallisation. */
export const withoutWater = (formula: string): string => formula.replace(/[*.]\d*(\.\d+)?H2O$/, "");

/** The ions of a formula such as "CuSO4*5H2O", or undefined when it is not a salt of one known cation and one known anion. */
export function ionsOf(formula: string): SimpleSalt | undefined {
  const wanted = parseFormula(withoutWater(formula)).elements;
  for (const cation of CATIONS) {
    for (const anion of ANIONS) {
      const salt = saltOf(cation, anion);
      if (sameAtoms(parseFormula(salt.formula).elements, wanted)) return salt;
    }
  }
  return undefined;
}

function sameAtoms(a: Readonly<Record<string, number>>, b: Readonly<Record<string, number>>): boolean {
  const elements = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...elements].every((element) => a[element] === b[element]);
}
