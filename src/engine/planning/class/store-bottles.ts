/** The bottles of a store in which a salt is bought: one salt, with different water of crystallisation. */
import { nameOnBottle } from "#words/salts.ts";
import { withoutWater } from "../../bench/salt.ts";
import { ALSO_SOLD } from "../../constants/preparation.ts";
import { salts as store } from "../../constants/salts.ts";
import { molarMass } from "../../formula/molar-mass.ts";
import { parseFormula } from "../../formula/parse.ts";
import type { Choice } from "./supply.ts";

/** A labelled bottle: name and formula, water included. */
export interface StoreBottle {
  name: string;
  formula: string;
}

const atomsOf = (formula: string): string =>
  JSON.stringify(Object.entries(parseFormula(withoutWater(formula)).elements).sort(([a], [b]) => (a < b ? -1 : 1)));

/** Every bottle of the salt, the store's own first; a salt no store keeps comes back by its formula alone. */
export function bottlesOf(formula: string): StoreBottle[] {
  const atoms = atomsOf(formula);
  const found = [...store, ...ALSO_SOLD].filter(
    (row) => atomsOf(row.formula) === atoms || ("standsFor" in row && row.standsFor === formula),
  );
  const unique = found.filter((row, at) => found.findIndex((other) => other.formula === row.formula) === at);
  return unique.length > 0
    ? unique.map(({ name, formula }) => ({ name: nameOnBottle(formula, name), formula }))
    : [{ name: formula, formula }];
}

/** The bottle with exactly this formula. */
export const bottleNamed = (formula: string): StoreBottle =>
  bottlesOf(formula).find((one) => one.formula === formula) ?? { name: formula, formula };

/**
 * A bottle as what is weighed from it.
 *
 * @param molPerDm3 of the salt in the solution
 * @example weighed({ name: "silver nitrate", formula: "AgNO3" }, 0.05).perDm3 // 8.49 g
 */
export function weighed({ name, formula }: StoreBottle, molPerDm3: number): Choice {
  const gPerMol = molarMass(formula);
  return { what: name, formula, gPerMol, perDm3: molPerDm3 * gPerMol, unit: "g" };
}
