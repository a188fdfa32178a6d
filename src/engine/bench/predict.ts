/** A salt taken through a procedure: what would be recorded at every test. */
import { flameColours } from "../constants/flame-colours.ts";
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import { compileDatabase, WATER } from "../equilibrium/species.ts";
import { molarMass } from "../formula/molar-mass.ts";
import { parseFormula } from "../formula/parse.ts";
import { type Cell, type Colour, cellsOf, type Part, type Procedure, type Step, type Test } from "../practical.ts";
import { type Amounts, addAmounts, amountsOf } from "./amounts.ts";
import { type Components, componentsOf } from "./composition.ts";
import { observe } from "./observe.ts";
import { carryOut, reagentComponents, volumeAdded } from "./operations.ts";
import type { Prediction } from "./prediction.ts";
import { look } from "./sight.ts";
import { type GasTestSeen, MOLAR_VOLUME_DM3, type TestTrace } from "./trace.ts";
import { emptyTube, pour, pressureOf, settle, type Tube } from "./tube.ts";

/** A sample to be tested: its ions, how it is given, and as what solid it is weighed out. */
export interface TestedSalt {
  /** Number of each ion in one formula unit. */
  ions: Readonly<Record<string, number>>;
  /** mol/dm3, when a solution is taken. */
  molPerDm3?: number;
  /** Formula by which the solid is weighed, water of crystallisation included. */
  solid?: string;
}

/** Predicts every test of a procedure for one salt, by cell id. Steps the engine has no chemistry for give no readings. */
export function predictSalt(salt: TestedSalt, parts: Procedure, solve: Solver): Map<string, Prediction> {
  const predictions = new Map<string, Prediction>();
  const cells = cellsOf(parts);
  for (const part of parts) {
    for (const [cell, prediction] of predictPart(
      salt,
      part,
      cells.filter((one) => one.part === part),
      solve,
    )) {
      predictions.set(cell, prediction);
    }
  }
  return predictions;
}

/** What the engine says of a test it has no chemistry for. */
const NO_OPINION: Prediction = { readings: [], events: [], gases: [], gates: [], heldBack: [] };

function predictPart(salt: TestedSalt, part: Part, cells: readonly Cell[], solve: Solver): [string, Prediction][] {
  const counted = runPart(salt, part, cells, solve, []);
  const stops = counted.map(({ trace }) => stopAt(trace));
  if (stops.every((stop) => stop === undefined)) return counted.map(({ id, prediction }) => [id, prediction]);
  // "A few drops" is not a count. Where the precipitate goes again within them, a careful hand stops when it is at its fullest; both
  // hands are right, so both readings are accepted.
  const careful = runPart(salt, part, cells, solve, stops);
  return careful.map(({ id, prediction }, index) => {
    const readings = [...prediction.readings];
    for (const reading of counted[index].prediction.readings) {
      if (!readings.some((known) => JSON.stringify(known) === JSON.stringify(reading))) readings.push(reading);
    }
    return [id, { ...prediction, readings }];
  });
}

interface TestRun {
  id: string;
  trace: TestTrace | undefined;
  prediction: Prediction;
}

function runPart(
  salt: TestedSalt,
  part: Part,
  cells: readonly Cell[],
  solve: Solver,
  stops: (number | undefined)[],
): TestRun[] {
  const tube = emptyTube();
  const sample: Sample = { salt, cm3: 0, dry: undefined };
  let known = true;
  return cells.map((cell, index) => {
    known &&= cell.test.steps.every(hasChemistry);
    if (!known) return { id: cell.id, trace: undefined, prediction: NO_OPINION };
    const trace = carryOutTest(cell.test, tube, sample, part, solve, stops[index]);
    return { id: cell.id, trace, prediction: observe(trace) };
  });
}

const database = compileDatabase();

/** Solids that do not form within the minutes of a test. */
const slowSolids = new Set(
  database.phases.flatMap((phase) => (phase.kind === "solid" && !phase.row?.formsInMinutes ? [phase.id] : [])),
);

/** Part of a precipitate that must go again within the drops before the count of drops matters. */
const GOES_AGAIN = 0.1;

/** The drop at which to stop so that the precipitate is at its fullest, when it goes again within the drops; else undefined. */
function stopAt(trace: TestTrace | undefined): number | undefined {
  if (!trace || trace.drops.length < 2) return undefined;
  const grams = trace.drops.map(({ solids }) => solids.reduce((sum, solid) => sum + solid.grams, 0));
  const most = Math.max(...grams);
  const last = grams[grams.length - 1];
  if (most <= 0 || last > most * (1 - GOES_AGAIN)) return undefined;
  return grams.indexOf(most) + 1;
}

/** Heating a dry solid and filtering are not predicted; a test that needs them, and those after it, say nothing. */
export const hasChemistry = (step: Step): boolean => step.do !== "heat solid" && step.do !== "filter";

/** The colour a sample gives to the flame: of its cations, the one no other hides; false when it gives none of use. */
function flameOf(salt: TestedSalt): Colour | false {
  const seen = flameColours.filter(({ cation, colour }) => colour !== null && salt.ions[cation] !== undefined);
  const shown = seen.find(({ maskedBy }) => !seen.some(({ cation }) => maskedBy.includes(cation)));
  return (shown?.colour as Colour | undefined) ?? false;
}

/** What has been taken of the sample into the tube. */
interface Sample {
  salt: TestedSalt;
  cm3: number;
  /** A solid that has not met water yet. */
  dry: TestTrace["dry"];
}

function carryOutTest(
  test: Test,
  tube: Tube,
  sample: Sample,
  part: Part,
  solve: Solver,
  stop: number | undefined,
): TestTrace {
  tube.celsius = TEMPERATURE.room.value;
  const trace: TestTrace = {
    before: undefined,
    dry: undefined,
    during: [],
    drops: [],
    after: undefined,
    gasTests: [],
    bubbles: new Map(),
    heatedBubbles: 0,
    hydrogen: false,
    pressures: { NH3Hot: 0, SO2: 0 },
    gates: [],
    heldBack: [],
    together: new Map(),
    end: new Map(),
    peak: new Map(),
  };
  const gatesBefore = new Set(tube.acted.keys());
  const leftBefore = new Map(tube.left);
  let began = false;
  const begin = () => {
    if (began) return;
    began = true;
    trace.dry = sample.dry;
    if (tube.waterKg > 0) {
      const result = settle(tube, solve);
      trace.before = look(result);
      addAmounts(trace.together, amountsOf(result));
      if (trace.dry) trace.before = undefined;
    }
    if (sample.dry) addDrySolid(trace.together, sample, solve);
  };
  const largest = new Map<string, number>();
  const watch = (result: EquilibriumResult) => {
    const sight = look(result);
    trace.during.push(sight);
    trace.pressures.SO2 = Math.max(trace.pressures.SO2, pressureOf(result, "SO2(g)"));
    if (tube.celsius > TEMPERATURE.room.value) {
      trace.pressures.NH3Hot = Math.max(trace.pressures.NH3Hot, pressureOf(result, "NH3(g)"));
    }
    for (const { id, grams } of sight.solids) {
      if (grams <= (largest.get(id) ?? 0)) continue;
      largest.set(id, grams);
      trace.peak.set(id, amountsOf(result));
    }
  };

  for (const step of test.steps) {
    if (step.do === "take") {
      take(step, tube, sample, part);
      continue;
    }
    begin();
    if (step.do === "flame") {
      trace.flame = flameOf(sample.salt);
      continue;
    }
    if (step.do === "test gas") {
      trace.gasTests.push(testGas(step.with, tube, leftBefore));
      continue;
    }
    const done = stop !== undefined && isDrops(step) ? { ...step, amount: { drops: stop } } : step;
    addReagentAmounts(done, trace.together, sample.cm3, solve);
    const leftSoFar = totalOf(tube.left);
    carryOut(done, tube, sample.cm3, solve, watch, (result) => trace.drops.push(look(result)));
    if (step.do === "warm" || step.do === "boil") trace.heatedBubbles += (totalOf(tube.left) - leftSoFar) * CM3_PER_MOL;
    if (tube.waterKg > 0) sample.dry = undefined;
  }
  begin();
  if (tube.waterKg > 0) {
    const result = tube.result ?? settle(tube, solve);
    trace.after = look(result);
    trace.end = amountsOf(result);
    trace.heldBack = [...result.saturation].flatMap(([id, log]) => (log > 0 && slowSolids.has(id) ? [id] : []));
  }
  for (const [id, mol] of tube.left) {
    const cm3 = (mol - (leftBefore.get(id) ?? 0)) * CM3_PER_MOL;
    if (cm3 > 0) trace.bubbles.set(id, cm3);
  }
  trace.hydrogen = fizzesWithAluminium(tube);
  trace.gates = [...tube.acted.keys()].filter((gate) => !gatesBefore.has(gate));
  return trace;
}

const CM3_PER_MOL = MOLAR_VOLUME_DM3 * 1000;
const totalOf = (amounts: ReadonlyMap<string, number>): number =>
  [...amounts.values()].reduce((sum, mol) => sum + mol, 0);

const isDrops = (step: Step): step is Extract<Step, { do: "add" }> => step.do === "add" && "drops" in step.amount;

/** pH above which aluminium foil fizzes in warm solution (common practice, no source). */
const FIZZING_PH = 12;
const fizzesWithAluminium = (tube: Tube): boolean =>
  tube.aluminium && tube.celsius > TEMPERATURE.room.value && (tube.result?.pH ?? 7) > FIZZING_PH;

function take(step: Extract<Step, { do: "take" }>, tube: Tube, sample: Sample, part: Part): void {
  const components = componentsOf(sample.salt.ions);
  if ("volume" in step) {
    const strength = sample.salt.molPerDm3;
    if (strength === undefined) {
      throw new RangeError(`part ${part.label} takes ${step.volume.cm3} cm3 of a sample that is given as a solid only`);
    }
    pour(tube, times(components, strength), step.volume.cm3);
    sample.cm3 += step.volume.cm3;
    return;
  }
  const formula = sample.salt.solid;
  if (formula === undefined) {
    throw new RangeError(`part ${part.label} takes ${step.mass.g} g of a sample that is given as a solution only`);
  }
  const mol = step.mass.g / molarMass(parseFormula(formula));
  for (const [id, count] of Object.entries(components)) tube.contents[id] = (tube.contents[id] ?? 0) + count * mol;
  const water = /[*.](\d*)H2O$/.exec(formula);
  if (water) tube.contents.H2O = (tube.contents.H2O ?? 0) + Number(water[1] || 1) * mol;
  sample.dry = { grams: step.mass.g, mol, own: sameSubstance(components) };
}

/** Solids of the constant set made of the same components in the same proportion, water of crystallisation aside. */
function sameSubstance(components: Components): ReadonlySet<string> {
  const wanted = Object.entries(components).filter(([id, n]) => n !== 0 && id !== WATER);
  const same = database.phases.filter(({ kind, nu }) => {
    if (kind !== "solid" || nu.length !== wanted.length) return false;
    const ratios = wanted.map(([id, n]) => (nu.find(([c]) => database.components[c].id === id)?.[1] ?? 0) / n);
    return ratios.every((ratio) => ratio > 0 && Math.abs(ratio - ratios[0]) < 1e-9);
  });
  return new Set(same.map(({ id }) => id));
}

const times = (components: Components, factor: number): Components =>
  Object.fromEntries(Object.entries(components).map(([id, count]) => [id, count * factor]));

function testGas(test: GasTestSeen["test"], tube: Tube, leftBefore: ReadonlyMap<string, number>): GasTestSeen {
  const pressure = (id: string) => (tube.result ? pressureOf(tube.result, id) : 0);
  const left = (id: string) => ((tube.left.get(id) ?? 0) - (leftBefore.get(id) ?? 0)) * CM3_PER_MOL;
  return {
    test,
    atm: { NH3: pressure("NH3(g)"), SO2: pressure("SO2(g)"), CO2: pressure("CO2(g)") },
    left: { CO2: left("CO2(g)"), SO2: left("SO2(g)") },
    hydrogen: fizzesWithAluminium(tube),
  };
}

/** Adds what a reagent holds, speciated by itself, to the amounts that were brought together. */
function addReagentAmounts(step: Step, together: Amounts, sampleCm3: number, solve: Solver): void {
  if (step.do !== "add" || "pieces" in step.amount) return;
  const alone = solve({ totals: reagentComponents(step.reagent, step.at?.molPerDm3), waterKg: 1 });
  if (!alone.converged) return;
  addAmounts(together, amountsOf(alone), volumeAdded(step.amount, sampleCm3) / 1000);
}

/** A dry sample as the equation shows it: the solid of the constant set with its composition, or else its free ions. */
function addDrySolid(together: Amounts, sample: Sample, solve: Solver): void {
  if (!sample.dry) return;
  const inWater = solve({ totals: times(componentsOf(sample.salt.ions), sample.dry.mol), waterKg: 1e-3 });
  if (inWater.converged) addAmounts(together, amountsOf(inWater));
}
