/** What can be said of the mixtures between two that have been solved, without solving them. */
import type { EquilibriumResult } from "./problem.ts";
import type { System } from "./system.ts";

/**
 * Whether two mixtures of the same components and temperature hold the same phases, and no other solid nor any of the gases forms on the
 * way from one to the other, when the activity of each component stays between its values in the two: then no ion product is larger on
 * the way than with the largest activity of each component it holds and the smallest of each it has taken off. That the activities do
 * stay between is an assumption, not a theorem: on the way across a neutral point, or where a complex comes and goes, one may pass its
 * values at both ends. The caller's margin allows for some of that; what it costs is measured at the bench, not proved.
 *
 * @param gasesAtm the gases that count, each at the partial pressure that counts
 * @param margin how far below saturation (log10) that largest ion product must stay
 * @returns false where nothing can be said: other components, another temperature, other phases
 */
export function nothingForms(
  one: EquilibriumResult,
  other: EquilibriumResult,
  gasesAtm: Readonly<Record<string, number>>,
  margin: number,
): boolean {
  const { system } = one.start;
  if (other.start.system !== system || one.phases.size !== other.phases.size) return false;
  for (const id of one.phases.keys()) if (!other.phases.has(id)) return false;
  const { phases, formsInMinutes, phaseLnK } = system;
  for (let p = 0; p < phases.length; p++) {
    const atm = formsInMinutes[p] === 1 ? 1 : gasesAtm[phases[p].id];
    if (atm === undefined || one.phases.has(phases[p].id)) continue;
    const most = largestProduct(system, p, one, other) - phaseLnK[p] - Math.log(atm);
    if (most > -margin * Math.LN10) return false;
  }
  return true;
}

/** ln of the largest ion product of a phase that activities between those of two mixtures can make. */
function largestProduct(
  { phaseRows: { start, column, value }, water }: System,
  phase: number,
  one: EquilibriumResult,
  other: EquilibriumResult,
): number {
  let sum = 0;
  for (let k = start[phase]; k < start[phase + 1]; k++) {
    const j = column[k];
    const a = value[k] * (j === water ? Math.log(one.waterActivity) : one.start.y[j]);
    const b = value[k] * (j === water ? Math.log(other.waterActivity) : other.start.y[j]);
    sum += Math.max(a, b);
  }
  return sum;
}
