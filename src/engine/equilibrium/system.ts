/**
 * The part of the constant set that some components can form, laid out in flat arrays for the solver, at one temperature.
 */
import type { Database, Phase, Species } from "./species.ts";

const GAS_CONSTANT = 8.314462618e-3; // kJ/(mol K), CODATA 2018
const LN10 = Math.LN10;

/** A sparse matrix by rows: row i has `value[k]` in `column[k]`, k from `start[i]` to before `start[i + 1]`. */
export interface SparseRows {
  start: Int32Array;
  column: Int32Array;
  value: Float64Array;
}

/**
 * One row for each species and phase, with its moles of each component, and three columns more, such that the ln molality of a species is
 * ln K plus its row times one vector of potentials (see speciation.ts).
 */
export interface System {
  celsius: number;
  /** Database index of each component of the system; they are the first columns. */
  components: number[];
  charges: Float64Array;
  /** Position of H+ among the components. */
  proton: number;
  /** Number of columns. */
  columns: number;
  /** Column of z^2/2. */
  ionic: number;
  /** Column of the moles of water. */
  water: number;
  /** Column that has 1 for a neutral species. */
  neutral: number;
  species: Species[];
  speciesLnK: Float64Array;
  speciesRows: SparseRows;
  /** For each species the products of its values two by two: columns are cells of a lower triangle stored as a full square. */
  speciesProducts: SparseRows;
  phases: Phase[];
  /** 1 for a solid that forms within minutes by its own row, 0 for the others and for gases. */
  formsInMinutes: Uint8Array;
  phaseLnK: Float64Array;
  phaseRows: SparseRows;
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

type Entry = [column: number, value: number];

function sparseRows(rows: readonly (readonly Entry[])[]): SparseRows {
  const start = new Int32Array(rows.length + 1);
  for (let i = 0; i < rows.length; i++) start[i + 1] = start[i] + rows[i].length;
  const column = new Int32Array(start[rows.length]);
  const value = new Float64Array(start[rows.length]);
  let k = 0;
  for (const row of rows) {
    for (const [at, what] of row) {
      column[k] = at;
      value[k++] = what;
    }
  }
  return { start, column, value };
}

/** All products of two values of a row, each pair once. */
function products(row: readonly Entry[], columns: number): Entry[] {
  const pairs: Entry[] = [];
  for (const [a, x] of row) {
    for (const [b, y] of row) if (b <= a) pairs.push([a * columns + b, x * y]);
  }
  return pairs;
}

/**
 * Selects what the given components can form, phases that kinetics keeps from forming included (their saturation is told too).
 * @param present database indices of the components, H+ among them.
 */
export function buildSystem(database: Database, present: readonly number[], celsius: number): System {
  const place = new Int32Array(database.components.length).fill(-1);
  present.forEach((which, index) => {
    place[which] = index;
  });
  const possible = (entry: Species) => entry.nu.every(([which]) => place[which] >= 0);
  const species = database.species.filter(possible);
  const phases = database.phases.filter(possible);
  const ionic = present.length;
  const water = ionic + 1;
  const neutral = ionic + 2;
  const columns = ionic + 3;
  const made = ({ nu, water: bound }: Species): Entry[] => {
    const row = nu.map(([which, moles]): Entry => [place[which], moles]);
    if (bound !== 0) row.push([water, bound]);
    return row;
  };
  const speciesRows = species.map((entry) => {
    const row = made(entry);
    row.push(entry.charge === 0 ? [neutral, 1] : [ionic, entry.charge ** 2 / 2]);
    return row;
  });
  return {
    celsius,
    components: [...present],
    charges: new Float64Array(present.map((which) => database.components[which].charge)),
    proton: place[database.componentIndex.get("H+") as number],
    columns,
    ionic,
    water,
    neutral,
    species,
    speciesLnK: lnKs(species, celsius),
    speciesRows: sparseRows(speciesRows),
    speciesProducts: sparseRows(speciesRows.map((row) => products(row, columns))),
    phases,
    formsInMinutes: new Uint8Array(phases.map(({ kind, row }) => (kind === "solid" && row?.formsInMinutes ? 1 : 0))),
    phaseLnK: lnKs(phases, celsius),
    phaseRows: sparseRows(phases.map(made)),
  };
}

/** The same components at another temperature. */
export const systemAt = (system: System, celsius: number): System => ({
  ...system,
  celsius,
  speciesLnK: lnKs(system.species, celsius),
  phaseLnK: lnKs(system.phases, celsius),
});

const lnKs = (entries: readonly Species[], celsius: number): Float64Array =>
  new Float64Array(entries.map((entry) => logKAt(entry, celsius) * LN10));
