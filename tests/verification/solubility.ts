/** Solubility of single salts in pure water against handbook figures: an excess of the solid is stirred with 1 kg of water, shut off from the air. */
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { compileDatabase } from "../../src/engine/equilibrium/species.ts";
import { molarMass } from "../../src/engine/formula/molar-mass.ts";
import { parseFormula } from "../../src/engine/formula/parse.ts";
import { type Comparison, comparison } from "./comparison.ts";
import { reference } from "./reference.ts";

interface HandbookSolubility {
  id: string;
  /** The solid of the constants. */
  solid: string;
  /** The formula the figure is given for, without water of crystallisation where the handbook counts it so. */
  as: string;
  /** g of it in 100 g of water. */
  g: number;
  celsius: number;
  /** The constant was itself calculated from a handbook solubility. */
  derived?: true;
}

export const handbook = reference<{ rows: HandbookSolubility[] }>("solubilities.json").rows;

/** Reasons for the salts that disagree. */
export const solubilityDifferences = reference<Record<string, string>>("known-differences-solubility.json");

/** Largest difference from the handbook, as a share of its figure. */
const TOLERANCE = 0.1;

/** So much more of the solid is given than the handbook dissolves. */
const EXCESS = 10;

const database = compileDatabase();
const solve = createSolver(database);

/**
 * g of `as` that 100 g of water hold beside the solid, at a temperature.
 * @param roughly g in 100 g of water: ten times that is given, or more where all of it would dissolve
 * @throws RangeError for a solid the constants do not hold, and Error where no equilibrium is found
 */
export function solubility(solid: string, as: string, celsius: number, roughly: number): number {
  const phase = database.phases.find(({ id }) => id === solid);
  if (!phase) throw new RangeError(`${solid} is no solid of the constants: name one that stands first in a solid row`);
  const mass = molarMass(parseFormula(as));
  for (let given = (EXCESS * roughly * 10) / mass; ; given *= EXCESS) {
    const totals: Record<string, number> = { H2O: phase.water * given };
    for (const [component, moles] of phase.nu) totals[database.components[component].id] = moles * given;
    const found = solve({ totals, waterKg: 1 }, { celsius, alsoAllowed: [solid] });
    if (!found.converged) throw new Error(`${solid} in water: ${found.reason}`);
    const left = found.phases.get(solid) ?? 0;
    if (left > 0) return ((given - left) * mass) / found.waterKg / 10;
  }
}

export function compareSolubility(): Comparison {
  const derived = handbook.filter((row) => row.derived).length;
  const result = comparison(
    "solubility of salts in water, within 10 %",
    `tests/reference/solubilities.json (CRC Handbook, from memory); the constants of ${derived} come from a handbook solubility themselves`,
  );
  for (const { id, solid, as, g, celsius } of handbook) {
    result.compared++;
    const found = solubility(solid, as, celsius, g);
    if (Math.abs(found / g - 1) <= TOLERANCE) {
      result.agreed++;
      continue;
    }
    const reason = solubilityDifferences[id];
    result.misses.push({
      id,
      difference: `${found.toPrecision(2)} g in 100 g of water at ${celsius} C where the handbook has ${g}`,
      ...(reason === undefined ? {} : { reason }),
    });
  }
  return result;
}
