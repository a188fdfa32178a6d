/** The oxides of a metal, from the constants. */
import { SUBSTANCES } from "../../constants/thermochemistry/index.ts";
import { parseFormula } from "../../formula/parse.ts";
import { saltOf } from "../salt.ts";

export interface MetalOxide {
  formula: string;
  metal: string;
  /** Atoms of oxygen for each atom of metal; 0 for the metal itself. */
  oxygen: number;
}

const NOT_METALS: readonly string[] = ["H", "C", "N", "S", "Cl", "Br", "I"];

const series: readonly MetalOxide[] = SUBSTANCES.flatMap(({ formula, state }) => {
  const found = state === "s" ? oxideFrom(formula) : undefined;
  return found === undefined ? [] : [found];
});

/** Reads an oxide of one metal, or a metal; undefined for anything else. */
export function oxideFrom(formula: string): MetalOxide | undefined {
  const { O: oxygen = 0, ...others } = parseFormula(formula).elements;
  const [metal, more] = Object.entries(others);
  if (metal === undefined || more !== undefined || NOT_METALS.includes(metal[0])) return undefined;
  return { formula, metal: metal[0], oxygen: oxygen / metal[1] };
}

/** The oxide with the metal as it is in the ion. */
export const oxideOf = (cation: string): string => saltOf(cation, "O^2-").formula;

export const metalOf = (cation: string): string => cation.replace(/(\^\d+)?\+$/, "");

/** Oxides of the ion's metal with more oxygen than its own oxide. */
export const higherOxides = (cation: string): string[] => {
  const own = oxideFrom(oxideOf(cation))?.oxygen ?? 0;
  return series.filter(({ metal, oxygen }) => metal === metalOf(cation) && oxygen > own).map(({ formula }) => formula);
};

/** Oxides with less oxygen, and the metal when it has a row. */
export const lowerOxides = ({ metal, oxygen }: MetalOxide): string[] =>
  series.filter((other) => other.metal === metal && other.oxygen < oxygen).map(({ formula }) => formula);

/** The metal itself when it has a row: then it may be what is left. */
export const freeMetal = (cation: string): string[] =>
  series.filter(({ metal, oxygen }) => metal === metalOf(cation) && oxygen === 0).map(({ formula }) => formula);
