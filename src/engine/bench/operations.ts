/** What the hands do to a tube: each step of a procedure, with the tube as it stands after each small addition. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { BOILED_AWAY, TEMPERATURE } from "../constants/kinetic-gates.ts";
import { reagents } from "../constants/reagents.ts";
import { STARCH } from "../constants/starch.ts";
import { WATER_KG_PER_MOL } from "../equilibrium/newton.ts";
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import { molarMass } from "../formula/molar-mass.ts";
import { parseFormula } from "../formula/parse.ts";
import type { Step } from "../practical.ts";
import { type Components, componentsOf, hasConstants } from "./composition.ts";
import { filter, type SetAside, wash } from "./filter.ts";
import { pourPortions } from "./pouring.ts";
import { NO_PAIRS, pressureOf, settle, type Tube, takeGas } from "./tube.ts";

/** Called after each small change, so that a precipitate that comes and goes is seen. */
export type Watch = (result: EquilibriumResult, tube: Tube) => void;

/** An unknown reagent: the message says what was found and what was expected. */
export class UnknownReagent extends Error {
  override name = "UnknownReagent";
}

const byId = new Map(reagents.map((reagent) => [reagent.id, reagent]));

/** Reagents that bring no ions and still have a part to play. */
const WITHOUT_IONS = ["H2O(l)", "Al(s)", "Zn(s)", STARCH.reagent];

/** Reagents the engine can carry out: those whose ions all have constants, and solids with a gate of their own. */
export const usableReagents: readonly string[] = reagents
  .filter(({ id, kind, components }) => {
    const ions = Object.keys(components);
    return ions.length > 0 ? kind === "solution" && ions.every(hasConstants) : WITHOUT_IONS.includes(id);
  })
  .map(({ id }) => id);

/**
 * Components of a reagent in mol/dm3; `molPerDm3` overrides the usual strength, not that of the acid an acidified one is made up with.
 * Water and starch bring none.
 */
export function reagentComponents(id: string, molPerDm3?: number): Readonly<Components> {
  const key = `${id} ${molPerDm3}`;
  const before = brought.get(key);
  if (before) return before;
  const found = componentsIn(id, molPerDm3);
  brought.set(key, found);
  return found;
}

/** What bottles hold, as far as it was asked for: every portion of every test asks for the same few. */
const brought = new Map<string, Readonly<Components>>();

function componentsIn(id: string, molPerDm3: number | undefined): Components {
  const reagent = byId.get(id);
  if (!reagent || !usableReagents.includes(id)) {
    throw new UnknownReagent(`found the reagent "${id}", expected one of ${usableReagents.join(", ")}`);
  }
  const strength = molPerDm3 ?? reagent.concentration ?? 1;
  const perDm3 = Object.entries(componentsOf(reagent.components)).map(([ion, n]): [string, number] => [
    ion,
    n * strength,
  ]);
  const components: Components = Object.fromEntries(perDm3);
  for (const [ion, n] of reagent.sulfuricAcid ? Object.entries(SULFURIC_ACID) : []) {
    components[ion] = (components[ion] ?? 0) + n * (reagent.sulfuricAcid ?? 0);
  }
  for (const [ion, n] of components.Cl2 ? Object.entries(CHLORIDE_OF_CHLORINE) : []) {
    components[ion] = (components[ion] ?? 0) + n * components.Cl2;
  }
  return components;
}

const SULFURIC_ACID: Components = { "H+": 2, "SO4^2-": 1 };

/** For each mole of chlorine, mol: a mixture given no chloride at all would be reckoned without what chlorine makes of itself in water. */
const CHLORIDE_OF_CHLORINE: Components = { "H+": 1e-6, "Cl-": 1e-6 };

/** Parts of a drop as it mixes in: where it lands the reagent is scarce for a moment, and what forms there is seen. */
const WITHIN_DROP = [0.1, 0.2, 0.3, 0.4];
/**
 * Each portion after the first drop takes the volume added so far to this many times itself. What a mixture is depends on the ratio of its
 * parts, so portions grow by ratio. Measured over 10 092 additions (all ions and reagents, four strengths) against half-drops all the way,
 * 15 differ in a precipitate or a gas, at a fifth of the time; drops first and fixed parts after them differ in 30.
 */
const GROWING = 1.5;

const parts = (cm3: number, shares: readonly number[]): number[] => shares.map((share) => cm3 * share);

/** Adds drops one by one, the first in parts. */
function addDrops(
  tube: Tube,
  perDm3: Readonly<Components>,
  drops: number,
  solve: Solver,
  watch: Watch,
  afterDrop?: (result: EquilibriumResult) => void,
): void {
  const drop = BENCH_PRACTICE.drop.value;
  const portions = [...parts(drop, WITHIN_DROP), ...Array.from({ length: drops - 1 }, () => drop)];
  let told = 0;
  pourPortions(tube, perDm3, portions, solve, (result, poured) => {
    watch(result, tube);
    // In drops that were passed over nothing fell: the tube looked as it does now.
    for (; told <= poured - WITHIN_DROP.length; told++) afterDrop?.(result);
  });
}

/** A volume in portions: its first drop in parts, then growing. */
function growing(cm3: number): number[] {
  const drop = Math.min(cm3, BENCH_PRACTICE.drop.value);
  const portions = parts(drop, WITHIN_DROP);
  for (let added = drop; added < cm3; added = Math.min(cm3, added * GROWING)) {
    portions.push(Math.min(cm3, added * GROWING) - added);
  }
  return portions;
}

/**
 * The same up to a point where something turns: growing from the start, and shrinking again towards the end as they grew, for near the
 * neutral point a little acid or alkali goes a long way. An aluminate or zincate gives its hydroxide there, just before.
 */
function closing(cm3: number): number[] {
  const half = growing(cm3 / 2);
  return [...half, ...half.toReversed()];
}

/** Volume that neutralises the strong acid or strong alkali in the tube, cm3; none where there is none, or the reagent adds to it. */
function neutralAt({ contents }: Tube, perDm3: Readonly<Components>): number | undefined {
  const brings = (perDm3["H+"] ?? 0) - (perDm3.NH3 ?? 0);
  const holds = contents["H+"] ?? 0;
  return brings * holds < 0 ? (-holds / brings) * 1000 : undefined;
}

/**
 * Adds a volume in growing portions, shaking each time. What comes and goes near the neutral point is seen in the next drops, so there they
 * begin anew. A dry solid gets its liquid in one go.
 */
function addVolume(tube: Tube, perDm3: Readonly<Components>, cm3: number, solve: Solver, watch: Watch): void {
  const turn = neutralAt(tube, perDm3) ?? cm3;
  const stages = turn < cm3 ? [...closing(turn), ...growing(cm3 - turn)] : growing(cm3);
  const portions = tube.waterKg === 0 ? [cm3] : stages;
  pourPortions(tube, perDm3, portions, solve, (result) => watch(result, tube));
}

/** Heats the tube to a temperature and lets it come to rest there. */
function heatTo(tube: Tube, celsius: number, solve: Solver, watch: Watch): void {
  tube.celsius = celsius;
  tube.pairs = NO_PAIRS;
  if (tube.waterKg > 0) watch(settle(tube, solve), tube);
}

/** Fraction of the water boiled away between two looks at the gases. */
const BOILING_STEP = 0.01;

/**
 * Boils for a time: steam leaves, and dissolved gases with it in the ratio of their pressures (Rayleigh distillation, each portion of
 * vapour in equilibrium with the liquid at 100 C and 1 atm). Where there is none of them, the water may leave in one go.
 */
export function boil(tube: Tube, minutes: number, solve: Solver, watch: Watch): void {
  heatTo(tube, TEMPERATURE.boil.value, solve, watch);
  if (tube.waterKg <= 0) return;
  const carries = CARRIED.some(([, component]) => (tube.contents[component] ?? 0) > 0);
  let toGo = Math.min((BOILED_AWAY.value * minutes) / 1000, tube.waterKg * 0.6);
  while (toGo > 1e-9) {
    const portion = carries ? Math.min(toGo, tube.waterKg * BOILING_STEP) : toGo;
    const result = tube.result as EquilibriumResult;
    for (const [id, component] of CARRIED) {
      const most = (tube.contents[component] ?? 0) * 0.5;
      const lost = Math.min((pressureOf(result, id) * portion) / WATER_KG_PER_MOL, most);
      if (lost > 0) takeGas(tube, id, lost);
    }
    tube.waterKg -= portion;
    toGo -= portion;
    settle(tube, solve);
  }
  watch(tube.result as EquilibriumResult, tube);
}

/** Gases steam carries off, each with the component that holds it. */
const CARRIED = [
  ["NH3(g)", "NH3"],
  ["CO2(g)", "CO3^2-"],
  ["SO2(g)", "SO3^2-"],
] as const;

/** Drops pieces of a metal into the tube, and gives them time to react with the liquid there. */
function addPieces(tube: Tube, reagent: string, pieces: number, solve: Solver, watch: Watch): void {
  const mol = (BENCH_PRACTICE.piece.value * pieces) / molarMass(parseFormula(reagent));
  tube.contents[reagent] = (tube.contents[reagent] ?? 0) + mol;
  tube.pairs = NO_PAIRS;
  if (tube.waterKg > 0) watch(settle(tube, solve), tube);
}

/**
 * Carries out one step on a tube; an addition adds `cm3`, "warm" means `warm` C. Steps that only look (gas tests, flame) change nothing.
 * Returns what filtering or washing leaves behind.
 * `afterDrop` is told of the tube after each whole drop, when the step counts drops.
 */
export function carryOut(
  step: Step,
  tube: Tube,
  cm3: number,
  warm: number,
  solve: Solver,
  watch: Watch,
  afterDrop?: (result: EquilibriumResult) => void,
): SetAside | undefined {
  if (step.do === "warm") heatTo(tube, warm, solve, watch);
  else if (step.do === "cool") heatTo(tube, TEMPERATURE.room.value, solve, watch);
  else if (step.do === "filter") return tube.waterKg > 0 ? filter(tube, step.keep, solve) : undefined;
  else if (step.do === "wash") return tube.waterKg > 0 ? wash(tube, solve) : undefined;
  else if (step.do === "stand") {
    tube.pairs = NO_PAIRS;
    if (tube.waterKg > 0) watch(settle(tube, solve), tube);
  } else if (step.do === "boil") boil(tube, step.time.min, solve, watch);
  else if (step.do === "add") {
    const { amount } = step;
    if ("pieces" in amount) addPieces(tube, step.reagent, amount.pieces, solve, watch);
    else {
      const perDm3 = reagentComponents(step.reagent, step.at?.molPerDm3);
      if ("drops" in amount) addDrops(tube, perDm3, amount.drops, solve, watch, afterDrop);
      else addVolume(tube, perDm3, cm3, solve, watch);
    }
  }
  return undefined;
}
