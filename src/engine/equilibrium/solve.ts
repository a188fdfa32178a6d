/**
 * Chemical equilibrium in a test tube: amounts of components in, concentrations, solids and gases out.
 *
 * Method: Gibbs energy minimum, found by Newton's method on the KKT conditions with an active set of phases (drop the most negative,
 * add the most supersaturated). Fast and exact for a handful of phases; ill-conditioned at exact equivalence points,
 * where a looser residual is accepted (see newton.ts). It knows nothing of test tubes: what may form is decided by the caller.
 */
import { refusal } from "./acceptable.ts";
import { CAPPED_IONIC_STRENGTH, daviesA } from "./activity.ts";
import { coldStart } from "./first-guess.ts";
import { type Balance, type Iterate, newton, WATER_KG_PER_MOL, type Workspace } from "./newton.ts";
import { addSupersaturated, dropNegative, saturationOf } from "./phase-set.ts";
import type { Conditions, EquilibriumProblem, EquilibriumResult, Solver, Start } from "./problem.ts";
import { compileDatabase, type Database, WATER } from "./species.ts";
import { buildSystem, lnWaterActivity, type System } from "./system.ts";

export type { Conditions, EquilibriumProblem, EquilibriumResult, NotConverged, Solver, Start } from "./problem.ts";

const MAX_ROUNDS = 60;
const MAX_ITERATIONS = 150;

/** Makes a solver over a database; it keeps the compiled systems of the mixtures it has met. */
export function createSolver(database: Database = compileDatabase()): Solver {
  const systems = new Map<string, System>();
  let work: Workspace = workspace(0);

  function systemFor(present: number[], celsius: number) {
    const key = `${celsius}|${present.join(",")}`;
    let system = systems.get(key);
    if (!system) {
      system = buildSystem(database, present, celsius);
      systems.set(key, system);
    }
    return system;
  }

  const proton = database.componentIndex.get("H+") as number;

  /** Database indices of the components there are, H+ always among them, in ascending order. */
  function presentIn({ totals }: EquilibriumProblem): number[] {
    const present = [proton];
    for (const id in totals) {
      const index = database.componentIndex.get(id);
      if (index !== undefined && index !== proton && totals[id] !== 0) present.push(index);
    }
    return present.sort((a, b) => a - b);
  }

  return (problem, conditions = {}, start) => {
    const reason = refusal(database, problem, conditions);
    if (reason !== undefined) return { converged: false, reason };
    const celsius = conditions.celsius ?? 25;
    const present = presentIn(problem);
    const system = systemFor(present, celsius);
    if (work.rowScale.length < present.length) work = workspace(present.length);
    const balance = balanceOf(system, database, problem, conditions);
    const begin = [
      () => (start && start.system === system ? resume(system, balance, start, problem.waterKg) : undefined),
      () => coldStart(system, balance, problem.waterKg),
      () => idealStart(system, balance, problem.waterKg, work),
    ];
    for (const from of begin) {
      const at = from();
      if (at === undefined) continue;
      const iterations = settle(system, balance, at, work);
      if (iterations >= 0) return resultOf(system, balance, at, iterations);
    }
    return {
      converged: false,
      reason: `no equilibrium found for ${present.map((index) => database.components[index].id).join(", ")}`,
    };
  };
}

function workspace(components: number): Workspace {
  const n = components + 3 + components + 4;
  return {
    matrix: new Float64Array(n * n),
    right: new Float64Array(n),
    rowScale: new Float64Array(components),
  };
}

function balanceOf(system: System, database: Database, problem: EquilibriumProblem, conditions: Conditions): Balance {
  const totals = Float64Array.from(system.components, (index) => problem.totals[database.components[index].id] ?? 0);
  let everything = 1e-6;
  for (const total of totals) everything += Math.abs(total);
  const lnBound = new Float64Array(system.species.length);
  for (let i = 0; i < lnBound.length; i++) {
    let bound = everything * 3;
    for (let k = system.speciesStart[i]; k < system.speciesStart[i + 1]; k++) {
      const j = system.speciesComponent[k];
      const nu = system.speciesMoles[k];
      if (j !== system.proton && nu > 0) bound = Math.min(bound, totals[j] / nu);
    }
    lnBound[i] = Math.log(bound / problem.waterKg);
  }
  const lnPressure = new Float64Array(system.phases.length);
  const allowed = Uint8Array.from(system.formsInMinutes);
  system.phases.forEach((phase, p) => {
    const atm = phase.kind === "gas" ? conditions.gases?.[phase.id] : undefined;
    if (atm !== undefined) {
      allowed[p] = 1;
      lnPressure[p] = Math.log(atm);
    } else if (conditions.alsoAllowed?.includes(phase.id)) allowed[p] = 1;
  });
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

/** Last resort: the equilibrium of the ideal solution, which is convex and settles where the real one does not. */
function idealStart(system: System, balance: Balance, waterKg: number, work: Workspace): Iterate | undefined {
  const ideal = { ...balance, cap: 0 };
  const at = coldStart(system, ideal, waterKg);
  return settle(system, ideal, at, work) < 0 ? undefined : at;
}

/** Takes up where a similar problem ended; phases that may not form here are left behind. */
function resume(system: System, balance: Balance, from: Start, waterKg: number): Iterate {
  const kept = from.present.flatMap((phase, q) =>
    balance.allowed[phase] === 1 ? [{ phase, amount: from.amounts[q] }] : [],
  );
  const amounts = new Float64Array(system.components.length + 4);
  amounts.set(kept.map(({ amount }) => amount));
  return {
    y: Float64Array.from(from.y),
    solutes: from.solutes,
    ionicStrength: from.ionicStrength,
    waterKg,
    present: kept.map(({ phase }) => phase),
    amounts,
    lnM: new Float64Array(system.species.length),
  };
}

/** While phases are still coming and going, a rough answer is enough: residual, supersaturation (ln) and negative mol that decide then. */
const ROUGH = { residual: 1e-3, supersaturation: 0.1, negative: 1e-9 };

/** Finds the phases present and their amounts: roughly first, then exactly. Returns the number of Newton iterations, or -1. */
function settle(system: System, balance: Balance, at: Iterate, work: Workspace): number {
  let iterations = 0;
  let exact = false;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const taken = newton(system, balance, at, work, MAX_ITERATIONS, exact ? undefined : ROUGH.residual);
    if (taken < 0) return -1;
    iterations += taken;
    const changed = exact
      ? dropNegative(at) || addSupersaturated(system, balance, at)
      : dropNegative(at, ROUGH.negative) || addSupersaturated(system, balance, at, ROUGH.supersaturation);
    if (changed) continue;
    if (exact) return iterations;
    exact = true;
  }
  return -1;
}

function resultOf(system: System, balance: Balance, at: Iterate, iterations: number): EquilibriumResult {
  const molality = new Map<string, number>();
  system.species.forEach((entry, i) => {
    molality.set(entry.id, Math.exp(at.lnM[i]));
  });
  const saturation = new Map<string, number>();
  system.phases.forEach((phase, p) => {
    saturation.set(phase.id, saturationOf(system, balance, at, p) / Math.LN10);
  });
  return {
    converged: true,
    molality,
    phases: new Map(at.present.map((p, q) => [system.phases[p].id, at.amounts[q]])),
    saturation,
    pH: -at.y[system.proton] / Math.LN10,
    ionicStrength: at.ionicStrength,
    waterKg: at.waterKg,
    waterActivity: Math.exp(lnWaterActivity(at.solutes)),
    iterations,
    start: {
      system,
      y: Float64Array.from(at.y),
      solutes: at.solutes,
      ionicStrength: at.ionicStrength,
      present: [...at.present],
      amounts: [...at.amounts.subarray(0, at.present.length)],
    },
  };
}
