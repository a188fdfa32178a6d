/** Which constants decide what is in a tube: those that another published value could change to a sight that differs. */
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import { compileDatabase } from "../equilibrium/species.ts";

/** Change tried of each log K: as far as published values of one constant usually lie apart (our choice). */
export const LOG_K_SHIFT = 0.3;

/**
 * Part of a component's dissolved amount that a complex must bind to count: from a quarter on, a change of log K by 0.3 moves the free
 * component by a tenth of a power of ten.
 */
const BOUND = 0.25;
/** Part of a component that must stay dissolved beside a solid for its constant to count: of less, twice as much is still next to none. */
const LEFT_OVER = 0.02;
/** Species below this are none, mol/kg. */
const NONE = 1e-7;
/** The ion product of water: its published values agree far better than the change tried. */
const SURE = "OH-";

/** Gases noticed long before they bubble, and log10 of a pressure in atm below which nobody does. */
const FELT_GASES = ["NH3(g)", "SO2(g)", "CO2(g)"];
const FELT = -6;

const database = compileDatabase();
const entries = new Map([...database.species, ...database.phases].map((entry) => [entry.id, entry]));
const parts = (id: string) => entries.get(id)?.nu ?? [];
const isComplex = (id: string) => entries.get(id)?.row !== undefined && id !== SURE;

/**
 * The solver, noting in `met` every complex, solid and gas of the constant set whose log K counts in what it solves, and every solid that
 * would form if its log K were a little other.
 */
export function notingDecisive(met: Set<string>, solve: Solver): Solver {
  return (problem, conditions, start) => {
    const result = solve(problem, conditions, start);
    if (result.converged) note(result, met);
    return result;
  };
}

function note(result: EquilibriumResult, met: Set<string>): void {
  const { molality, phases, saturation, waterKg } = result;
  const dissolved = byComponent(molality);
  const solid = byComponent(phases);
  for (const [id, own] of molality) {
    if (own < NONE || met.has(id) || !isComplex(id)) continue;
    if (parts(id).some(([component, n]) => Math.abs(n) * own > BOUND * dissolved[component])) met.add(id);
  }
  for (const [id, mol] of phases) {
    if (mol <= 0 || met.has(id)) continue;
    if (parts(id).every(([component]) => dissolved[component] * waterKg > LEFT_OVER * solid[component])) met.add(id);
  }
  for (const [id, log] of saturation) if (Math.abs(log) < LOG_K_SHIFT && !phases.has(id)) met.add(id);
  for (const gas of FELT_GASES) if ((saturation.get(gas) ?? Number.NEGATIVE_INFINITY) > FELT) met.add(gas);
}

/** How much of each component the species hold, taken or given (a hydroxide counts as the protons it lacks). */
function byComponent(amounts: ReadonlyMap<string, number>): Float64Array {
  const held = new Float64Array(database.components.length);
  for (const [id, own] of amounts) {
    if (own > 0) for (const [component, n] of parts(id)) held[component] += Math.abs(n) * own;
  }
  return held;
}
