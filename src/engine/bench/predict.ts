/** A salt taken through a procedure: what would be recorded at every test. */
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { cellsOf } from "../practical/cells.ts";
import type { Part, Procedure } from "../practical.ts";
import { type BenchTube, carryOutTest, type Hand } from "./carry-out-test.ts";
import { type EquationWriter, netIonicEquation } from "./net-ionic.ts";
import { observe } from "./observe.ts";
import type { Prediction } from "./prediction.ts";
import { gasesGivenOff } from "./read-gas.ts";
import { nothingTaken, type Portion, type TestedSalt } from "./sample.ts";
import type { TestTrace } from "./trace.ts";
import { copyOfTube, emptyTube } from "./tube.ts";

/**
 * Predicts every test of a procedure for one salt, by cell id. Tests the engine has no chemistry for, and those after them in the same
 * tube, give no readings.
 * @throws NoEquilibrium when the solver gives up, UnknownReagent and RangeError for a procedure that cannot be carried out
 */
export function predictSalt(salt: TestedSalt, parts: Procedure, solve: Solver): Map<string, Prediction> {
  return predictWith(netIonicEquation, salt, parts, solve);
}

/** As `predictSalt`, without the equations of solids and gases: for those who ask what is seen, not why. */
export function predictSights(salt: TestedSalt, parts: Procedure, solve: Solver): Map<string, Prediction> {
  return predictWith(() => undefined, salt, parts, solve);
}

function predictWith(
  write: EquationWriter,
  salt: TestedSalt,
  parts: Procedure,
  solve: Solver,
): Map<string, Prediction> {
  const cells = cellsOf(parts);
  return new Map(
    parts.flatMap((part) => {
      const predictions = predictPart({ salt, part, solve, write });
      return cells.filter((cell) => cell.part === part).map(({ id }, n): [string, Prediction] => [id, predictions[n]]);
    }),
  );
}

/** A part to be predicted for a salt. */
interface Asked {
  salt: TestedSalt;
  part: Part;
  solve: Solver;
  write: EquationWriter;
}

/** What the engine says of a test it has no chemistry for. */
const NO_OPINION: Prediction = { readings: [], events: [], colours: [], gases: [], gates: [], heldBack: [] };

/**
 * The part by the book, then once more where a paper leaves the hand a choice: "a few drops" is not a count, so where a precipitate goes
 * again within them a careful hand stops when it is at its fullest; "warm" is not a temperature; air takes its time to act. Every hand is right, so every reading
 * is accepted; the careful one's comes first.
 */
function predictPart(asked: Asked): Prediction[] {
  const { part } = asked;
  const warm = TEMPERATURE.warm.value;
  const counted = runPart(asked, () => ({ warm, air: true }));
  const stops = counted.map(({ trace }) => stopAt(trace));
  const runs = [counted];
  /** Another hand does what the first did until its own test comes. */
  const again = (from: number, hand: (index: number) => Hand) => runPart(asked, hand, counted.slice(0, from));
  const firstStop = stops.findIndex((stop) => stop !== undefined);
  if (firstStop >= 0) {
    runs.unshift(again(firstStop, (index) => ({ warm, air: true, stopAtDrop: stops[index] })));
  }
  const firstWarm = firstWith(part, "warm");
  if (firstWarm >= 0) runs.push(again(firstWarm, () => ({ warm: TEMPERATURE.warmer.value, air: true })));
  const firstStand = firstWith(part, "stand");
  if (firstStand >= 0) runs.push(again(firstStand, () => ({ warm, air: false })));
  return part.tests.map((_, index) => together(runs.map((run) => run[index].prediction)));
}

const firstWith = ({ tests }: Part, what: "warm" | "stand"): number =>
  tests.findIndex(({ steps }) => steps.some((step) => step.do === what));

/** The first prediction, with the readings of all; no opinion as soon as one of them has none, but the gases to be ready for. */
function together(all: readonly Prediction[]): Prediction {
  const predictions = [...new Set(all)];
  if (predictions.some(({ readings }) => readings.length === 0))
    return { ...NO_OPINION, gases: [...new Set(predictions.flatMap(({ gases }) => gases))] };
  if (predictions.length === 1) return predictions[0];
  const readings = new Map(
    predictions.flatMap((one) => one.readings.map((reading) => [JSON.stringify(reading), reading])),
  );
  return { ...predictions[0], readings: [...readings.values()] };
}

/** How far a part has come: the tube, what was taken for it, and what has been brought together. */
interface Progress {
  tube: BenchTube;
  portion: Portion;
  brought: TestTrace["together"];
}

interface TestRun {
  /** Undefined after a test without an opinion. */
  trace: TestTrace | undefined;
  prediction: Prediction;
  /** Where the part stands after the test. */
  after: Progress;
}

/** Carries a part out, from after the tests already `done`. */
function runPart(
  { salt, part, solve, write }: Asked,
  hand: (index: number) => Hand,
  done: readonly TestRun[] = [],
): TestRun[] {
  const runs = [...done];
  for (let index = done.length; index < part.tests.length; index++) {
    const last = runs[index - 1];
    if (last && (!last.trace || last.trace.unknown)) {
      runs.push({ trace: undefined, prediction: NO_OPINION, after: last.after });
      continue;
    }
    const after: Progress = last
      ? { tube: copyOfTube(last.after.tube), portion: { ...last.after.portion }, brought: new Map(last.after.brought) }
      : { tube: emptyTube(), portion: nothingTaken(salt), brought: new Map() };
    const trace = carryOutTest(part.tests[index], after.tube, after.portion, after.brought, solve, hand(index));
    const prediction = trace.unknown ? { ...NO_OPINION, gases: gasesGivenOff(trace) } : observe(trace, write);
    runs.push({ trace, prediction, after });
  }
  return runs;
}

/** The drop at which to stop so that the precipitate is at its fullest, when it goes again within the drops; else undefined. */
function stopAt(trace: TestTrace | undefined): number | undefined {
  if (!trace || trace.drops.length < 2) return undefined;
  const grams = trace.drops.map(({ solids }) => solids.reduce((sum, solid) => sum + solid.grams, 0));
  const most = Math.max(...grams);
  const last = grams[grams.length - 1];
  if (most <= 0 || last > most * (1 - VISIBILITY.goesAgain.value)) return undefined;
  return grams.indexOf(most) + 1;
}
