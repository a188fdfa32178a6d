/** What the iteration works on: where it stands, what it must balance, and the arrays it uses over and over. */
import type { System } from "./system.ts";

/** Where the iteration stands; updated in place. */
export interface Iterate {
  /** ln activity of each component. */
  y: Float64Array;
  /** Total molality of the solutes. */
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
  /** Most that a species could reach, ln mol/kg, for step control. */
  lnBound: Float64Array;
  daviesA: number;
  cap: number;
  /** ln of the partial pressure at which each phase is saturated (0 for solids). */
  lnPressure: Float64Array;
  /** 1 where a phase may form, 0 where only its saturation is told. */
  allowed: Uint8Array;
}

/** Unknowns between the components and the phases: total molality, ionic strength and mass of water. */
export const OTHERS = 3;

/** More phases than components may be held for a moment, while one takes another's place. */
export const spareFor = (components: number): number => components + 4;

/** Arrays for one system, made once. What they hold is of no account between calls. */
export interface Workspace {
  /** One value for each column of the system: potentials, and their change in a step. */
  potentials: Float64Array;
  change: Float64Array;
  /** Molality of each species that counts in the balances, 0 for the others. */
  molality: Float64Array;
  /** Sum of each column over the species, weighted with their molalities; `sizes` the same of absolute values, mol. */
  sums: Float64Array;
  sizes: Float64Array;
  /** Sum of products of columns, lower triangle. */
  moments: Float64Array;
  /** The linear system of a step, row by row. */
  matrix: Float64Array;
  right: Float64Array;
}

export function workspaceFor(system: System): Workspace {
  const { columns } = system;
  const nb = system.components.length;
  const most = nb + OTHERS + spareFor(nb);
  return {
    potentials: new Float64Array(columns),
    change: new Float64Array(columns),
    molality: new Float64Array(system.species.length),
    sums: new Float64Array(columns),
    sizes: new Float64Array(columns),
    moments: new Float64Array(columns * columns),
    matrix: new Float64Array(most * most),
    right: new Float64Array(most),
  };
}
