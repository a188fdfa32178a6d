/**
 * Newton's method on the optimality (KKT) conditions of the Gibbs energy minimum with a given set of phases present.
 *
 * Unknowns: ln activity y_j of each component, total molality S, ionic strength I, mass of water W (kg), and the amount n_p (mol) of
 * each phase present. Equations: a mass balance for each component, n_p's saturation, and the definitions of S, I and W.
 * Steps are shortened so that no species overshoots what the mass balances can hold; that is what makes a cold start safe.
 * Fails (returns -1) when the phases present are linearly dependent or the steps do not settle: the caller then changes the set
 * of phases or restarts. Alternative when it fails: an interior-point method, slower and less precise.
 */
import { davies, WATER_ACTIVITY_SLOPE } from "./activity.ts";
import { solveLinear } from "./linear-system.ts";
import { lnWaterActivity, type System } from "./system.ts";

/** kg of water in a mole (IUPAC 2021 masses, as PHREEQC uses them). */
export const WATER_KG_PER_MOL = 0.01801528;

/** Where the iteration stands; updated in place. */
export interface Iterate {
  y: Float64Array;
  solutes: number;
  ionicStrength: number;
  waterKg: number;
  /** Phases present, as indices into the system, with their amounts in mol. */
  present: number[];
  amounts: Float64Array;
  /** ln molality of each species at the last evaluation. */
  lnM: Float64Array;
}

export interface Balance {
  /** Total of each component, mol. */
  totals: Float64Array;
  /** Water in all forms, mol. */
  waterMol: number;
  /** Most that a species could reach, ln mol, for step control. */
  lnBound: Float64Array;
  daviesA: number;
  cap: number;
  /** ln of the partial pressure at which each phase is saturated (0 for solids). */
  lnPressure: Float64Array;
  /** 1 where a phase may form, 0 where only its saturation is told. */
  allowed: Uint8Array;
}

export interface Workspace {
  matrix: Float64Array;
  right: Float64Array;
  rowScale: Float64Array;
}

const LN10 = Math.LN10;
/** Relative mass-balance residual at which the solution is accepted. */
const TOLERANCE = 1e-12;
/** Residual accepted when steps no longer improve it (exact equivalence points are ill-conditioned). */
const STALL_TOLERANCE = 1e-6;
/** How far (in ln units) above its bound a species may be taken by one step. */
const OVERSHOOT = 1;
/** ln of how many times smaller than its bound a species may be before it counts for nothing: below the precision of a double. */
const NEGLIGIBLE = 37;
/** An ionic strength that has collapsed far below what the species make up is set back to it, at most to this, mol/kg: the slope of
 * the Davies function is infinite at zero, and Newton cannot climb out of there. */
const LARGEST_GUESSED_I = 2;

/** ln molality of every species at the iterate. */
export function evaluateSpecies(system: System, balance: Balance, at: Iterate): void {
  const { f, neutral } = davies(at.ionicStrength, balance.cap);
  const lnAw = lnWaterActivity(at.solutes);
  const A = balance.daviesA * LN10;
  const { speciesStart: start, speciesComponent: component, speciesMoles: moles } = system;
  for (let i = 0; i < system.species.length; i++) {
    const z = system.speciesCharge[i];
    let ln = system.speciesLnK[i] + system.speciesWater[i] * lnAw + (z === 0 ? -LN10 * neutral : A * z * z * f);
    for (let k = start[i]; k < start[i + 1]; k++) ln += moles[k] * at.y[component[k]];
    at.lnM[i] = ln;
  }
}

/**
 * Moves `at` to the equilibrium with its present phases, to a relative residual of `tolerance`. Returns the number of iterations, or -1
 * when it does not settle.
 */
export function newton(
  system: System,
  balance: Balance,
  at: Iterate,
  work: Workspace,
  maxIterations: number,
  tolerance = TOLERANCE,
): number {
  const nb = system.components.length;
  const ns = system.species.length;
  const np = at.present.length;
  const rowS = nb;
  const rowI = nb + 1;
  const rowW = nb + 2;
  const n = nb + 3 + np;
  const { speciesStart: start, speciesComponent: component, speciesMoles: moles } = system;
  const { phaseStart, phaseComponent, phaseMoles } = system;
  const { rowScale } = work;
  let previous = Number.POSITIVE_INFINITY;
  let stalled = 0;

  for (let iteration = 1; iteration <= maxIterations; iteration++) {
    evaluateSpecies(system, balance, at);
    const { slope, neutralSlope } = davies(at.ionicStrength, balance.cap);
    const A = work.matrix;
    const b = work.right;
    A.fill(0, 0, n * n);
    b.fill(0, 0, n);
    for (let j = 0; j < nb; j++) rowScale[j] = Math.abs(balance.totals[j]);
    const W = at.waterKg;
    const dLnAw = -WATER_ACTIVITY_SLOPE / Math.exp(lnWaterActivity(at.solutes));
    let sumM = 0;
    let sumI = 0;
    let boundWater = 0;
    for (let i = 0; i < ns; i++) {
      // What could not change any balance in the last digit is left out of the sums; its molality stands in lnM all the same.
      if (at.lnM[i] < balance.lnBound[i] - NEGLIGIBLE) continue;
      const mi = Math.exp(Math.min(at.lnM[i], 50));
      const z = system.speciesCharge[i];
      const w = system.speciesWater[i];
      const dS = w * dLnAw; // d ln m / dS
      const dI = z === 0 ? -LN10 * neutralSlope : LN10 * balance.daviesA * z * z * slope; // d ln m / dI
      sumM += mi;
      sumI += 0.5 * z * z * mi;
      boundWater += w * mi;
      const half = 0.5 * z * z * mi;
      A[rowS * n + rowS] -= mi * dS;
      A[rowS * n + rowI] -= mi * dI;
      A[rowI * n + rowS] -= half * dS;
      A[rowI * n + rowI] -= half * dI;
      A[rowW * n + rowS] += w * mi * W * dS;
      A[rowW * n + rowI] += w * mi * W * dI;
      for (let k = start[i]; k < start[i + 1]; k++) {
        const j = component[k];
        const nu = moles[k];
        const moved = nu * mi * W;
        b[j] -= moved;
        rowScale[j] += Math.abs(moved);
        const row = j * n;
        for (let l = start[i]; l < start[i + 1]; l++) A[row + component[l]] += moved * moles[l];
        A[row + rowS] += moved * dS;
        A[row + rowI] += moved * dI;
        A[row + rowW] += nu * mi;
        A[rowS * n + j] -= nu * mi;
        A[rowI * n + j] -= half * nu;
        A[rowW * n + j] += w * mi * W * nu;
      }
    }
    const plausibleI = Math.min(sumI, LARGEST_GUESSED_I);
    if (at.ionicStrength < 0.2 * plausibleI) {
      at.ionicStrength = 0.6 * plausibleI;
      continue;
    }
    A[rowS * n + rowS] += 1;
    A[rowI * n + rowI] += 1;
    A[rowW * n + rowW] += 1 / WATER_KG_PER_MOL + boundWater;
    b[rowS] = sumM - at.solutes;
    b[rowI] = sumI - at.ionicStrength;
    let water = balance.waterMol - W / WATER_KG_PER_MOL - boundWater * W;
    for (let j = 0; j < nb; j++) b[j] += balance.totals[j];
    const lnAw = lnWaterActivity(at.solutes);
    let worstSaturation = 0;
    for (let q = 0; q < np; q++) {
      const p = at.present[q];
      const row = nb + 3 + q;
      let affinity = system.phaseLnK[p] + balance.lnPressure[p] - system.phaseWater[p] * lnAw;
      for (let k = phaseStart[p]; k < phaseStart[p + 1]; k++) {
        const j = phaseComponent[k];
        const nu = phaseMoles[k];
        affinity -= nu * at.y[j];
        b[j] -= nu * at.amounts[q];
        rowScale[j] += Math.abs(nu * at.amounts[q]);
        A[j * n + row] += nu;
        A[row * n + j] = nu;
      }
      A[row * n + rowS] = system.phaseWater[p] * dLnAw;
      A[rowW * n + row] = system.phaseWater[p];
      water -= system.phaseWater[p] * at.amounts[q];
      b[row] = affinity;
      worstSaturation = Math.max(worstSaturation, Math.abs(affinity));
    }
    b[rowW] = water;
    let residual = worstSaturation;
    for (let j = 0; j < nb; j++) residual = Math.max(residual, Math.abs(b[j]) / rowScale[j]);
    residual = Math.max(
      residual,
      Math.abs(b[rowS]) / (sumM + 1e-9),
      Math.abs(b[rowI]) / (sumI + 1e-9),
      Math.abs(water) / 55,
    );
    if (residual < tolerance) return iteration;
    stalled = residual < previous * 0.9 ? 0 : stalled + 1;
    if (residual < STALL_TOLERANCE && stalled >= 3) return iteration;
    previous = Math.min(previous, residual);

    if (!solveLinear(A, b, n, n)) return -1;

    let step = 1;
    for (let i = 0; i < ns; i++) {
      const z = system.speciesCharge[i];
      let rise = system.speciesWater[i] * dLnAw * b[rowS];
      rise += (z === 0 ? -LN10 * neutralSlope : LN10 * balance.daviesA * z * z * slope) * b[rowI];
      for (let k = start[i]; k < start[i + 1]; k++) rise += moles[k] * b[component[k]];
      if (rise > 0) {
        const room = Math.max(balance.lnBound[i] + OVERSHOOT - at.lnM[i], 0.5);
        if (rise * step > room) step = room / rise;
      }
    }
    for (let j = 0; j < nb; j++) at.y[j] += step * b[j];
    at.solutes = Math.max(at.solutes + step * b[rowS], 0);
    at.ionicStrength = Math.max(at.ionicStrength + step * b[rowI], at.ionicStrength * 0.2, 1e-12);
    at.waterKg = Math.max(at.waterKg + step * b[rowW], at.waterKg * 0.5);
    for (let q = 0; q < np; q++) at.amounts[q] += step * b[nb + 3 + q];
  }
  return -1;
}
