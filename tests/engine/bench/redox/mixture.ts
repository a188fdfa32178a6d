/** A tube for redox tests: components poured together, brought to equilibrium with all rows of log-k, then left to react. */
import type { Components } from "../../../../src/engine/bench/composition.ts";
import { type RedoxChange, type RedoxState, redoxChanges } from "../../../../src/engine/bench/redox/index.ts";
import { compositionOf } from "../../../../src/engine/bench/redox/substances.ts";
import { basis, type Reaction, reactions } from "../../../../src/engine/constants/log-k/index.ts";
import { type MoreReaction, moreBasis, moreReactions } from "../../../../src/engine/constants/log-k/more.ts";
import { createSolver, type EquilibriumResult } from "../../../../src/engine/equilibrium/solve.ts";
import type { Database, Phase, Species } from "../../../../src/engine/equilibrium/species.ts";
import { parseEquation } from "../../../../src/engine/formula/equation.ts";

/** The solver's database over both sets of rows. */
export function databaseOfAll(): Database {
  const components = [...basis, ...moreBasis]
    .filter(({ id }) => id !== "H2O")
    .map(({ id, charge }) => ({ id, charge }));
  const componentIndex = new Map(components.map(({ id }, index) => [id, index]));
  const species: Species[] = components.map(({ id, charge }, index) => ({
    ...{ id, charge, nu: [[index, 1]], water: 0, logK: 0, dH: 0, row: undefined },
  }));
  const phases: Phase[] = [];
  const add = (row: Reaction | MoreReaction) => {
    const { left, right } = parseEquation(row.reaction);
    const own = (row.phase === "aqueous" ? right : left)[0].formula;
    const parts = compositionOf(own.text);
    const nu = Object.entries(parts).flatMap(([id, n]): [number, number][] =>
      id === "H2O" ? [] : [[componentIndex.get(id) as number, n]],
    );
    const entry: Species = {
      ...{ id: own.text, charge: own.charge, nu, water: parts.H2O ?? 0, logK: row.logK, dH: row.dH ?? 0 },
      row: row as Reaction,
    };
    if (row.phase !== "aqueous") phases.push({ ...entry, kind: row.phase });
    else if (row.formsInMinutes) species.push(entry);
  };
  for (const row of [...reactions, ...moreReactions]) add(row);
  return { components, componentIndex, species, phases };
}

const solve = createSolver(databaseOfAll());

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

const MOST_ROUNDS = 12;
