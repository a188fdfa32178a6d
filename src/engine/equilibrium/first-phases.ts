/**
 * A first guess of the phases present, from an aqueous first guess: each supersaturated phase in turn takes out so much that it is just
 * saturated if all activities fall with what is left of their component and pH stays. Newton's method and the phase set mend what is
 * wrong with it; where it is right, most of their work is done.
 */
import type { Balance, Iterate, Workspace } from "./iterate.ts";
import { saturationOf } from "./phase-set.ts";
import type { System } from "./system.ts";

/** Supersaturation (natural log) from which a phase is guessed to be there; below it the aqueous guess does not tell. */
const PLAINLY_SUPERSATURATED = 2;
/** Steps of the search for an amount: two figures are enough. */
const SEARCH_STEPS = 5;

/** What guessed phases hold. */
export interface Held {
  /** Of each component, what is left in solution, mol. */
  left: Float64Array;
  /** The phase whose saturation decides the activity of a component, or -1 where its balance does. */
  by: Int32Array;
}

/**
 * Adds phases to a first guess whose potentials are evaluated, and lowers the activities of what they are made of. No two of them use up
 * the same component, which keeps them independent but for rare cases.
 */
export function addFirstPhases(system: System, balance: Balance, at: Iterate, work: Workspace, held: Held): void {
  const untried = balance.allowed.slice();
  for (;;) {
    let best = -1;
    let most = PLAINLY_SUPERSATURATED;
    for (let p = 0; p < untried.length; p++) {
      if (untried[p] === 0) continue;
      const ln = saturationOf(system, balance, work, p);
      if (!(ln > most)) continue;
      most = ln;
      best = p;
    }
    if (best < 0) return;
    untried[best] = 0;
    const scarce = scarcest(system, best, held.left);
    if (scarce < 0 || held.by[scarce] >= 0) continue;
    held.by[scarce] = best;
    at.amounts[at.present.length] = takeOut(system, at, work, best, most, held.left, scarce);
    at.present.push(best);
  }
}

/** Sets the component that each guessed phase holds so that the phase is just saturated. */
export function saturate(system: System, balance: Balance, at: Iterate, work: Workspace, held: Held): void {
  const { start, column, value } = system.phaseRows;
  work.potentials.set(at.y);
  for (const phase of at.present) {
    const ln = saturationOf(system, balance, work, phase);
    for (let k = start[phase]; k < start[phase + 1]; k++) {
      const j = column[k];
      if (j === system.water || held.by[j] !== phase) continue;
      at.y[j] -= ln / value[k];
      work.potentials[j] = at.y[j];
    }
  }
}

/** The component of a phase that would be used up first; -1 when it has none but protons. */
function scarcest({ phaseRows, proton, water }: System, phase: number, left: Float64Array): number {
  const { start, column, value } = phaseRows;
  let scarce = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let k = start[phase]; k < start[phase + 1]; k++) {
    const j = column[k];
    if (j === proton || j === water || value[k] <= 0 || left[j] / value[k] >= least) continue;
    least = left[j] / value[k];
    scarce = j;
  }
  return scarce;
}

/**
 * Takes a phase supersaturated by `ln` out of the solution; returns its amount. Unknown is u, the ln of the part of the scarce component
 * that stays dissolved. The saturation left over is convex and rising in u, so that Newton's method comes down to its zero from u = 0.
 */
function takeOut(
  system: System,
  at: Iterate,
  { potentials }: Workspace,
  phase: number,
  ln: number,
  left: Float64Array,
  scarce: number,
): number {
  const { proton, water } = system;
  const { start, column, value } = system.phaseRows;
  const from = start[phase];
  const to = start[phase + 1];
  let all = 0;
  for (let k = from; k < to; k++) if (column[k] === scarce) all = left[scarce] / value[k];
  const consumed = (k: number) => value[k] > 0 && column[k] !== proton && column[k] !== water;
  /** Part of a component that stays dissolved when `stays` of the scarce one does; never less than that. */
  const rest = (k: number, stays: number) => Math.max(1 - ((value[k] * all) / left[column[k]]) * (1 - stays), stays);

  let u = 0;
  for (let n = 0; n < SEARCH_STEPS; n++) {
    const stays = Math.exp(u);
    let above = ln;
    let slope = 0;
    for (let k = from; k < to; k++) {
      if (!consumed(k)) continue;
      const part = rest(k, stays);
      above += value[k] * Math.log(part);
      slope += (value[k] * (value[k] * all) * stays) / (left[column[k]] * part);
    }
    u -= above / slope;
  }
  const stays = Math.exp(u);
  for (let k = from; k < to; k++) {
    const j = column[k];
    if (consumed(k)) {
      const part = rest(k, stays);
      at.y[j] += Math.log(part);
      potentials[j] = at.y[j];
      left[j] *= part;
    } else if (j !== water) left[j] -= value[k] * all * (1 - stays);
  }
  return all * (1 - stays);
}
