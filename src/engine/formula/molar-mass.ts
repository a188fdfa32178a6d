import { atomicWeights } from "../constants/atomic-weights.ts";
import { type Formula, parseFormula } from "./parse.ts";

/** An element for which the table of atomic weights holds no row. */
export class AtomicWeightError extends Error {
  readonly formula: string;
  readonly element: string;

  constructor(formula: string, element: string) {
    super(
      `No molar mass for "${formula}": the table of atomic weights has no row for ${element}. ` +
        "Add it to constants/atomic-weights.ts with its source.",
    );
    this.name = "AtomicWeightError";
    this.formula = formula;
    this.element = element;
  }
}

/**
 * Molar mass in g/mol from the abridged standard atomic weights (CIAAW 2021). The mass of electrons is neglected, so an
 * ion weighs as much as its atoms.
 *
 * @throws {FormulaError} for a formula that cannot be read, {AtomicWeightError} for an element without a row.
 * @example molarMass("CuSO4*5H2O") // 249.68...
 */
export function molarMass(formula: string | Formula): number {
  const { text, elements } = typeof formula === "string" ? parseFormula(formula) : formula;
  let mass = 0;
  for (const [element, count] of Object.entries(elements)) {
    const row = atomicWeights[element];
    if (row === undefined) throw new AtomicWeightError(text, element);
    mass += count * row.weight;
  }
  return mass;
}
