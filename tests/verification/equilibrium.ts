/** 60 mixtures against the outputs of PHREEQC 3.8.9 (public-domain code of the US Geological Survey) with the same constants. */
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { compileDatabase, type Database } from "../../src/engine/equilibrium/species.ts";
import { type Comparison, comparison } from "./comparison.ts";
import { reasonFor, reference } from "./reference.ts";

interface Mixture {
  id: string;
  reagent_mol: Record<string, number>;
  gas_phases_allowed_at_1_atm: boolean;
  phreeqc: { pH: number; species_mol_per_kgw: Record<string, number>; solids_mol: Record<string, number> };
}
interface EquilibriumReference {
  stockComposition: Record<string, Record<string, number>>;
  mixtures: Mixture[];
}

export const equilibriumReference = reference<EquilibriumReference>("equilibrium-open.json");

/** Largest difference of log10 molality, for species above `COMPARED_ABOVE`, and of solids in mol/kg. */
const LOG_TOLERANCE = 1e-6;
const SOLID_TOLERANCE = 1e-8;
const COMPARED_ABOVE = 1e-9;

/** Rows the reference runs had without their water (tests/reference/README.md); the comparison of the solver uses them likewise. */
const WITHOUT_WATER = ["CO2(g)", "SO2(g)", "CaSO3*0.5H2O(s)"];

/** Our constants as the reference runs had them. */
export function referenceDatabase(): Database {
  const database = compileDatabase();
  const phases = database.phases.map((phase) => (WITHOUT_WATER.includes(phase.id) ? { ...phase, water: 0 } : phase));
  return { ...database, phases };
}

/** Component totals of a mixture, mol, for 1 kg of water. */
export function totalsOf({ reagent_mol }: Mixture): Record<string, number> {
  const totals: Record<string, number> = {};
  for (const [stock, mol] of Object.entries(reagent_mol)) {
    for (const [component, count] of Object.entries(equilibriumReference.stockComposition[stock])) {
      totals[component] = (totals[component] ?? 0) + count * mol;
    }
  }
  return totals;
}

/** Conditions of the reference runs: Davies without a cap, gases that may leave at 1 atm where the mixture says so. */
export const conditionsOf = ({ gas_phases_allowed_at_1_atm: open }: Mixture) => ({
  ionicStrengthCap: Number.POSITIVE_INFINITY,
  ...(open && { gases: { "CO2(g)": 1, "SO2(g)": 1, "NH3(g)": 1 } }),
});

export function compareEquilibrium(): Comparison {
  const result = comparison("equilibrium, 60 mixtures", "PHREEQC 3.8.9, tests/reference/equilibrium-open.json");
  const solve = createSolver(referenceDatabase());
  for (const mixture of equilibriumReference.mixtures) {
    result.compared++;
    const found = solve({ totals: totalsOf(mixture), waterKg: 1 }, conditionsOf(mixture));
    const difference = found.converged ? differenceFrom(mixture, found.molality, found.phases) : found.reason;
    if (difference === undefined) result.agreed++;
    else result.misses.push({ id: mixture.id, difference, reason: reasonFor(mixture.id) });
  }
  return result;
}

function differenceFrom(
  { phreeqc }: Mixture,
  molality: ReadonlyMap<string, number>,
  phases: ReadonlyMap<string, number>,
): string | undefined {
  const solids = [...phases.keys()].sort().join(", ");
  const expected = Object.keys(phreeqc.solids_mol).sort().join(", ");
  if (solids !== expected) return `phases ${solids || "none"} where the reference has ${expected || "none"}`;
  for (const [id, amount] of Object.entries(phreeqc.solids_mol)) {
    const off = Math.abs((phases.get(id) ?? 0) - amount);
    if (!(off <= SOLID_TOLERANCE)) return `${id} off by ${off.toExponential(1)} mol/kg`;
  }
  for (const [id, amount] of Object.entries(phreeqc.species_mol_per_kgw)) {
    if (amount <= COMPARED_ABOVE) continue;
    const off = Math.abs(Math.log10((molality.get(id) ?? 0) / amount));
    if (!(off <= LOG_TOLERANCE)) return `${id} off by ${off.toExponential(1)} in log10`;
  }
  return undefined;
}
