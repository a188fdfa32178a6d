/**
 * The constant set in the form the solver works with: each reaction row read once into numbers. `nu` is the stoichiometry on the
 * basis components: what one mole of the species or phase is made of (water counted apart).
 */
import { HYDROLYSIS_ENTHALPY } from "../constants/log-k/estimates.ts";
import { basis, type Reaction, reactions } from "../constants/log-k/index.ts";
import { parseEquation, type Term } from "../formula/equation.ts";

export const WATER = "H2O";

export interface Species {
  id: string;
  charge: number;
  /** Moles of each basis component in one mole, by component index. */
  nu: [component: number, moles: number][];
  /** Moles of water in one mole. */
  water: number;
  /** log10 K of formation from the components at 25 C, ionic strength 0, molal. */
  logK: number;
  /** Reaction enthalpy, kJ/mol. Where unknown: estimated for hydroxo complexes, else 0 (K then stays at its 25 C value). */
  dH: number;
  row: Reaction | undefined;
}

/** A solid or a gas: `logK` is that of dissolving one mole to components (solubility product, or gas at 1 atm). */
export interface Phase extends Species {
  kind: "solid" | "gas";
}

export interface Database {
  components: { id: string; charge: number }[];
  componentIndex: ReadonlyMap<string, number>;
  species: Species[];
  phases: Phase[];
}

/** Reads reaction rows into a database. Throws a RangeError naming the row when a term is neither a component nor the row's own species. */
export function compileDatabase(rows: readonly Reaction[] = reactions): Database {
  if (rows !== reactions) return compile(rows);
  standard ??= compile(rows);
  return standard;
}

/** The database of the whole constant set, read once: every room asks for it. */
let standard: Database | undefined;

function compile(rows: readonly Reaction[]): Database {
  const components = basis.filter(({ id }) => id !== WATER).map(({ id, charge }) => ({ id, charge }));
  const componentIndex = new Map(components.map(({ id }, index) => [id, index]));
  const species: Species[] = components.map(({ id, charge }, index) => ({
    id,
    charge,
    nu: [[index, 1]],
    water: 0,
    logK: 0,
    dH: 0,
    row: undefined,
  }));
  const phases: Phase[] = [];
  for (const row of rows) {
    const equation = parseEquation(row.reaction);
    const dissolution = row.phase !== "aqueous";
    const own = dissolution ? equation.left[0] : equation.right[0];
    const nu = new Map<number, number>();
    let water = 0;
    const count = (term: Term, sign: number) => {
      const id = term.formula.text;
      if (id === WATER) water += sign * term.coefficient;
      else {
        const index = componentIndex.get(id);
        if (index === undefined) throw new RangeError(`${row.reaction}: ${id} is not a basis component`);
        nu.set(index, (nu.get(index) ?? 0) + sign * term.coefficient);
      }
    };
    for (const term of equation.left) if (term !== own) count(term, dissolution ? -1 : 1);
    for (const term of equation.right) if (term !== own) count(term, dissolution ? 1 : -1);
    const entry: Species = {
      id: own.formula.text,
      charge: own.formula.charge,
      nu: [...nu],
      water,
      logK: row.logK,
      dH: row.dH ?? estimatedEnthalpy(row, nu.get(componentIndex.get("H+") as number) ?? 0),
      row,
    };
    if (row.phase === "aqueous") {
      if (row.formsInMinutes) species.push(entry);
    } else phases.push({ ...entry, kind: row.phase });
  }
  return { components, componentIndex, species, phases };
}

/** A hydroxo complex without a published enthalpy gets the mean of those that have one, for each proton set free. */
function estimatedEnthalpy(row: Reaction, protons: number): number {
  return row.phase === "aqueous" && protons < 0 ? -protons * HYDROLYSIS_ENTHALPY.value : 0;
}
