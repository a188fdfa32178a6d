/** A tube for redox tests: components poured together, brought to equilibrium with all rows of log-k, then left to react. */
import type { Components } from "../../../../src/engine/bench/composition.ts";
import { type RedoxChange, type RedoxState, redoxChanges } from "../../../../src/engine/bench/redox/redox-changes.ts";
import { compositionOf } from "../../../../src/engine/bench/redox/substances.ts";
import { MOST_ROUNDS } from "../../../../src/engine/bench/tube.ts";
import { createSolver, type EquilibriumResult } from "../../../../src/engine/equilibrium/solve.ts";

const solve = createSolver();

/** What some substances bring, mol in 1 kg of water, as components. Metals stay under their own names. */
export function mixed(mol: Readonly<Record<string, number>>): Components {
  const contents: Components = {};
  for (const [id, amount] of Object.entries(mol)) {
    for (const [component, count] of Object.entries(compositionOf(id))) {
      contents[component] = (contents[component] ?? 0) + amount * count;
    }
  }
  return contents;
}

export interface Surroundings {
  celsius?: number;
  air?: boolean;
}

/** The mixture at equilibrium, but for changes of oxidation state. */
export function atRest(
  contents: Components,
  { celsius = 25, air = false }: Surroundings = {},
): RedoxState & {
  result: EquilibriumResult;
} {
  const totals = Object.fromEntries(Object.entries(contents).filter(([id]) => !/\((s|g)\)$/.test(id)));
  const gases = { "CO2(g)": 1, "SO2(g)": 1, "NH3(g)": 1, "O2(g)": 1, "H2(g)": 1, "NO(g)": 1 };
  const result = solve({ totals, waterKg: 1 }, { celsius, gases });
  if (!result.converged) throw new Error(result.reason);
  const { pH, molality, phases, waterKg } = result;
  return { contents, waterKg, pH, molality, phases, celsius, air, result };
}

/** What happens in the first moment. */
export const firstChanges = (mol: Readonly<Record<string, number>>, around: Surroundings = {}): RedoxChange[] =>
  redoxChanges(atRest(mixed(mol), around));

/** Everything that happens until nothing more does: all changes, and the tube at the end. */
export function reactionsOf(mol: Readonly<Record<string, number>>, around: Surroundings = {}) {
  const contents = mixed(mol);
  const all: RedoxChange[] = [];
  const acted = new Set<string>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const state = atRest(contents, around);
    const changes = redoxChanges({ ...state, acted });
    if (changes.length === 0) return { all, end: state };
    for (const one of changes) {
      all.push(one);
      acted.add(one.pair);
      for (const [id, moles] of Object.entries(one.change)) {
        contents[id] =
          Math.abs((contents[id] ?? 0) + moles * one.turns) < 1e-13 ? 0 : (contents[id] ?? 0) + moles * one.turns;
      }
    }
  }
  throw new Error(`still reacting after ${MOST_ROUNDS} rounds: ${all.slice(-4).map(({ pair }) => pair)}`);
}
