/** Carries out one test on one tube and writes down everything that happens on the way. */
import { flameColours } from "../constants/flame-colours.ts";
import { HEAT_OPENS, TEMPERATURE } from "../constants/kinetic-gates.ts";
import { STARCH } from "../constants/starch.ts";
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import { compileDatabase } from "../equilibrium/species.ts";
import { WATER_TESTS } from "../practical/gases.ts";
import type { Colour, Step, Test } from "../practical.ts";
import { alone } from "./alone.ts";
import { type Amounts, addAmounts, amountsOf } from "./amounts.ts";
import { atTheDrop } from "./at-the-drop.ts";
import { beyondUs, leftBeyondUs, makesHydrogenSulfide } from "./beyond.ts";
import type { Components } from "./composition.ts";
import type { SetAside } from "./filter.ts";
import { gasesPerMole } from "./heat/gas-amounts.ts";
import { heatSolid } from "./heat/heat-solid.ts";
import { UnknownSolidError } from "./heat/looks.ts";
import { tryIndicator } from "./indicator.ts";
import { leadThrough, ledOut } from "./limewater.ts";
import { madeInPart } from "./made-in-part.ts";
import { carryOut, reagentComponents } from "./operations.ts";
import { pouredAfter, volumeAdded } from "./portion.ts";
import { addAlone, type Portion, type TestedSalt, take } from "./sample.ts";
import { look, type Sight } from "./sight.ts";
import { emptyTrace, type GasTestSeen, KEPT_COLD, MOLAR_VOLUME_DM3, type TestTrace } from "./trace.ts";
import { pressureOf, settle, type Tube } from "./tube.ts";

/** Choices a careful or a hasty hand makes where the paper leaves them open. */
export interface Hand {
  /** Stop after this many drops instead of the counted ones. */
  stopAtDrop?: number;
  /** How hot "warm" is, C. */
  warm: number;
  /** Left long enough for the air to act, where the paper lets a tube stand. */
  air: boolean;
}

/** Turns below which a reaction changes nothing anyone could see, mol. */
const NO_REACTION = 1e-8;

/** Saturation (log10) above which a solid that does not form in minutes is worth naming. */
const SUPERSATURATED = 1e-6;

/** Solids that do not form within the minutes of a test. */
const slowSolids = new Set(
  compileDatabase().phases.flatMap((phase) => (phase.kind === "solid" && !phase.row?.formsInMinutes ? [phase.id] : [])),
);

/** A tube as a part goes on with it: starch, once in, stays. */
export type BenchTube = Tube & { starch?: true };

/** What the eye finds in the tube, the colour starch gives to iodine included. */
const see = (result: EquilibriumResult, { starch, celsius }: BenchTube): Sight =>
  look(result, starch && celsius < STARCH.fadesAt.value);

/**
 * Carries out the steps of a test. `tube` and `portion` change; `partTogether` gathers what has been brought together since the part
 * began.
 */
export function carryOutTest(
  test: Test,
  tube: BenchTube,
  portion: Portion,
  partTogether: TestTrace["together"],
  solve: Solver,
  hand: Hand,
): TestTrace {
  // A tube waits for its next test in the rack and is cold by then, unless the test is to watch it cool.
  const cools = test.steps[0]?.do !== "cool" && tube.celsius !== TEMPERATURE.room.value;
  if (cools) tube.celsius = TEMPERATURE.room.value;
  const aside: SetAside = { amounts: new Map(), solids: [] };
  const trace = emptyTrace(partTogether);
  const reactedBefore = new Map([...tube.reactions].map(([equation, { turns }]) => [equation, turns]));
  const leftBefore = tube.left;
  if (tube.waterKg > 0) {
    // The last test left it at rest.
    const result = (!cools && tube.result) || settle(tube, solve);
    trace.before = see(result, tube);
    addAmounts(trace.together, amountsOf(result));
  }
  const watch = watcher(trace, tube);
  for (const step of test.steps) {
    const before = portion.poured;
    portion.poured = pouredAfter(before, step);
    if (step.do === "take") {
      const added: TestTrace["together"] = new Map();
      take(step, tube, portion, added, solve);
      addAmounts(trace.together, added);
      addAmounts(partTogether, added);
      tube.result = undefined;
      continue;
    }
    trace.dry ??= portion.dry;
    if (trace.before === undefined && trace.dry === undefined && tube.waterKg > 0)
      trace.before = see(settle(tube, solve), tube);
    if (step.do === "flame") trace.flame = flameOf(portion.salt);
    else if (step.do === "heat solid") heat(step.how, portion, trace);
    else if (step.do === "test gas") {
      trace.gasTests.push({ ...testGas(step.with, tube, leftBefore), heated: trace.heat });
      trace.unknown ||= WATER_TESTS.includes(step.with) && trace.heat === undefined;
    } else if (step.do === "lead through") {
      trace.limewater = leadThrough(step, gasLed(trace, tube, leftBefore), solve);
    } else if (step.do === "indicator") {
      trace.indicator = tube.waterKg > 0 ? tryIndicator(step.with, tube, solve) : undefined;
      trace.unknown ||= trace.indicator === undefined;
    } else {
      const done =
        hand.stopAtDrop !== undefined && isDrops(step) ? { ...step, amount: { drops: hand.stopAtDrop } } : step;
      tube.air = step.do === "stand" && hand.air;
      trace.waited ||= step.do === "warm" || step.do === "boil" || step.do === "stand";
      const cm3 = done.do === "add" ? volumeAdded(done, before) : 0;
      addReagent(done, [trace.together, partTogether], cm3, solve);
      if (done.do === "add") notePoured(done, trace, tube, cm3, solve);
      const leftSoFar = totalOf(tube.left);
      const left = carryOut(done, tube, cm3, hand.warm, solve, watch, (result) => trace.drops.push(see(result, tube)));
      if (left) setAside(left, aside, tube, partTogether);
      if (step.do === "warm" || step.do === "boil")
        trace.heatedBubbles += (totalOf(tube.left) - leftSoFar) * CM3_PER_MOL;
      if (tube.waterKg > 0) portion.dry = undefined;
      // What heat has left in the tube is another substance; what it does with a reagent is not predicted.
      trace.unknown ||= beyondUs(tube) || portion.heated === true;
      trace.hydrogenSulfide ||= makesHydrogenSulfide(tube);
    }
  }
  trace.dry ??= portion.dry;
  trace.unknown ||= leftBeyondUs(tube);
  if (tube.waterKg > 0) finish(trace, tube.result ?? settle(tube, solve), tube, aside, solve);
  for (const [id, mol] of tube.left) {
    const cm3 = (mol - (leftBefore.get(id) ?? 0)) * CM3_PER_MOL;
    if (cm3 > 0) trace.bubbles.set(id, cm3);
  }
  trace.reactions = [...tube.reactions.values()]
    .map((one) => ({ ...one, turns: one.turns - (reactedBefore.get(one.equation) ?? 0) }))
    .filter(({ turns }) => turns > NO_REACTION);
  return trace;
}

/** Heats the dry portion. A solid the constants cannot follow, or one not to be heated in class, leaves the test without an opinion. */
function heat(how: "gently" | "strongly", portion: Portion, trace: TestTrace): void {
  portion.heated = true;
  const formula = portion.salt.solid;
  if (!portion.dry || formula === undefined) {
    trace.unknown = true;
    return;
  }
  try {
    const outcome = heatSolid(formula, how);
    trace.heat = outcome;
    if (outcome.refused === undefined) {
      const { CO2, SO2, all } = gasesPerMole(formula, how);
      trace.heatGas = { CO2: CO2 * portion.dry.mol, SO2: SO2 * portion.dry.mol, all: all * portion.dry.mol };
    }
    trace.unknown ||= outcome.refused !== undefined || outcome.unsure.length > 0;
  } catch (error) {
    if (!(error instanceof UnknownSolidError)) throw error;
    trace.unknown = true;
  }
}

const CM3_PER_MOL = MOLAR_VOLUME_DM3 * 1000;
const totalOf = (amounts: ReadonlyMap<string, number>): number =>
  [...amounts.values()].reduce((sum, mol) => sum + mol, 0);

const isDrops = (step: Step): step is Extract<Step, { do: "add" }> => step.do === "add" && "drops" in step.amount;

/** Notes what is seen after each small change. */
function watcher(trace: TestTrace, tube: BenchTube) {
  const largest = new Map<string, number>();
  return (result: EquilibriumResult) => {
    const sight = see(result, tube);
    trace.during.push(sight);
    trace.sulfurDioxide = Math.max(trace.sulfurDioxide, pressureOf(result, "SO2(g)"));
    if (tube.celsius > TEMPERATURE.room.value) {
      for (const gas of KEPT_COLD) trace.hot[gas] = Math.max(trace.hot[gas], pressureOf(result, `${gas}(g)`));
    }
    for (const { id, grams } of sight.solids) {
      if (grams <= (largest.get(id) ?? 0)) continue;
      largest.set(id, grams);
      trace.peak.set(id, result);
    }
  };
}

/** What is seen at the end is the liquid and, where it was filtered, the solid still on the paper. */
function finish(trace: TestTrace, result: EquilibriumResult, tube: BenchTube, aside: SetAside, solve: Solver): void {
  const inTube = see(result, tube);
  trace.inPart = madeInPart(tube, result, inTube, solve);
  trace.after = { ...inTube, solids: [...inTube.solids, ...aside.solids] };
  if (tube.starch && trace.after.solution === STARCH.colour) trace.gates.push(STARCH.id);
  trace.end = amountsOf(result);
  trace.endPH = result.pH;
  addAmounts(trace.end, aside.amounts);
  trace.heldBack = [...result.saturation].flatMap(([id, log]) =>
    log > SUPERSATURATED && slowSolids.has(id) && !tube.opened.includes(id) ? [id] : [],
  );
  for (const { id, solid } of HEAT_OPENS) {
    if (
      trace.after.solids.some((seen) => seen.id === solid) &&
      !trace.before?.solids.some((seen) => seen.id === solid)
    ) {
      trace.gates.push(id);
    }
  }
}

/** The colour a sample gives to the flame: of its cations, the one no other hides; false when it gives none of use. */
function flameOf(salt: TestedSalt): Colour | false {
  const seen = flameColours.filter(({ cation, colour }) => colour !== null && salt.ions[cation] !== undefined);
  const shown = seen.find(({ maskedBy }) => !seen.some(({ cation }) => maskedBy.includes(cation)));
  return (shown?.colour as Colour | undefined) ?? false;
}

function testGas(test: GasTestSeen["test"], tube: Tube, leftBefore: ReadonlyMap<string, number>): GasTestSeen {
  const pressure = (id: string) => (tube.result ? pressureOf(tube.result, id) : 0);
  const left = (id: string) => ((tube.left.get(id) ?? 0) - (leftBefore.get(id) ?? 0)) * CM3_PER_MOL;
  return {
    test,
    atm: { NH3: pressure("NH3(g)"), SO2: pressure("SO2(g)"), CO2: pressure("CO2(g)"), Cl2: pressure("Cl2(g)") },
    left: { CO2: left("CO2(g)"), SO2: left("SO2(g)"), H2: left("H2(g)"), O2: left("O2(g)"), NO: left("NO(g)") },
  };
}

/** Gas of this test that comes out of a delivery tube, mol. */
function gasLed(
  { heatGas }: TestTrace,
  { left, result, celsius }: Tube,
  leftBefore: ReadonlyMap<string, number>,
): Record<"CO2" | "SO2", number> {
  const all = heatGas.all + totalOf(left) - totalOf(leftBefore);
  const led = (gas: "CO2" | "SO2") => {
    const leaves = heatGas[gas] + (left.get(`${gas}(g)`) ?? 0) - (leftBefore.get(`${gas}(g)`) ?? 0);
    return ledOut({ leaves, all, atm: result ? pressureOf(result, `${gas}(g)`) : 0 }, celsius);
  };
  return { CO2: led("CO2"), SO2: led("SO2") };
}

/** Gathers what filtering and washing left behind. What goes on is all that the next tests bring together with. */
function setAside(left: SetAside, aside: SetAside, tube: BenchTube, partTogether: Amounts): void {
  addAmounts(aside.amounts, left.amounts);
  aside.solids.push(...left.solids);
  partTogether.clear();
  if (tube.result) addAmounts(partTogether, amountsOf(tube.result));
}

const scaled = (perDm3: Readonly<Components>, dm3: number): Components =>
  Object.fromEntries(Object.entries(perDm3).map(([id, n]) => [id, n * dm3]));

/** Notes starch, what falls where a drop lands, and the colour a reagent has of itself, so that its loss can be told. */
function notePoured(
  step: Extract<Step, { do: "add" }>,
  trace: TestTrace,
  tube: BenchTube,
  cm3: number,
  solve: Solver,
): void {
  if (step.reagent === STARCH.reagent) tube.starch = true;
  if ("pieces" in step.amount) return;
  const perDm3 = reagentComponents(step.reagent, step.at?.molPerDm3);
  trace.atDrop ??= atTheDrop(tube, perDm3, solve);
  const bottle = alone(perDm3, solve);
  if (!bottle) return;
  const { solution, absorbance } = look(bottle);
  if (solution === "colourless") return;
  const into = tube.waterKg * 1000;
  const diluted = solve({ totals: scaled(perDm3, cm3 / 1000), waterKg: (into + cm3) / 1000 });
  trace.poured = {
    solution,
    absorbance,
    diluted: diluted.converged ? look(diluted).solution : solution,
    cm3,
    into,
    looks: trace.during.length,
  };
}

/** Adds what a reagent holds, speciated by itself, to the amounts that were brought together. */
function addReagent(step: Step, to: readonly TestTrace["together"][], cm3: number, solve: Solver): void {
  if (step.do !== "add" || "pieces" in step.amount) return;
  for (const amounts of to) addAlone(amounts, reagentComponents(step.reagent, step.at?.molPerDm3), cm3, solve);
}
