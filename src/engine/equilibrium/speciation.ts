/**
 * Molalities from activities: ln m = ln K + sum(nu y) + w ln a(water) - ln gamma. Charge and water enter like components: a species' row
 * holds nu, w and z^2/2 (or 1 when neutral), the potentials hold y, ln a(water) and what I makes of ln gamma, and ln m - ln K is their
 * product.
 */
import { davies, lnWaterActivity } from "./activity.ts";
import type { Balance, Iterate, Workspace } from "./iterate.ts";
import type { SparseRows, System } from "./system.ts";

const LN10 = Math.LN10;
/** ln of how many times smaller than its bound a species may be before it counts for nothing: below the precision of a double. */
const NEGLIGIBLE = 37;
/** Largest ln molality that is taken at its word, so that sums stay finite. */
const LARGEST_LN = 50;

/** Row `i` times a vector. */
export function rowTimes({ start, column, value }: SparseRows, i: number, vector: Float64Array): number {
  let sum = 0;
  for (let k = start[i], end = start[i + 1]; k < end; k++) sum += value[k] * vector[column[k]];
  return sum;
}

/** Potentials of all columns at the iterate. */
export function evaluatePotentials(system: System, balance: Balance, at: Iterate, { potentials }: Workspace): void {
  const { f, neutral } = davies(at.ionicStrength, balance.cap);
  potentials.set(at.y);
  potentials[system.ionic] = 2 * LN10 * balance.daviesA * f;
  potentials[system.water] = lnWaterActivity(at.solutes);
  potentials[system.neutral] = -LN10 * neutral;
}

/** ln molality of every species at the iterate. */
export function evaluateSpecies(system: System, balance: Balance, at: Iterate, work: Workspace): void {
  evaluatePotentials(system, balance, at, work);
  const { speciesRows, speciesLnK } = system;
  for (let i = 0; i < speciesLnK.length; i++) {
    at.lnM[i] = speciesLnK[i] + rowTimes(speciesRows, i, work.potentials);
  }
}

/**
 * Sums up what the species hold, after `evaluateSpecies`; returns the total molality. What could not change any balance in the last digit
 * is left out; its molality stands in `lnM` all the same.
 */
export function sumSpecies(system: System, balance: Balance, at: Iterate, work: Workspace): number {
  const { start, column, value } = system.speciesRows;
  const { molality, sums, sizes } = work;
  sums.fill(0);
  sizes.fill(0);
  let total = 0;
  for (let i = 0; i < molality.length; i++) {
    const ln = at.lnM[i];
    if (ln < balance.lnBound[i] - NEGLIGIBLE) {
      molality[i] = 0;
      continue;
    }
    const m = Math.exp(Math.min(ln, LARGEST_LN));
    molality[i] = m;
    total += m;
    for (let k = start[i], end = start[i + 1]; k < end; k++) {
      const part = value[k] * m;
      sums[column[k]] += part;
      sizes[column[k]] += Math.abs(part);
    }
  }
  return total;
}

/** Sums of products of columns over the species, after `sumSpecies`: how the sums answer to the potentials. */
export function sumProducts(system: System, { molality, moments }: Workspace): void {
  const { start, column, value } = system.speciesProducts;
  moments.fill(0);
  for (let i = 0; i < molality.length; i++) {
    const m = molality[i];
    if (m === 0) continue;
    for (let k = start[i], end = start[i + 1]; k < end; k++) moments[column[k]] += value[k] * m;
  }
}
