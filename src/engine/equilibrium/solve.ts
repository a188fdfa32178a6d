/**
 * Chemical equilibrium in a test tube: amounts of components in, concentrations, solids and gases out.
 *
 * Method: Gibbs energy minimum, found by Newton's method on the KKT conditions with an active set of phases (drop the most negative,
 * add the most supersaturated), from a first guess that has phases in it (first-guess.ts). Fast and exact for a handful of phases;
 * ill-conditioned at exact equivalence points, where a looser residual is accepted (see newton.ts). It knows nothing of test tubes: what may form is decided by the caller.
 */
import { refusal } from "./acceptable.ts";
import { CAPPED_IONIC_STRENGTH, daviesA, lnWaterActivity } from "./activity.ts";
import { coldStart } from "./first-guess.ts";
import { type Balance, type Iterate, type Room, type Workspace, workspaceFor } from "./iterate.ts";
import { NamedValues } from "./named-values.ts";
import { newton, WATER_KG_PER_MOL } from "./newton.ts";
import { addSupersaturated, dropNegative, saturationOf } from "./phase-set.ts";
import type { Conditions, EquilibriumProblem, EquilibriumResult, Solver, Start } from "./problem.ts";
import { compileDatabase, type Database, WATER } from "./species.ts";
import { buildSystem, type System, systemAt } from "./system.ts";

export type { Conditions, EquilibriumProblem, EquilibriumResult, NotConverged, Solver, Start } from "./problem.ts";

const MAX_ROUNDS = 60;
const MAX_ITERATIONS = 150;

/** Makes a solver over a database; it keeps the compiled systems of the mixtures it has met. */
export function createSolver(database: Database = compileDatabase()): Solver {
  const compiled = new Map<string, { work: Workspace; at: Map<number, System> }>();
  const room: Room = { values: new Float64Array(0) };
  /** One mixture is asked for many times in a row, with more and more of a reagent. */
  let last: { system: System; work: Workspace } | undefined;

  function systemFor(present: readonly number[], celsius: number) {
    if (!last || last.system.celsius !== celsius || !sameNumbers(last.system.components, present))
      last = compiledFor(present, celsius);
    return last;
  }

  function compiledFor(present: readonly number[], celsius: number) {
    const key = present.join(",");
    let known = compiled.get(key);
    if (!known) {
      const system = buildSystem(database, present, celsius);
      known = { work: workspaceFor(system, room), at: new Map([[celsius, system]]) };
      compiled.set(key, known);
    }
    let system = known.at.get(celsius);
    if (!system) {
      const [other] = known.at.values();
      system = systemAt(other, celsius);
      known.at.set(celsius, system);
    }
    return { system, work: known.work };
  }

  const proton = database.componentIndex.get("H+") as number;

  /** Database indices of the components there are, H+ always among them, in ascending order: each is put in its place, for they are few. */
  function presentIn({ totals }: EquilibriumProblem): number[] {
    const present = [proton];
    for (const id in totals) {
      const index = database.componentIndex.get(id);
      if (index === undefined || index === proton || totals[id] === 0) continue;
      let place = present.length;
      for (; place > 0 && present[place - 1] > index; place--) present[place] = present[place - 1];
      present[place] = index;
    }
    return present;
  }

  return (problem, conditions = {}, start) => {
    const reason = refusal(database, problem, conditions);
    if (reason !== undefined) return { converged: false, reason };
    const celsius = conditions.celsius ?? 25;
    const present = presentIn(problem);
    const { system, work } = systemFor(present, celsius);
    for (const off of OFF_THE_POINT) {
      const balance = balanceOf(system, database, problem, conditions, work, off);
      for (const from of BEGINNINGS) {
        const at = from(system, balance, problem.waterKg, work, start);
        if (at === undefined) continue;
        const iterations = settle(system, balance, at, work);
        if (iterations >= 0) return resultOf(system, balance, at, work, { iterations, poured: problem.waterKg });
      }
    }
    return {
      converged: false,
      reason: `no equilibrium found for ${present.map((index) => database.components[index].id).join(", ")}`,
    };
  };
}

const sameNumbers = (one: readonly number[], other: readonly number[]): boolean =>
  one.length === other.length && one.every((value, n) => value === other[n]);

/**
 * Relative change of each component's total, times its place, with which a mixture is tried again that has no answer as it is: where two
 * totals are in the very ratio of a hardly soluble solid, nothing says how its ions share out what is left of them, and round volumes hit
 * it. All of them are far below what a hand can measure out.
 */
const OFF_THE_POINT = [0, 1e-9, 1e-7, 1e-5];

/** What is balanced; with `off`, each total a little more than it is. */
function balanceOf(
  system: System,
  database: Database,
  problem: EquilibriumProblem,
  conditions: Conditions,
  { totals, lnBound, lnPressure, allowed }: Workspace,
  off = 0,
): Balance {
  let everything = 1e-6;
  for (let j = 0; j < totals.length; j++) {
    totals[j] = problem.totals[database.components[system.components[j]].id] ?? 0;
    if (j !== system.proton) totals[j] *= 1 + off * (j + 1);
    everything += Math.abs(totals[j]);
  }
  const { start, column, value } = system.speciesRows;
  for (let i = 0; i < lnBound.length; i++) {
    let bound = everything * 3;
    for (let k = start[i]; k < start[i + 1]; k++) {
      const j = column[k];
      const nu = value[k];
      if (j < totals.length && j !== system.proton && nu > 0) bound = Math.min(bound, totals[j] / nu);
    }
    lnBound[i] = Math.log(bound / problem.waterKg);
  }
  lnPressure.fill(0);
  allowed.set(system.formsInMinutes);
  const { gases, alsoAllowed, closed } = conditions;
  for (const p of gases ? system.gases : []) {
    const atm = gases?.[system.phases[p].id];
    if (atm === undefined) continue;
    allowed[p] = 1;
    lnPressure[p] = Math.log(atm);
  }
  for (const id of alsoAllowed ?? []) {
    const p = system.phaseNames.get(id);
    if (p !== undefined) allowed[p] = 1;
  }
  for (const id of closed ?? []) {
    const p = system.phaseNames.get(id);
    if (p !== undefined) allowed[p] = 0;
  }
  return {
    totals,
    waterMol: problem.waterKg / WATER_KG_PER_MOL + (problem.totals[WATER] ?? 0),
    lnBound,
    daviesA: daviesA(system.celsius),
    cap: conditions.ionicStrengthCap ?? CAPPED_IONIC_STRENGTH,
    lnPressure,
    allowed,
  };
}

/** Where to begin, in the order in which it is tried: an iterate, or nothing where this beginning cannot be made. */
const BEGINNINGS: readonly ((
  system: System,
  balance: Balance,
  waterKg: number,
  work: Workspace,
  start: Start | undefined,
) => Iterate | undefined)[] = [
  (system, balance, waterKg, work, start) =>
    start?.system.species === system.species ? resume(balance, start, waterKg, work) : undefined,
  (system, balance, waterKg, work) => coldStart(system, balance, waterKg, work, { phases: true }),
  (system, balance, waterKg, work) => coldStart(system, balance, waterKg, work, { phases: false }),
  idealStart,
];

/** Last resort: the equilibrium of the ideal solution, which is convex and settles where the real one does not. */
function idealStart(system: System, balance: Balance, waterKg: number, work: Workspace): Iterate | undefined {
  const ideal = { ...balance, cap: 0 };
  const at = coldStart(system, ideal, waterKg, work, { phases: false });
  return settle(system, ideal, at, work) < 0 ? undefined : at;
}

/** Takes up where a similar problem ended; phases that may not form here are left behind. */
function resume(balance: Balance, from: Start, waterKg: number, { amounts, lnM }: Workspace): Iterate {
  const present: number[] = [];
  for (let q = 0; q < from.present.length; q++) {
    if (balance.allowed[from.present[q]] === 0) continue;
    amounts[present.length] = from.amounts[q];
    present.push(from.present[q]);
  }
  return {
    y: diluted(balance, from, waterKg),
    solutes: from.solutes,
    ionicStrength: from.ionicStrength,
    waterKg,
    present,
    amounts,
    lnM,
  };
}

/**
 * The activities of a starting point, each changed as the concentration of its component is; of one that a phase holds, it is not the
 * total that tells. H+ follows where acid or alkali was mostly free.
 */
function diluted(
  { totals }: Balance,
  { system, y, present, totals: before, waterKg, free }: Start,
  water: number,
): Float64Array {
  const changed = y.slice();
  const dilution = Math.log(waterKg / water);
  for (let j = 0; j < changed.length; j++) {
    const ratio = totals[j] / before[j];
    if (j !== system.proton) changed[j] += dilution + Math.log(ratio);
    else if (free !== 0 && ratio > 0) changed[j] += free * (dilution + Math.log(ratio));
  }
  const { start, column } = system.phaseRows;
  for (const p of present) {
    for (let k = start[p]; k < start[p + 1]; k++) if (column[k] < changed.length) changed[column[k]] = y[column[k]];
  }
  return changed;
}

/** While phases are still coming and going, a rough answer is enough: residual, supersaturation (ln) and negative mol that decide then. */
const ROUGH = { residual: 0.1, supersaturation: 0.1, negative: 1e-9 };

/** Finds the phases present and their amounts: roughly first, then exactly. Returns the number of Newton iterations, or -1. */
function settle(system: System, balance: Balance, at: Iterate, work: Workspace): number {
  let iterations = 0;
  let exact = false;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const taken = newton(system, balance, at, work, MAX_ITERATIONS, exact ? undefined : ROUGH.residual);
    if (taken < 0) return -1;
    iterations += taken;
    const changed = exact
      ? dropNegative(at) || addSupersaturated(system, balance, at, work)
      : dropNegative(at, ROUGH.negative) || addSupersaturated(system, balance, at, work, ROUGH.supersaturation);
    if (changed) continue;
    if (exact) return iterations;
    exact = true;
  }
  return -1;
}

function resultOf(
  system: System,
  balance: Balance,
  at: Iterate,
  work: Workspace,
  { iterations, poured }: { iterations: number; poured: number },
): EquilibriumResult {
  const molality = new Array<number>(at.lnM.length);
  for (let i = 0; i < molality.length; i++) molality[i] = Math.exp(at.lnM[i]);
  const saturation = new Array<number>(system.phases.length);
  for (let p = 0; p < saturation.length; p++) saturation[p] = saturationOf(system, balance, work, p) / Math.LN10;
  return {
    converged: true,
    molality: new NamedValues(system.speciesNames, molality),
    phases: new Map(at.present.map((p, q) => [system.phases[p].id, at.amounts[q]])),
    saturation: new NamedValues(system.phaseNames, saturation),
    pH: -at.y[system.proton] / Math.LN10,
    ionicStrength: at.ionicStrength,
    waterKg: at.waterKg,
    waterActivity: Math.exp(lnWaterActivity(at.solutes)),
    iterations,
    start: {
      system,
      y: at.y,
      solutes: at.solutes,
      ionicStrength: at.ionicStrength,
      totals: balance.totals.slice(),
      waterKg: poured,
      free: freeProtons(system, balance, molality, poured),
      present: at.present,
      amounts: at.present.map((_, q) => at.amounts[q]),
    },
  };
}

/** Part of the acid or alkali poured in that must be free for the pH to follow its concentration. */
const MOSTLY = 0.5;

/** 1 where the acid poured in is mostly free H+, -1 where alkali is mostly free OH-, 0 where neither is. */
function freeProtons(system: System, { totals }: Balance, molality: readonly number[], waterKg: number): Start["free"] {
  const acid = totals[system.proton];
  const [sign, id] = acid > 0 ? ([1, "H+"] as const) : ([-1, "OH-"] as const);
  const place = system.speciesNames.get(id);
  return place !== undefined && molality[place] * waterKg > MOSTLY * Math.abs(acid) ? sign : 0;
}
