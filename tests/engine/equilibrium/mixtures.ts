/** Random mixtures of bench stocks, and the books kept of an equilibrium: what it holds of every component, and its charge. */
import fc from "fast-check";
import type { EquilibriumResult } from "../../../src/engine/equilibrium/solve.ts";
import { compileDatabase } from "../../../src/engine/equilibrium/species.ts";
import reference from "../../reference/equilibrium-open.json";

/** Component amounts of one mole of each stock, from the reference (tests/reference/README.md). */
const stocks: Record<string, Record<string, number>> = reference.stockComposition;

/** One stock with its amount, mol to 1 kg of water. */
export type Portion = [stock: string, mol: number];

/** log10 of the least and of the most of a stock, mol/kg. */
const LEAST = -4;
const MOST = Math.log10(2);

const portion = fc.tuple(
  fc.constantFrom(...Object.keys(stocks)),
  fc.double({ min: LEAST, max: MOST, noNaN: true }).map((log): number => 10 ** log),
);
const mixture = fc.uniqueArray(portion, { minLength: 1, maxLength: 5, selector: ([stock]) => stock });

/** Half of them evenly spread, half leaning to equal amounts and to the ends, where equivalence points lie. */
export const mixtures = fc.oneof(mixture, fc.noBias(mixture));

/** Component totals, mol. */
export function totalsOf(portions: readonly Portion[]): Record<string, number> {
  const totals: Record<string, number> = {};
  for (const [stock, mol] of portions) {
    for (const [component, count] of Object.entries(stocks[stock])) {
      totals[component] = (totals[component] ?? 0) + count * mol;
    }
  }
  return totals;
}

export const database = compileDatabase();
export const entries = new Map([...database.species, ...database.phases].map((entry) => [entry.id, entry]));

/** kg of water in a mole, as the reference runs had it (IUPAC masses). */
const WATER_KG_PER_MOL = 0.01801528;

/** mol of every component (and of water) in all species and phases, and the sum of the sizes of what was added up. */
export function heldIn(result: EquilibriumResult): { mol: Record<string, number>; size: Record<string, number> } {
  const mol: Record<string, number> = { H2O: result.waterKg / WATER_KG_PER_MOL };
  const size: Record<string, number> = { H2O: result.waterKg / WATER_KG_PER_MOL };
  const add = (component: string, amount: number) => {
    mol[component] = (mol[component] ?? 0) + amount;
    size[component] = (size[component] ?? 0) + Math.abs(amount);
  };
  const count = (id: string, amount: number) => {
    const entry = entries.get(id);
    if (!entry) throw new Error(`${id} is in no row`);
    for (const [index, moles] of entry.nu) add(database.components[index].id, moles * amount);
    add("H2O", entry.water * amount);
  };
  for (const [id, molality] of result.molality) count(id, molality * result.waterKg);
  for (const [id, amount] of result.phases) count(id, amount);
  return { mol, size };
}

/** Water put in, mol. */
export const waterGiven = (totals: Record<string, number>): number => 1 / WATER_KG_PER_MOL + (totals.H2O ?? 0);

/** Sum of z m relative to the sum of |z| m. */
export function chargeLeft(result: EquilibriumResult): number {
  let sum = 0;
  let size = 0;
  for (const [id, molality] of result.molality) {
    const z = entries.get(id)?.charge ?? Number.NaN;
    sum += z * molality;
    size += Math.abs(z) * molality;
  }
  return Math.abs(sum) / size;
}
