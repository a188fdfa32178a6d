/**
 * A first guess for Newton from the totals alone: a few sweeps that balance one component at a time (positive continuous fractions,
 * Carrayrou, Mose and Behra, AIChE J. 48 (2002) 894, from memory), then a check that nothing stands above what the balances can hold.
 */
import { type Balance, evaluateSpecies, type Iterate } from "./newton.ts";
import type { System } from "./system.ts";

/** Largest change of a component (ln units) in one sweep. */
const LARGEST_SWEEP = 2;
const SWEEPS = 6;

/** An iterate near enough to the aqueous equilibrium (no phases yet) for Newton to settle. */
export function coldStart(system: System, balance: Balance, waterKg: number): Iterate {
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
  const at: Iterate = {
    y,
    solutes,
    ionicStrength: Math.min(Math.max(ionic, 1e-6), 1),
    waterKg,
    present: [],
    amounts: new Float64Array(nb + 4),
    lnM: new Float64Array(system.species.length),
  };
  sweep(system, balance, at);
  return at;
}

function sweep(system: System, balance: Balance, at: Iterate): void {
  const nb = system.components.length;
  const positive = new Float64Array(nb);
  const negative = new Float64Array(nb);
  const steepest = new Float64Array(nb);
  const { speciesStart: start, speciesComponent: component, speciesMoles: moles } = system;
  for (let round = 0; round < SWEEPS; round++) {
    evaluateSpecies(system, balance, at);
    for (let j = 0; j < nb; j++) {
      positive[j] = Math.max(-balance.totals[j], 0) + 1e-30;
      negative[j] = Math.max(balance.totals[j], 0) + 1e-30;
      steepest[j] = 1;
    }
    for (let i = 0; i < system.species.length; i++) {
      const amount = Math.exp(Math.min(at.lnM[i], 100)) * at.waterKg;
      for (let k = start[i]; k < start[i + 1]; k++) {
        const j = component[k];
        if (moles[k] > 0) positive[j] += moles[k] * amount;
        else negative[j] -= moles[k] * amount;
        if (amount > 1e-9) steepest[j] = Math.max(steepest[j], Math.abs(moles[k]));
      }
    }
    for (let j = 0; j < nb; j++) {
      const change = Math.log(negative[j] / positive[j]) / steepest[j];
      at.y[j] += Math.max(-LARGEST_SWEEP, Math.min(change, LARGEST_SWEEP));
    }
  }
  pullDown(system, balance, at);
}

/** Lowers components until no species stands above what the balances can hold, so that Newton starts from finite numbers. */
function pullDown(system: System, balance: Balance, at: Iterate): void {
  for (let round = 0; round < 40; round++) {
    evaluateSpecies(system, balance, at);
    let worst = -1;
    let excess = 1;
    for (let i = 0; i < system.species.length; i++) {
      const above = at.lnM[i] - balance.lnBound[i];
      if (above > excess) {
        excess = above;
        worst = i;
      }
    }
    if (worst < 0) return;
    let weight = 0;
    for (let k = system.speciesStart[worst]; k < system.speciesStart[worst + 1]; k++)
      weight += Math.abs(system.speciesMoles[k]);
    for (let k = system.speciesStart[worst]; k < system.speciesStart[worst + 1]; k++) {
      at.y[system.speciesComponent[k]] -= (Math.sign(system.speciesMoles[k]) * excess) / weight;
    }
  }
}
