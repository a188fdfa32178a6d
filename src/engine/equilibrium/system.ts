/**
 * The part of the constant set that some components can form, laid out in flat arrays for the solver, at one temperature.
 */
import { type Names, namesOf } from "./named-values.ts";
import type { Database, Phase, Species } from "./species.ts";

const GAS_CONSTANT = 8.314462618e-3; // kJ/(mol K), CODATA 2018
const LN10 = Math.LN10;

/** A sparse matrix by rows: row i has `value[k]` in `column[k]`, k from `start[i]` to before `start[i + 1]`. */
export interface SparseRows {
  start: Int32Array;
  column: Int32Array;
  value: Float64Array;
}

/** Where the columns stand that are no components. */
interface Columns {
  /** Column of z^2/2. */
  ionic: number;
  /** Column of the moles of water. */
  water: number;
  /** Column that has 1 for a neutral species. */
  neutral: number;
  /** Number of all columns. */
  columns: number;
}

/**
 * One row for each species and phase, with its moles of each component, and three columns more, such that the ln molality of a species is
 * ln K plus its row times one vector of potentials (see speciation.ts).
 */
export interface System extends Columns {
  celsius: number;
  /** Database index of each component of the system; they are the first columns. */
  components: number[];
  charges: Float64Array;
  /** Position of H+ among the components. */
  proton: number;
  species: Species[];
  speciesNames: Names;
  speciesLnK: Float64Array;
  speciesRows: SparseRows;
  /** For each species the products of its values two by two: columns are cells of a lower triangle stored as a full square. */
  speciesProducts: SparseRows;
  phases: Phase[];
  phaseNames: Names;
  /** 1 for a solid that forms within minutes by its own row, 0 for the others and for gases. */
  formsInMinutes: Uint8Array;
  /** Places of the gases among the phases. */
  gases: number[];
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

/** Bytes that are got at a time: to get them for each mixture by itself takes longer than to fill them. */
const PIECE = 1 << 16;
let piece = new ArrayBuffer(0);
let used = 0;

/** Room for so many rows with so many values in all. */
function emptyRows(rows: number, values: number): SparseRows {
  const bytes = 12 * values + 4 * (rows + 1);
  if (used + bytes > piece.byteLength) {
    piece = new ArrayBuffer(Math.max(PIECE, bytes));
    used = 0;
  }
  const at = used;
  used = 8 * Math.ceil((at + bytes) / 8);
  return {
    value: new Float64Array(piece, at, values),
    column: new Int32Array(piece, at + 8 * values, values),
    start: new Int32Array(piece, at + 12 * values, rows + 1),
  };
}

/** What each species or phase is made of; with `more`, its z^2/2 or 1 for a neutral one as well. */
function rowsOf(entries: readonly Species[], place: Int32Array, columns: Columns, more: boolean): SparseRows {
  let values = 0;
  for (const { nu, water } of entries) values += nu.length + Number(water !== 0) + Number(more);
  const rows = emptyRows(entries.length, values);
  const { start, column, value } = rows;
  let k = 0;
  const put = (at: number, what: number) => {
    column[k] = at;
    value[k++] = what;
  };
  for (let i = 0; i < entries.length; i++) {
    const { nu, water, charge } = entries[i];
    for (const part of nu) put(place[part[0]], part[1]);
    if (water !== 0) put(columns.water, water);
    if (more && charge === 0) put(columns.neutral, 1);
    else if (more) put(columns.ionic, charge ** 2 / 2);
    start[i + 1] = k;
  }
  return rows;
}

/** All products of two values of a row, each pair once. */
function productsOf({ start, column, value }: SparseRows, columns: number): SparseRows {
  const count = start.length - 1;
  let values = 0;
  for (let i = 0; i < count; i++) {
    const length = start[i + 1] - start[i];
    values += (length * (length + 1)) / 2;
  }
  const products = emptyRows(count, values);
  let k = 0;
  for (let i = 0; i < count; i++) {
    for (let a = start[i]; a < start[i + 1]; a++) {
      for (let b = start[i]; b < start[i + 1]; b++) {
        if (column[b] > column[a]) continue;
        products.column[k] = column[a] * columns + column[b];
        products.value[k++] = value[a] * value[b];
      }
    }
    products.start[i + 1] = k;
  }
  return products;
}

/** Components as bits, 32 to a word. */
const bitsOf = (components: Iterable<number>, words: number): Int32Array => {
  const bits = new Int32Array(words);
  for (const component of components) bits[component >> 5] |= 1 << (component & 31);
  return bits;
};

/** The components of every entry of a list, as bits, entry by entry. */
const neededBy = new WeakMap<readonly Species[], Int32Array>();

/** Those made of the given components only. Bits are compared, for it goes through the whole constant set for each new mixture. */
function madeOf<T extends Species>(entries: readonly T[], present: readonly number[], components: number): T[] {
  const words = (components >> 5) + 1;
  const there = bitsOf(present, words);
  let needed = neededBy.get(entries);
  if (!needed) {
    needed = new Int32Array(entries.length * words);
    for (let i = 0; i < entries.length; i++) {
      const ofEntry = bitsOf(
        entries[i].nu.map(([component]) => component),
        words,
      );
      needed.set(ofEntry, i * words);
    }
    neededBy.set(entries, needed);
  }
  const found: T[] = [];
  next: for (let i = 0; i < entries.length; i++) {
    for (let w = 0; w < words; w++) if ((needed[i * words + w] & ~there[w]) !== 0) continue next;
    found.push(entries[i]);
  }
  return found;
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
  const species = madeOf(database.species, present, place.length);
  const phases = madeOf(database.phases, present, place.length);
  const ionic = present.length;
  const columns: Columns = { ionic, water: ionic + 1, neutral: ionic + 2, columns: ionic + 3 };
  const speciesRows = rowsOf(species, place, columns, true);
  return {
    celsius,
    components: [...present],
    charges: new Float64Array(present.map((which) => database.components[which].charge)),
    proton: place[database.componentIndex.get("H+") as number],
    ...columns,
    species,
    speciesNames: namesOf(species),
    speciesLnK: lnKs(species, celsius),
    speciesRows,
    speciesProducts: productsOf(speciesRows, columns.columns),
    phases,
    phaseNames: namesOf(phases),
    formsInMinutes: new Uint8Array(phases.map(({ kind, row }) => (kind === "solid" && row?.formsInMinutes ? 1 : 0))),
    gases: phases.flatMap(({ kind }, p) => (kind === "gas" ? [p] : [])),
    phaseLnK: lnKs(phases, celsius),
    phaseRows: rowsOf(phases, place, columns, false),
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
