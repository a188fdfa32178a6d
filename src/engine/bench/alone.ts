/** A solution by itself: a bottle is asked for again with every test that pours from it, so each solver's answers are kept. */
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import { type Amounts, amountsOf } from "./amounts.ts";
import type { Components } from "./composition.ts";

const keys = new WeakMap<Readonly<Components>, string>();

/** What a bottle holds, as text; of a bottle met before it is known. */
function keyOf(components: Readonly<Components>): string {
  const before = keys.get(components) ?? JSON.stringify(components);
  keys.set(components, before);
  return before;
}

const known = new WeakMap<Solver, Map<string, EquilibriumResult>>();

/** Equilibrium of 1 kg of water with these components (mol), cold and by itself; undefined when the solver finds none. */
export function alone(components: Readonly<Components>, solve: Solver): EquilibriumResult | undefined {
  const answers = known.get(solve) ?? new Map<string, EquilibriumResult>();
  known.set(solve, answers);
  const key = keyOf(components);
  const before = answers.get(key);
  if (before) return before;
  const result = solve({ totals: components, waterKg: 1 });
  if (!result.converged) return undefined;
  answers.set(key, result);
  return result;
}

const amounts = new WeakMap<EquilibriumResult, Amounts>();

/** What it holds, mol; shared, and not to be changed. */
export function amountsAlone(components: Readonly<Components>, solve: Solver): Amounts | undefined {
  const result = alone(components, solve);
  if (!result) return undefined;
  const before = amounts.get(result) ?? amountsOf(result);
  amounts.set(result, before);
  return before;
}
