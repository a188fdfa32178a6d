/** What the solver is given and what it gives back: problem, conditions, result. */
import type { NamedValues } from "./named-values.ts";
import type { System } from "./system.ts";

/** Amounts in a vessel: moles of each basis component (H+ may be negative: alkali), and the water they were brought in. */
export interface EquilibriumProblem {
  /** mol by component id; "H2O" counts water bound in reagents, beside `waterKg`. */
  totals: Readonly<Record<string, number>>;
  waterKg: number;
}

export interface Conditions {
  celsius?: number;
  /** Ionic strength above which the activity coefficient is held; Infinity to compare with codes that do not cap. */
  ionicStrengthCap?: number;
  /** Gases that may leave, each at its partial pressure in atm. Others stay dissolved. */
  gases?: Readonly<Record<string, number>>;
  /** Solids that may form although they do not form within minutes in the cold (boiling opens some). */
  alsoAllowed?: readonly string[];
  /** Solids that may not form although they mostly form within minutes. */
  closed?: readonly string[];
}

export interface EquilibriumResult {
  converged: true;
  /** mol/kg of each dissolved species. */
  molality: NamedValues;
  /** mol of each solid or gas phase present. */
  phases: Map<string, number>;
  /**
   * log10 (ion product / K) of every solid and gas these components can make, also of those that may not form here. For a gas that may
   * not leave, this is log10 of its partial pressure in atm.
   */
  saturation: NamedValues;
  pH: number;
  ionicStrength: number;
  waterKg: number;
  waterActivity: number;
  iterations: number;
  /** To begin the next, similar problem from here. */
  start: Start;
}
export interface NotConverged {
  converged: false;
  reason: string;
}

/** Opaque starting point for a similar problem. */
export interface Start {
  system: System;
  /** What was asked for: mol of each component of the system, in how much water. */
  totals: Float64Array;
  waterKg: number;
  /** 1 where acid was mostly free H+, -1 where alkali was mostly free OH-, 0 where neither was. */
  free: 1 | -1 | 0;
  y: Float64Array;
  solutes: number;
  ionicStrength: number;
  present: readonly number[];
  amounts: readonly number[];
  /** What remembering solvers found from here. It lives and goes with the starting point. */
  reached?: Solved[];
}

/** A problem solved before. What it asked is copied, for the caller goes on changing its own. */
export interface Solved {
  /** Another solver may go on from the same starting point, and to other answers. */
  by: Solver;
  totals: EquilibriumProblem["totals"];
  waterKg: number;
  conditions: Conditions;
  outcome: EquilibriumResult | NotConverged;
}

export type Solver = (
  problem: EquilibriumProblem,
  conditions?: Conditions,
  start?: Start,
) => EquilibriumResult | NotConverged;
