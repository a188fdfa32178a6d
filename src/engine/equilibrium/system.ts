/**
 * The part of the constant set that some components can form, laid out in flat arrays for the solver, at one temperature.
 */

import { WATER_ACTIVITY_SLOPE } from "./activity.ts";
import type { Database, Phase, Species } from "./species.ts";

const GAS_CONSTANT = 8.314462618e-3; // kJ/(mol K), CODATA 2018
const LN10 = Math.LN10;

/** Components in columns; one row for each species and phase, as compressed sparse rows. */
export interface System {
  celsius: number;
  /** Database index of each component of the system. */
  components: number[];
  charges: Float64Array;
  /** Position of H+ among the components. */
  proton: number;
  species: Species[];
  speciesCharge: Float64Array;
  speciesWater: Float64Array;
  speciesLnK: Float64Array;
  speciesStart: Int32Array;
  speciesComponent: Int32Array;
  speciesMoles: Float64Array;
  phases: Phase[];
  /** 1 for a solid that forms within minutes by its own row, 0 for the others and for gases. */
  formsInMinutes: Uint8Array;
  phaseWater: Float64Array;
  phaseLnK: Float64Array;
  phaseStart: Int32Array;
  phaseComponent: Int32Array;
  phaseMoles: Float64Array;
}

const KELVIN = 273.15;
const T0 = 298.15;

/**
 * log10 K at a temperature, by van 't Hoff with constant enthalpy of reaction; where the row has a second point, with a constant
 * heat capacity of reaction as well, so that the curve has log K and enthalpy of 25 C and goes through that point.
 *
 * From d ln K/dT = dH/(R T^2) and dH = dH0 + dCp (T - T0) follows
 * ln K(T) = ln K0 + (dH0/R)(1/T0 - 1/T) + (dCp/R) c(T) with c(T) = ln(T/T0) + T0/T - 1 (thermodynamics of any textbook, such as
 * Anderson and Crerar, Thermodynamics in Geochemistry, from memory). The second point fixes dCp: what van 't Hoff alone misses there,
 * divided by c(T2); elsewhere the share c(T)/c(T2) of it is added.
 */
export function logKAt(entry: Species, celsius: number): number {
  const straight = vantHoff(entry, celsius);
  const second = entry.row?.second;
  if (second === undefined) return straight;
  const missed = second.logK - vantHoff(entry, second.celsius);
  return straight + (missed * bend(celsius)) / bend(second.celsius);
}

const vantHoff = ({ logK, dH }: Species, celsius: number): number =>
  logK + (dH / (GAS_CONSTANT * LN10)) * (1 / T0 - 1 / (celsius + KELVIN));

/** c(T) above; 0 at 25 C and growing to both sides of it. */
function bend(celsius: number): number {
  const T = celsius + KELVIN;
  return Math.log(T / T0) + T0 / T - 1;
}

function sparse(rows: readonly Species[], position: Map<number, number>) {
  const start = new Int32Array(rows.length + 1);
  const component: number[] = [];
  const moles: number[] = [];
  rows.forEach((row, index) => {
    for (const [which, count] of row.nu) {
      component.push(position.get(which) as number);
      moles.push(count);
    }
    start[index + 1] = component.length;
  });
  return { start, component: Int32Array.from(component), moles: Float64Array.from(moles) };
}

/**
 * Selects what the given components can form, phases that kinetics keeps from forming included (their saturation is told too).
 * @param present database indices of the components, H+ among them.
 */
export function buildSystem(database: Database, present: readonly number[], celsius: number): System {
  const position = new Map(present.map((which, index) => [which, index]));
  const possible = (entry: Species) => entry.nu.every(([which]) => position.has(which));
  const species = database.species.filter(possible);
  const phases = database.phases.filter(possible);
  const s = sparse(species, position);
  const p = sparse(phases, position);
  const lnK = (entry: Species) => logKAt(entry, celsius) * LN10;
  return {
    celsius,
    components: [...present],
    charges: Float64Array.from(present, (which) => database.components[which].charge),
    proton: position.get(database.componentIndex.get("H+") as number) as number,
    species,
    speciesCharge: Float64Array.from(species, (entry) => entry.charge),
    speciesWater: Float64Array.from(species, (entry) => entry.water),
    speciesLnK: Float64Array.from(species, lnK),
    speciesStart: s.start,
    speciesComponent: s.component,
    speciesMoles: s.moles,
    phases,
    formsInMinutes: Uint8Array.from(phases, ({ kind, row }) => (kind === "solid" && row?.formsInMinutes ? 1 : 0)),
    phaseWater: Float64Array.from(phases, (entry) => entry.water),
    phaseLnK: Float64Array.from(phases, lnK),
    phaseStart: p.start,
    phaseComponent: p.component,
    phaseMoles: p.moles,
  };
}

/** Natural log of water activity for a total molality of solutes; held above one half so that a wild trial step stays finite. */
export const lnWaterActivity = (solutes: number) => Math.log(Math.max(1 - WATER_ACTIVITY_SLOPE * solutes, 0.5));
