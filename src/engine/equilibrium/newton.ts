/**
 * Newton's method on the optimality (KKT) conditions of the Gibbs energy minimum with a given set of phases present.
 *
 * Unknowns, in this order: ln activity y_j of each component, total molality S, ionic strength I, mass of water W (kg), and the amount
 * n_p (mol) of each phase present. Equations: a mass balance for each component, the definitions of S and I, the balance of water, and
 * the saturation of each phase.
 * Steps are shortened so that no species overshoots what the mass balances can hold; that is what makes a cold start safe.
 * Fails (returns -1) when the phases present are linearly dependent or the steps do not settle: the caller then changes the set
 * of phases or restarts. Alternative when it fails: an interior-point method, slower and less precise.
 */
import { davies, lnWaterActivity, WATER_ACTIVITY_SLOPE } from "./activity.ts";
import { type Balance, type Iterate, OTHERS, type Workspace } from "./iterate.ts";
import { solveLinear } from "./linear-system.ts";
import { evaluateSpecies, rowTimes, sumProducts, sumSpecies } from "./speciation.ts";
import type { System } from "./system.ts";

/** kg of water in a mole (IUPAC 2021 masses, as PHREEQC uses them). */
export const WATER_KG_PER_MOL = 0.01801528;

/** Relative mass-balance residual at which the solution is accepted. */
const TOLERANCE = 1e-12;
/** Residual accepted when steps no longer improve it (exact equivalence points are ill-conditioned). */
const STALL_TOLERANCE = 1e-6;
/** How far (in ln units) above its bound a species may be taken by one step. */
const OVERSHOOT = 1;
/** Times all matter there is that a phase may run below nothing before it is given up. */
const HOPELESS = 100;
/** An ionic strength that has collapsed far below what the species make up is set back to it, at most to this, mol/kg: the slope of
 * the Davies function is infinite at zero, and Newton cannot climb out of there. */
const LARGEST_GUESSED_I = 2;

/**
 * Moves `at` to the equilibrium with its present phases, to a relative residual of `tolerance`. Returns the number of iterations, or -1
 * when it does not settle. Stops early when a phase runs far below nothing: its amount tells the caller to drop it.
 */
export function newton(
  system: System,
  balance: Balance,
  at: Iterate,
  work: Workspace,
  maxIterations: number,
  tolerance = TOLERANCE,
): number {
  const size = system.components.length + OTHERS + at.present.length;
  let previous = Number.POSITIVE_INFINITY;
  let stalled = 0;
  for (let iteration = 1; iteration <= maxIterations; iteration++) {
    evaluateSpecies(system, balance, at, work);
    const solutes = sumSpecies(system, balance, at, work);
    const plausibleI = Math.min(work.sums[system.ionic], LARGEST_GUESSED_I);
    if (at.ionicStrength < 0.2 * plausibleI) {
      at.ionicStrength = 0.6 * plausibleI;
      continue;
    }
    const residual = imbalance(system, balance, at, work, solutes);
    if (residual < tolerance) return iteration;
    stalled = residual < previous * 0.9 ? 0 : stalled + 1;
    if (residual < STALL_TOLERANCE && stalled >= 3) return iteration;
    previous = Math.min(previous, residual);

    const slopes = slopesAt(balance, at);
    jacobian(system, at, work, slopes);
    if (!solveLinear(work.matrix, work.right, size, size)) return -1;
    step(system, balance, at, work, slopes);
    if (lacksPhase(balance, at)) return iteration;
  }
  return -1;
}

/** Whether a phase has run so far below nothing that it cannot be there; what is left of the iteration would follow it. */
function lacksPhase({ totals }: Balance, { present, amounts }: Iterate): boolean {
  let all = 0;
  for (let j = 0; j < totals.length; j++) all += Math.abs(totals[j]);
  for (let q = 0; q < present.length; q++) if (amounts[q] < -HOPELESS * all) return true;
  return false;
}

/** Puts what each equation lacks on the right-hand side; returns the largest, relative to what is balanced there. */
function imbalance(system: System, balance: Balance, at: Iterate, work: Workspace, solutes: number): number {
  const { ionic, water } = system;
  const { start, column, value } = system.phaseRows;
  const { right, sums, sizes, potentials } = work;
  const nb = system.components.length;
  const W = at.waterKg;
  let worst = 0;
  const rowS = nb;
  const rowI = nb + 1;
  const rowW = nb + 2;
  for (let j = 0; j < nb; j++) {
    right[j] = balance.totals[j] - W * sums[j];
    sizes[j] = Math.abs(balance.totals[j]) + W * sizes[j];
  }
  right[rowS] = solutes - at.solutes;
  right[rowI] = sums[ionic] - at.ionicStrength;
  right[rowW] = balance.waterMol - W / WATER_KG_PER_MOL - W * sums[water];
  for (let q = 0; q < at.present.length; q++) {
    const p = at.present[q];
    const amount = at.amounts[q];
    for (let k = start[p], end = start[p + 1]; k < end; k++) {
      const moved = value[k] * amount;
      right[column[k] === water ? rowW : column[k]] -= moved;
      sizes[column[k]] += Math.abs(moved);
    }
    const affinity = system.phaseLnK[p] + balance.lnPressure[p] - rowTimes(system.phaseRows, p, potentials);
    right[nb + OTHERS + q] = affinity;
    worst = Math.max(worst, Math.abs(affinity));
  }
  for (let j = 0; j < nb; j++) worst = Math.max(worst, Math.abs(right[j]) / sizes[j]);
  return Math.max(
    worst,
    Math.abs(right[rowS]) / (solutes + 1e-9),
    Math.abs(right[rowI]) / (sums[ionic] + 1e-9),
    Math.abs(right[rowW]) / WATER_MOL_PER_KG,
  );
}
/** Size of the water balance, mol: that of one kg. */
const WATER_MOL_PER_KG = 55;

/** How the potentials that are no unknowns answer to I and S. */
interface Slopes {
  /** Of the potentials of z^2/2 and of neutral species, by I. */
  ionic: number;
  neutral: number;
  /** Of ln a(water), by S. */
  water: number;
}

function slopesAt({ daviesA, cap }: Balance, { ionicStrength, solutes }: Iterate): Slopes {
  const { slope, neutralSlope } = davies(ionicStrength, cap);
  return {
    ionic: 2 * Math.LN10 * daviesA * slope,
    neutral: -Math.LN10 * neutralSlope,
    water: -WATER_ACTIVITY_SLOPE / Math.exp(lnWaterActivity(solutes)),
  };
}

/** Fills the matrix with the derivatives of the left-hand sides by the unknowns. */
function jacobian(system: System, at: Iterate, work: Workspace, by: Slopes): void {
  sumProducts(system, work);
  const { columns: c, ionic, water, neutral } = system;
  const { matrix: A, moments: M, sums } = work;
  const nb = system.components.length;
  const np = at.present.length;
  const S = nb;
  const I = nb + 1;
  const W = nb + 2;
  const first = nb + OTHERS;
  const n = first + np;
  const kg = at.waterKg;
  for (let j = 0; j < nb; j++) {
    for (let k = 0; k <= j; k++) {
      const both = kg * M[j * c + k];
      A[j * n + k] = both;
      A[k * n + j] = both;
    }
    const ofWater = kg * M[water * c + j];
    A[j * n + S] = ofWater * by.water;
    A[j * n + I] = kg * (M[ionic * c + j] * by.ionic + M[neutral * c + j] * by.neutral);
    A[j * n + W] = sums[j];
    A[S * n + j] = -sums[j];
    A[I * n + j] = -M[ionic * c + j];
    A[W * n + j] = ofWater;
  }
  A[S * n + S] = 1 - sums[water] * by.water;
  A[S * n + I] = -sums[ionic] * by.ionic - sums[neutral] * by.neutral;
  A[S * n + W] = 0;
  A[I * n + S] = -M[water * c + ionic] * by.water;
  A[I * n + I] = 1 - M[ionic * c + ionic] * by.ionic;
  A[I * n + W] = 0;
  A[W * n + S] = kg * M[water * c + water] * by.water;
  A[W * n + I] = kg * (M[water * c + ionic] * by.ionic + M[neutral * c + water] * by.neutral);
  A[W * n + W] = 1 / WATER_KG_PER_MOL + sums[water];

  const { start, column, value } = system.phaseRows;
  for (let q = 0; q < np; q++) {
    const row = first + q;
    for (let i = 0; i < n; i++) {
      A[i * n + row] = 0;
      A[row * n + i] = 0;
    }
    const p = at.present[q];
    for (let k = start[p], end = start[p + 1]; k < end; k++) {
      if (column[k] === water) {
        A[W * n + row] = value[k];
        A[row * n + S] = value[k] * by.water;
      } else {
        A[column[k] * n + row] = value[k];
        A[row * n + column[k]] = value[k];
      }
    }
  }
}

/** Goes as far along the solution of the linear system as no species overshoots its bound by. */
function step(system: System, balance: Balance, at: Iterate, work: Workspace, by: Slopes): void {
  const { speciesRows } = system;
  const { right: d, change } = work;
  const nb = system.components.length;
  const dS = d[nb];
  const dI = d[nb + 1];
  const dW = d[nb + 2];
  for (let j = 0; j < nb; j++) change[j] = d[j];
  change[system.ionic] = by.ionic * dI;
  change[system.water] = by.water * dS;
  change[system.neutral] = by.neutral * dI;
  let part = 1;
  for (let i = 0; i < at.lnM.length; i++) {
    const rise = rowTimes(speciesRows, i, change);
    if (rise <= 0) continue;
    const room = Math.max(balance.lnBound[i] + OVERSHOOT - at.lnM[i], 0.5);
    if (rise * part > room) part = room / rise;
  }
  for (let j = 0; j < nb; j++) at.y[j] += part * d[j];
  at.solutes = Math.max(at.solutes + part * dS, 0);
  at.ionicStrength = Math.max(at.ionicStrength + part * dI, at.ionicStrength * 0.2, 1e-12);
  at.waterKg = Math.max(at.waterKg + part * dW, at.waterKg * 0.5);
  for (let q = 0; q < at.present.length; q++) at.amounts[q] += part * d[nb + OTHERS + q];
}
