/**
 * A test tube and what is in it. One cm3 of any solution counts as one gram of water: at bench strength the error is a few per cent in
 * concentration, far below what changes an observation.
 */
import { HEAT_OPENS, NEEDS_ALKALI, TAKES_UP_ACID, TEMPERATURE } from "../constants/kinetic-gates.ts";
import type { EquilibriumResult, Solver, Start } from "../equilibrium/solve.ts";
import { compileDatabase, WATER } from "../equilibrium/species.ts";
import type { Components } from "./composition.ts";
import { type RedoxChange, redoxChanges } from "./redox/redox-changes.ts";
import { AIR, METALS } from "./redox/substances.ts";

/** The chemistry did not come to an answer; the caller reports it and never guesses. */
export class NoEquilibrium extends Error {
  override name = "NoEquilibrium";
}

/** A change of oxidation state that has happened in a tube. */
export interface Reacted {
  pair: string;
  /** Balanced, mhchem with states. */
  equation: string;
  source: string;
  /** The potentials leave it near the limit. */
  borderline: boolean;
  /** Turns of the equation, mol. */
  turns: number;
  /** Electrons passed in one turn. */
  electrons: number;
}

/** What has happened in a tube is replaced by more of it and never changed: copies share it. */
export interface Tube {
  /** mol of each component, gases that left taken off. */
  contents: Components;
  /** Water the contents were brought in, kg. */
  waterKg: number;
  celsius: number;
  /** It stands open to the air long enough for that to matter. */
  air: boolean;
  /** Something is still being poured in. */
  pouring: boolean;
  /** Solids there from the start or opened by heat, as long as any of them is left. */
  opened: string[];
  /** Changes of oxidation state so far, by equation, with mol turned over. */
  reactions: ReadonlyMap<string, Reacted>;
  /** Pairs of couples that have acted since something was last added or heated. */
  pairs: ReadonlySet<string>;
  /** Gas that has left so far, mol by id. */
  left: ReadonlyMap<string, number>;
  result: EquilibriumResult | undefined;
  start: Start | undefined;
}

/** Partial pressure at which dissolved gas leaves as bubbles, atm: that of the air around. */
export const BUBBLING = { "CO2(g)": 1, "SO2(g)": 1, "NH3(g)": 1, "H2(g)": 1, "O2(g)": 1, "NO(g)": 1 } as const;

const gasPhases = new Map(
  compileDatabase().phases.flatMap((phase) => (phase.kind === "gas" ? [[phase.id, phase]] : [])),
);
const componentIds = compileDatabase().components.map(({ id }) => id);

/** No couples have acted on what is there now. */
export const NO_PAIRS: ReadonlySet<string> = new Set();

export function emptyTube(): Tube {
  return {
    contents: {},
    waterKg: 0,
    celsius: TEMPERATURE.room.value,
    air: false,
    pouring: false,
    opened: [],
    reactions: new Map(),
    pairs: NO_PAIRS,
    left: new Map(),
    result: undefined,
    start: undefined,
  };
}

/** A tube with the same in it, that goes its own way from here. */
export const copyOfTube = <T extends Tube>(tube: T): T => ({ ...tube, contents: { ...tube.contents } });

/** Pours `cm3` of a solution with the given components (mol/dm3) into the tube. */
export function pour(tube: Tube, perDm3: Readonly<Components>, cm3: number): void {
  for (const id in perDm3) tube.contents[id] = (tube.contents[id] ?? 0) + (perDm3[id] * cm3) / 1000;
  tube.waterKg += cm3 / 1000;
  tube.pairs = NO_PAIRS;
}

/**
 * Rounds of equilibrium and redox change after which a mixture is taken to run in circles. Most end after two or three; a product that
 * lets go of a reactant again, such as thiosulfate in a copper(I) complex, brings the end in ever smaller steps: some fifty of two thirds.
 */
export const MOST_ROUNDS = 100;

/**
 * Lets the tube come to rest: solids form or dissolve, gas above one atmosphere leaves, and what can change its oxidation state in minutes
 * does, until nothing more happens. Needs water in the tube.
 * @throws NoEquilibrium when the solver gives up or the reactions do not end
 */
export function settle(tube: Tube, solve: Solver): EquilibriumResult {
  const tried: string[] = [];
  const past: RedoxChange[][] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const result = atEquilibrium(tube, solve);
    if (openByHeat(tube, result, tried)) continue;
    const now = react(tube, result);
    if (now.length === 0) return result;
    past.push(now);
    const cycle = cycleIn(past);
    // What comes after a leap is not held against what was before it.
    if (cycle && again(tube, cycle)) past.length = 0;
  }
  throw new NoEquilibrium(`oxidation and reduction do not come to an end in ${Object.keys(tube.contents).join(", ")}`);
}

function atEquilibrium(tube: Tube, solve: Solver): EquilibriumResult {
  const outcome = solve(
    { totals: withoutMetals(tube.contents), waterKg: tube.waterKg },
    { celsius: tube.celsius, gases: BUBBLING, alsoAllowed: tube.opened, closed: closedIn(tube) },
    tube.start,
  );
  if (!outcome.converged) throw new NoEquilibrium(outcome.reason);
  for (const [id, mol] of outcome.phases) if (gasPhases.has(id) && mol > 0) takeGas(tube, id, mol);
  // A solid that has dissolved to the last grain comes down again as any other precipitate does.
  if (tube.opened.length > 0) tube.opened = tube.opened.filter((id) => (outcome.phases.get(id) ?? 0) > 0);
  tube.result = outcome;
  tube.start = outcome.start;
  return outcome;
}

/** Solids that do not form in a tube to which nothing alkaline was added. */
function closedIn({ contents }: Tube): readonly string[] | undefined {
  const metal = contents[NEEDS_ALKALI.of] ?? 0;
  if (metal <= 0) return undefined;
  let taken = -(contents["H+"] ?? 0);
  for (const id in TAKES_UP_ACID) taken += (contents[id] ?? 0) * TAKES_UP_ACID[id];
  return taken < metal * NEEDS_ALKALI.least ? NEEDS_ALKALI.solids : undefined;
}

/** What dissolves at once: pieces of metal wait for a change of oxidation state. */
function withoutMetals(contents: Components): Components {
  if (!METALS.some((metal) => metal in contents)) return contents;
  const totals = { ...contents };
  for (const metal of METALS) delete totals[metal];
  return totals;
}

/** Carries out the changes of oxidation state that happen now, and returns them. */
function react(tube: Tube, { pH, molality, phases }: EquilibriumResult): RedoxChange[] {
  const { contents, waterKg, celsius, air, pouring, pairs: acted } = tube;
  const changes = redoxChanges({ contents, waterKg, pH, molality, phases, celsius, air, pouring, acted });
  for (const one of changes) {
    for (const [id, moles] of Object.entries(one.change)) change(contents, id, moles * one.turns);
    note(tube, one, one.turns);
  }
  if (changes.length > 0) tube.pairs = new Set([...acted, ...changes.map(({ pair }) => pair)]);
  return changes;
}

/** Makes more of a component, or less; what is used up is gone. */
function change(contents: Components, id: string, mol: number): void {
  if (id === AIR) return;
  contents[id] = (contents[id] ?? 0) + mol;
  if (mol < 0 && id !== "H+" && id !== WATER && contents[id] < ABSENT) delete contents[id];
}

function note(tube: Tube, { pair, equation, source, electrons, borderline }: RedoxChange, turns: number): void {
  const all = (tube.reactions.get(equation)?.turns ?? 0) + turns;
  const now = { pair, equation, source, borderline, electrons, turns: all };
  tube.reactions = new Map([...tube.reactions, [equation, now]]);
}

/** How much two rounds may differ and count as the same, in how many a cycle may close, and how much of what is left it takes. Our choices. */
const ALIKE = 0.1;
const LONGEST_CYCLE = 3;
const MOST_OF_IT = 0.9;

const isTheSame = (one: readonly RedoxChange[], other: readonly RedoxChange[]): boolean =>
  one.length === other.length &&
  one.every(
    ({ equation, turns }, n) => other[n].equation === equation && Math.abs(other[n].turns - turns) <= ALIKE * turns,
  );

/** The last rounds, if they do what those before them did: as much only as there is of what comes back each time, a catalyst. */
function cycleIn(past: readonly RedoxChange[][]): RedoxChange[] | undefined {
  for (let length = 1; length <= LONGEST_CYCLE && 2 * length <= past.length; length++) {
    const last = past.slice(-length);
    const before = past.slice(-2 * length, -length);
    if (last.every((round, n) => isTheSame(round, before[n]))) return last.flat();
  }
  return undefined;
}

/** The same cycle many times over, up to most of what it uses up. Returns whether it went round at all. */
function again(tube: Tube, cycle: readonly RedoxChange[]): boolean {
  const { contents } = tube;
  const net = new Map<string, number>();
  for (const { change, turns } of cycle)
    for (const [id, moles] of Object.entries(change)) net.set(id, (net.get(id) ?? 0) + moles * turns);
  let times = Number.POSITIVE_INFINITY;
  for (const [id, mol] of net) {
    // What a cycle gives back but for rounding is the catalyst.
    if (id === "H+" || id === WATER || id === AIR || mol >= -ABSENT) continue;
    times = Math.min(times, (contents[id] ?? 0) / -mol);
  }
  times *= MOST_OF_IT;
  if (times <= 1 || !Number.isFinite(times)) return false;
  for (const [id, mol] of net) change(contents, id, mol * times);
  for (const one of cycle) note(tube, one, one.turns * times);
  return true;
}

/** Less than this of a component is none, mol. */
const ABSENT = 1e-13;

/** Opens the solids that heat makes of those there, each once in a rest. Returns whether there were any. */
function openByHeat(tube: Tube, { phases }: EquilibriumResult, tried: string[]): boolean {
  if (tube.celsius <= TEMPERATURE.room.value || phases.size === 0) return false;
  const opens = HEAT_OPENS.filter(
    ({ solid, of, fromCelsius }) => tube.celsius >= fromCelsius && (phases.get(of) ?? 0) > 0 && !tried.includes(solid),
  ).map(({ solid }) => solid);
  if (opens.length === 0) return false;
  tried.push(...opens);
  tube.opened = [...new Set([...tube.opened, ...opens])];
  return true;
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
  tube.left = new Map([...tube.left, [id, (tube.left.get(id) ?? 0) + mol]]);
}

/** Partial pressure of a gas above the liquid, atm; 0 when nothing in the tube makes it. */
export function pressureOf(result: EquilibriumResult, id: string): number {
  const log = result.saturation.get(id);
  return log === undefined ? 0 : 10 ** log;
}
