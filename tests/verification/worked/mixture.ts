/** Mixtures of solutions as the worked examples state them, brought to equilibrium, and what is read off them. */
import { addIon, type Components } from "../../../src/engine/bench/composition.ts";
import { type Reaction, reactions } from "../../../src/engine/constants/log-k/index.ts";
import { type Conditions, createSolver, type EquilibriumResult } from "../../../src/engine/equilibrium/solve.ts";
import { compileDatabase, type Database, type Species, WATER } from "../../../src/engine/equilibrium/species.ts";

/** A volume of a solution: what one dm3 of it holds, mol, ions and molecules by name. */
export type Solution = [cm3: number, molPerDm3: Readonly<Record<string, number>>];

/** What is poured together, and the solids that lie in it or may form from it. */
export interface Mixture {
  of: readonly Solution[];
  /** A solid of which so much is given that some stays. */
  over?: string;
  /** Solids that may form; none but these, and the one above, where the constants are an example's own. */
  forming?: readonly string[];
}

export interface Bench {
  /** The equilibrium. Throws a RangeError for a solid that is not among the bench's constants, an Error where the solver gives up. */
  mix(mixture: Mixture): EquilibriumResult;
  /** mol/kg of a component in all dissolved species together. */
  dissolved(result: EquilibriumResult, component: string): number;
}

/** mol of a solid in one kg of water of which some is sure to stay: the most that dissolves in an example is 1.3 mol. */
const EXCESS = 5;

const KG_PER_CM3 = 1e-3;

/** The bench of the engine: its constants as shipped, activity coefficients, solids that form within minutes. */
export const shippedBench = (): Bench => bench(shipped, {});

/**
 * The ideal solution of a textbook: only the species named, each at the log K the example prints (the stoichiometry is that of our rows),
 * and activity coefficients of 1. The water of the example is pKw 14.00 unless "OH-" is among them.
 * @throws RangeError for a species that is in no row of the constants
 */
export function textbookBench(logK: Readonly<Record<string, number>>): Bench {
  const rows = Object.entries({ "OH-": -14, ...logK }).map(([id, value]): Reaction => {
    const row = rowOf(id);
    return { ...row, logK: value, formsInMinutes: row.phase === "aqueous" };
  });
  return bench(compileDatabase(rows), { ionicStrengthCap: 0 });
}

const shipped = compileDatabase(reactions);
const rowsById = new Map([...shipped.species, ...shipped.phases].map(({ id, row }) => [id, row]));

/** The row of the shipped constants that is about this species. Throws a RangeError when there is none. */
export function rowOf(id: string): Reaction {
  const row = rowsById.get(id);
  if (!row) throw new RangeError(`${id} is in no row of the constants`);
  return row;
}

function bench(database: Database, conditions: Conditions): Bench {
  const solve = createSolver(database);
  const molesOf = ({ nu }: Species, component: string) =>
    nu.find(([which]) => database.components[which].id === component)?.[1] ?? 0;
  return {
    mix({ of, over, forming = [] }) {
      const totals: Components = {};
      const waterKg = of.reduce((sum, [cm3]) => sum + cm3 * KG_PER_CM3, 0);
      for (const [cm3, solutes] of of)
        for (const [ion, mol] of Object.entries(solutes)) addIon(totals, ion, mol * cm3 * KG_PER_CM3);
      const solid = database.phases.find(({ id }) => id === over);
      if (over !== undefined && !solid) throw new RangeError(`${over} is no solid of these constants`);
      for (const [which, count] of solid?.nu ?? []) {
        const { id } = database.components[which];
        totals[id] = (totals[id] ?? 0) + count * EXCESS * waterKg;
      }
      if (solid) totals[WATER] = (totals[WATER] ?? 0) + solid.water * EXCESS * waterKg;
      const alsoAllowed = over === undefined ? forming : [...forming, over];
      const found = solve({ totals, waterKg }, { ...conditions, alsoAllowed });
      if (!found.converged) throw new Error(found.reason);
      return found;
    },
    dissolved: ({ molality }, component) =>
      database.species.reduce((sum, entry) => sum + molesOf(entry, component) * (molality.get(entry.id) ?? 0), 0),
  };
}

/** mol/kg of a species. */
export const molality = (result: EquilibriumResult, id: string): number => result.molality.get(id) ?? 0;

/** Ion product over solubility product of a solid. */
export const overSaturation = (result: EquilibriumResult, solid: string): number =>
  10 ** (result.saturation.get(solid) ?? Number.NEGATIVE_INFINITY);

/** Halvings after which two neighbouring numbers are as close as doubles can be. */
const HALVINGS = 60;

/**
 * The mixture at which a reading reaches a wanted figure, found by halving between two amounts of which one is below and one above.
 * @throws RangeError when the figure does not lie between the readings at the two ends
 */
export function where(
  mixture: (amount: number) => EquilibriumResult,
  reading: (result: EquilibriumResult) => number,
  wanted: number,
  [from, to]: readonly [number, number],
): EquilibriumResult {
  const off = (amount: number) => reading(mixture(amount)) - wanted;
  const rises = off(to) > 0;
  if (rises === off(from) > 0) throw new RangeError(`the reading does not pass ${wanted} between ${from} and ${to}`);
  let [low, high] = rises ? [from, to] : [to, from];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (off(middle) > 0) high = middle;
    else low = middle;
  }
  return mixture(high);
}

/** A metal in ammonia of which 1.0 mol/dm3 stays free; the mixture is asked for with more and more ammonia, mol/dm3. */
export const inFreeAmmonia = (bench: Bench, mixture: (ammonia: number) => Mixture): EquilibriumResult =>
  where(
    (nh3) => bench.mix(mixture(nh3)),
    (result) => molality(result, "NH3"),
    1,
    [0.9, 10],
  );
