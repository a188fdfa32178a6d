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
const spareFor = (components: number): number => components + 4;

/** Arrays for one system, laid out once. What they hold is of no account between calls. */
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
  /** What an iterate and a balance consist of; there is only one of each at a time. */
  amounts: Float64Array;
  lnM: Float64Array;
  totals: Float64Array;
  lnBound: Float64Array;
  lnPressure: Float64Array;
  allowed: Uint8Array;
}

/** Memory that workspaces share, for one mixture is solved at a time. It is replaced by a larger piece when a mixture needs one. */
export interface Room {
  values: Float64Array;
}

/** Lays out the arrays for a system in `room`: a new mixture comes with every reagent, and memory of its own takes longer to get. */
export function workspaceFor(system: System, room: Room): Workspace {
  const { columns } = system;
  const nb = system.components.length;
  const species = system.species.length;
  const most = nb + OTHERS + spareFor(nb);
  const needed = most * (most + 1) + columns * (columns + 4) + 3 * species + nb + spareFor(nb) + system.phases.length;
  if (room.values.length < needed) room.values = new Float64Array(2 * needed);
  const { values } = room;
  let taken = 0;
  const take = (length: number): Float64Array => {
    taken += length;
    return values.subarray(taken - length, taken);
  };
  return {
    potentials: take(columns),
    change: take(columns),
    molality: take(species),
    sums: take(columns),
    sizes: take(columns),
    moments: take(columns * columns),
    matrix: take(most * most),
    right: take(most),
    amounts: take(spareFor(nb)),
    lnM: take(species),
    totals: take(nb),
    lnBound: take(species),
    lnPressure: take(system.phases.length),
    allowed: new Uint8Array(system.phases.length),
  };
}
