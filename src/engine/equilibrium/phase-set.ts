/**
 * Which phases are present: the active set of the Gibbs energy minimum. A phase with a negative amount is dropped; the most
 * supersaturated one is added. When the new phase is a sum of phases already present (FeCO3 + 2 Cu(OH)2 from malachite + Fe(OH)2),
 * both cannot stay: matter is moved into the new one until the first of the others is used up (the ratio test of linear programming).
 */
import type { Balance, Iterate, Workspace } from "./iterate.ts";
import { solveLinear } from "./linear-system.ts";
import { rowTimes } from "./speciation.ts";
import type { System } from "./system.ts";

/** Supersaturation (natural log) above which a phase is added. */
const SUPERSATURATED = 1e-9;

/** Drops the phase with the most negative amount, below `-slack` mol. Returns whether one was dropped. */
export function dropNegative(at: Iterate, slack = 0): boolean {
  let worst = -1;
  for (let q = 0; q < at.present.length; q++) {
    if (at.amounts[q] < -slack && (worst < 0 || at.amounts[q] < at.amounts[worst])) worst = q;
  }
  if (worst < 0) return false;
  drop(at, worst);
  return true;
}

function drop(at: Iterate, place: number): void {
  at.present.splice(place, 1);
  at.amounts.copyWithin(place, place + 1);
}

/** ln(ion product / K) of a phase at the potentials last evaluated: 0 when saturated, above 0 when it wants to form. */
export const saturationOf = (system: System, balance: Balance, { potentials }: Workspace, phase: number): number =>
  rowTimes(system.phaseRows, phase, potentials) - system.phaseLnK[phase] - balance.lnPressure[phase];

/** Adds the most supersaturated absent phase, above `threshold` (natural log). Returns whether one was added. */
export function addSupersaturated(
  system: System,
  balance: Balance,
  at: Iterate,
  work: Workspace,
  threshold = SUPERSATURATED,
): boolean {
  let best = -1;
  let most = threshold;
  for (let p = 0; p < system.phases.length; p++) {
    if (balance.allowed[p] === 0 || at.present.includes(p)) continue;
    const ln = saturationOf(system, balance, work, p);
    if (ln > most) {
      most = ln;
      best = p;
    }
  }
  if (best < 0) return false;
  const moved = exchange(system, at, best);
  at.amounts[at.present.length] = moved;
  at.present.push(best);
  return true;
}

/** Makes room for a phase that is a sum of present ones; returns the amount moved into it, 0 when it is independent. */
function exchange(system: System, at: Iterate, phase: number): number {
  const shares = composedOf(system, at.present, phase);
  if (!shares) return 0;
  let first = -1;
  let amount = Number.POSITIVE_INFINITY;
  shares.forEach((share, q) => {
    if (share > 1e-9 && at.amounts[q] / share < amount) {
      amount = at.amounts[q] / share;
      first = q;
    }
  });
  if (first < 0) return 0;
  shares.forEach((share, q) => {
    at.amounts[q] -= share * amount;
  });
  drop(at, first);
  return amount;
}

/** Moles of each present phase that make one mole of `phase`, or undefined when it is not a sum of them (least squares, no remainder). */
function composedOf(system: System, present: readonly number[], phase: number): Float64Array | undefined {
  const n = present.length;
  if (n === 0) return undefined;
  const rows = [...present, phase].map((p) => {
    const row = new Float64Array(system.components.length);
    const { start, column, value } = system.phaseRows;
    for (let k = start[p]; k < start[p + 1]; k++) if (column[k] !== system.water) row[column[k]] += value[k];
    return row;
  });
  const target = rows[n];
  const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, value, j) => sum + value * b[j], 0);
  const normal = new Float64Array(n * n);
  const shares = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    shares[i] = dot(rows[i], target);
    for (let j = 0; j < n; j++) normal[i * n + j] = dot(rows[i], rows[j]);
  }
  if (!solveLinear(normal, shares, n, n)) return undefined;
  const remainder = target.map(
    (value, j) => value - rows.slice(0, n).reduce((sum, row, q) => sum + shares[q] * row[j], 0),
  );
  return dot(remainder, remainder) < 1e-12 ? shares : undefined;
}
