/**
 * A first guess for Newton from the totals alone: a few sweeps that balance one component at a time (positive continuous fractions,
 * Carrayrou, Mose and Behra, AIChE J. 48 (2002) 894, from memory), the phases that are then plainly supersaturated, and a few sweeps with
 * these; in the end nothing stands above what the balances can hold.
 */
import { addFirstPhases, type Held, saturate } from "./first-phases.ts";
import type { Balance, Iterate, Workspace } from "./iterate.ts";
import { evaluateSpecies } from "./speciation.ts";
import type { System } from "./system.ts";

/** Largest change of a component (ln units) in one sweep. */
const LARGEST_SWEEP = 2;
/** Sweeps before phases are guessed, and after. */
const SWEEPS = 3;
const SWEEPS_WITH_PHASES = 2;

/** How far (ln units) above its bound a species may stand at the start, and rounds in which it is brought down there. */
const TOLERATED = 1;
const MOST_FALLS = 40;

/** An iterate near enough to the equilibrium for Newton to settle; the aqueous one when no phases are to be guessed. */
export function coldStart(
  system: System,
  balance: Balance,
  waterKg: number,
  work: Workspace,
  { phases }: { phases: boolean },
): Iterate {
  const at = fromTotals(system, balance, waterKg, work);
  const held: Held = { left: balance.totals.slice(), by: new Int32Array(at.y.length).fill(-1) };
  pullDown(system, balance, at, work);
  sweep(system, balance, at, work, held, SWEEPS);
  if (phases) {
    addFirstPhases(system, balance, at, work, held);
    if (at.present.length > 0) sweep(system, balance, at, work, held, SWEEPS_WITH_PHASES);
  }
  pullDown(system, balance, at, work);
  return at;
}

/** Everything dissolved and nothing combined. */
function fromTotals(system: System, balance: Balance, waterKg: number, { amounts, lnM }: Workspace): Iterate {
  const nb = system.components.length;
  const y = new Float64Array(nb);
  let ionic = 0;
  let solutes = 0;
  for (let j = 0; j < nb; j++) {
    const total = balance.totals[j] / waterKg;
    if (j === system.proton)
      y[j] = total > 1e-7 ? Math.log(total) : total < -1e-7 ? Math.log(1e-14 / -total) : Math.log(1e-7);
    else {
      y[j] = Math.log(total);
      ionic += 0.5 * system.charges[j] ** 2 * total;
    }
    solutes += Math.abs(total);
  }
  return {
    y,
    solutes,
    ionicStrength: Math.min(Math.max(ionic, 1e-6), 1),
    waterKg,
    present: [],
    amounts,
    lnM,
  };
}

/** Balances each component by itself, except those that a phase holds at its saturation. */
function sweep(system: System, balance: Balance, at: Iterate, work: Workspace, held: Held, rounds: number): void {
  const nb = system.components.length;
  const positive = new Float64Array(nb);
  const negative = new Float64Array(nb);
  const steepest = new Float64Array(nb);
  const { start, column, value } = system.speciesRows;
  for (let round = 0; round < rounds; round++) {
    evaluateSpecies(system, balance, at, work);
    for (let j = 0; j < nb; j++) {
      positive[j] = Math.max(-held.left[j], 0) + 1e-30;
      negative[j] = Math.max(held.left[j], 0) + 1e-30;
      steepest[j] = 1;
    }
    for (let i = 0; i < at.lnM.length; i++) {
      const amount = Math.exp(Math.min(at.lnM[i], 100)) * at.waterKg;
      for (let k = start[i], end = start[i + 1]; k < end; k++) {
        const j = column[k];
        if (j >= nb) continue;
        const part = value[k] * amount;
        if (part > 0) positive[j] += part;
        else negative[j] -= part;
        if (amount > 1e-9) steepest[j] = Math.max(steepest[j], Math.abs(value[k]));
      }
    }
    for (let j = 0; j < nb; j++) {
      if (held.by[j] >= 0) continue;
      const change = Math.log(negative[j] / positive[j]) / steepest[j];
      at.y[j] += Math.max(-LARGEST_SWEEP, Math.min(change, LARGEST_SWEEP));
    }
    saturate(system, balance, at, work, held);
  }
}

/**
 * Lowers components until no species stands above what the balances can hold, so that Newton starts from finite numbers. H+ is left as it
 * is wherever something else can give way: pH comes from the strong acid or alkali.
 */
function pullDown(system: System, balance: Balance, at: Iterate, work: Workspace): void {
  const nb = system.components.length;
  const { start, column, value } = system.speciesRows;
  const { proton } = system;
  const fall = new Float64Array(nb);
  const givesWay = (j: number, moles: number) => j < nb && j !== proton && moles > 0;
  for (let round = 0; round < MOST_FALLS; round++) {
    evaluateSpecies(system, balance, at, work);
    fall.fill(0);
    let above = false;
    for (let i = 0; i < at.lnM.length; i++) {
      const excess = at.lnM[i] - balance.lnBound[i];
      if (excess <= TOLERATED) continue;
      above = true;
      let weight = 0;
      for (let k = start[i], end = start[i + 1]; k < end; k++) if (givesWay(column[k], value[k])) weight += value[k];
      // H+ and OH- have nothing else; their row begins with the proton.
      if (weight === 0) fall[proton] = Math.sign(value[start[i]]) * excess;
      for (let k = start[i], end = start[i + 1]; k < end; k++) {
        const j = column[k];
        if (givesWay(j, value[k])) fall[j] = Math.max(fall[j], excess / weight);
      }
    }
    if (!above) return;
    for (let j = 0; j < nb; j++) at.y[j] -= fall[j];
  }
}
