/**
 * A test tube and what is in it. One cm3 of any solution counts as one gram of water: at bench strength the error is a few per cent in
 * concentration, far below what changes an observation.
 */
import { ALKALINE, HEAT_OPENS, REDOX_GATES, TEMPERATURE } from "../constants/kinetic-gates.ts";
import type { EquilibriumResult, Solver, Start } from "../equilibrium/solve.ts";
import { compileDatabase } from "../equilibrium/species.ts";
import type { Components } from "./composition.ts";

/** The chemistry did not come to an answer; the caller reports it and never guesses. */
export class NoEquilibrium extends Error {
  override name = "NoEquilibrium";
}

export interface Tube {
  /** mol of each component, gases that left taken off. */
  contents: Components;
  /** Water the contents were brought in, kg. */
  waterKg: number;
  celsius: number;
  /** Pieces of aluminium foil lie in it. */
  aluminium: boolean;
  /** Solids opened by heat so far. */
  opened: string[];
  /** Gates that have acted so far, with mol turned over. */
  acted: Map<string, number>;
  /** Gas that has left so far, mol by id. */
  left: Map<string, number>;
  result: EquilibriumResult | undefined;
  start: Start | undefined;
}

/** Partial pressure at which dissolved gas leaves as bubbles, atm: that of the air around. */
const BUBBLING = { "CO2(g)": 1, "SO2(g)": 1, "NH3(g)": 1 } as const;

const gasPhases = new Map(
  compileDatabase().phases.flatMap((phase) => (phase.kind === "gas" ? [[phase.id, phase]] : [])),
);
const componentIds = compileDatabase().components.map(({ id }) => id);

export function emptyTube(): Tube {
  return {
    contents: {},
    waterKg: 0,
    celsius: TEMPERATURE.room.value,
    aluminium: false,
    opened: [],
    acted: new Map(),
    left: new Map(),
    result: undefined,
    start: undefined,
  };
}

/** Pours `cm3` of a solution with the given components (mol/dm3) into the tube. */
export function pour(tube: Tube, perDm3: Components, cm3: number): void {
  for (const [id, amount] of Object.entries(perDm3)) {
    tube.contents[id] = (tube.contents[id] ?? 0) + (amount * cm3) / 1000;
  }
  tube.waterKg += cm3 / 1000;
}

/** Lets the tube come to rest: gates act, solids form or dissolve, gas above one atmosphere leaves. Needs water in the tube. */
export function settle(tube: Tube, solve: Solver): EquilibriumResult {
  passGates(tube);
  const outcome = solve(
    { totals: tube.contents, waterKg: tube.waterKg },
    { celsius: tube.celsius, gases: BUBBLING, alsoAllowed: tube.opened },
    tube.start,
  );
  if (!outcome.converged) throw new NoEquilibrium(outcome.reason);
  for (const [id, mol] of outcome.phases) if (gasPhases.has(id) && mol > 0) takeGas(tube, id, mol);
  tube.result = outcome;
  tube.start = outcome.start;
  return outcome;
}

/** Takes gas out of the tube, mol. */
export function takeGas(tube: Tube, id: string, mol: number): void {
  const phase = gasPhases.get(id);
  if (!phase) throw new RangeError(`${id} is not a gas of the constant set`);
  for (const [index, moles] of phase.nu) {
    const component = componentIds[index];
    tube.contents[component] = (tube.contents[component] ?? 0) - moles * mol;
  }
  tube.contents.H2O = (tube.contents.H2O ?? 0) - phase.water * mol;
  tube.left.set(id, (tube.left.get(id) ?? 0) + mol);
}

/** Partial pressure of a gas above the liquid, atm; 0 when nothing in the tube makes it. */
export function pressureOf(result: EquilibriumResult, id: string): number {
  const log = result.saturation.get(id);
  return log === undefined ? 0 : 10 ** log;
}

function passGates(tube: Tube): void {
  const hot = tube.celsius > TEMPERATURE.room.value;
  for (const gate of REDOX_GATES) {
    if (gate.needs.heat && !hot) continue;
    if (gate.needs.aluminium && !tube.aluminium) continue;
    const pH = tube.result?.pH ?? 7;
    if (gate.needs.alkali && pH <= ALKALINE.strong.value) continue;
    if (gate.needs.notAlkaline && pH > ALKALINE.any.value) continue;
    if (gate.extent < 1 && tube.acted.has(gate.id)) continue;
    let turns = Number.POSITIVE_INFINITY;
    for (const [id, change] of Object.entries(gate.change)) {
      if (change >= 0 || id === "H+") continue;
      // What a product binds of this reactant is not free to react.
      const bound = gate.binds?.ion === id ? gate.binds.moles : 0;
      const product = gate.binds?.with ?? "";
      const free = (tube.contents[id] ?? 0) - bound * (tube.contents[product] ?? 0);
      turns = Math.min(turns, free / (bound * (gate.change[product] ?? 0) - change));
    }
    turns *= gate.extent;
    if (!(turns > 1e-12)) continue;
    for (const [id, change] of Object.entries(gate.change)) {
      tube.contents[id] = (tube.contents[id] ?? 0) + change * turns;
      if (change < 0 && id !== "H+" && tube.contents[id] < 1e-15) delete tube.contents[id];
    }
    tube.acted.set(gate.id, (tube.acted.get(gate.id) ?? 0) + turns);
  }
  for (const { solid, fromCelsius } of HEAT_OPENS) {
    if (tube.celsius >= fromCelsius && !tube.opened.includes(solid)) tube.opened = [...tube.opened, solid];
  }
}

/** True while aluminium foil fizzes: in warm, strong alkali. */
export const fizzes = (tube: Tube): boolean =>
  tube.aluminium && tube.celsius > TEMPERATURE.room.value && (tube.result?.pH ?? 7) > ALKALINE.strong.value;
