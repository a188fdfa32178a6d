/** A salt taken through a procedure: what would be recorded at every test. */
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { cellsOf } from "../practical/cells.ts";
import type { Cell, Part, Procedure } from "../practical.ts";
import { type BenchTube, carryOutTest, type Hand } from "./carry-out-test.ts";
import { observe } from "./observe.ts";
import type { Prediction } from "./prediction.ts";
import type { Portion, TestedSalt } from "./sample.ts";
import type { TestTrace } from "./trace.ts";
import { emptyTube } from "./tube.ts";

/**
 * Predicts every test of a procedure for one salt, by cell id. Tests the engine has no chemistry for, and those after them in the same
 * tube, give no readings.
 * @throws NoEquilibrium when the solver gives up, UnknownReagent and RangeError for a procedure that cannot be carried out
 */
export function predictSalt(salt: TestedSalt, parts: Procedure, solve: Solver): Map<string, Prediction> {
  const cells = cellsOf(parts);
  return new Map(
    parts.flatMap((part) =>
      predictPart(
        salt,
        part,
        cells.filter((one) => one.part === part),
        solve,
      ),
    ),
  );
}

/** What the engine says of a test it has no chemistry for. */
const NO_OPINION: Prediction = { readings: [], events: [], gases: [], gates: [], heldBack: [] };

/**
 * The part by the book, then once more where a paper leaves the hand a choice: "a few drops" is not a count, so where a precipitate goes
 * again within them a careful hand stops when it is at its fullest; "warm" is not a temperature; air takes its time to act. Every hand is right, so every reading
 * is accepted; the careful one's comes first.
 */
function predictPart(salt: TestedSalt, part: Part, cells: readonly Cell[], solve: Solver): [string, Prediction][] {
  const warm = TEMPERATURE.warm.value;
  const counted = runPart(salt, part, solve, () => ({ warm, air: true }));
  const stops = counted.map(({ trace }) => stopAt(trace));
  const runs = [counted];
  if (stops.some((stop) => stop !== undefined)) {
    runs.unshift(runPart(salt, part, solve, (index) => ({ warm, air: true, stopAtDrop: stops[index] })));
  }
  if (part.tests.some(({ steps }) => steps.some((step) => step.do === "warm"))) {
    runs.push(runPart(salt, part, solve, () => ({ warm: TEMPERATURE.warmer.value, air: true })));
  }
  if (part.tests.some(({ steps }) => steps.some((step) => step.do === "stand"))) {
    runs.push(runPart(salt, part, solve, () => ({ warm, air: false })));
  }
  return cells.map((cell, index) => [cell.id, together(runs.map((run) => run[index].prediction))]);
}

/** The first prediction, with the readings of all; no opinion as soon as one of them has none. */
function together(predictions: readonly Prediction[]): Prediction {
  if (predictions.some(({ readings }) => readings.length === 0)) return NO_OPINION;
  const readings = new Map(
    predictions.flatMap((one) => one.readings.map((reading) => [JSON.stringify(reading), reading])),
  );
  return { ...predictions[0], readings: [...readings.values()] };
}

interface TestRun {
  trace: TestTrace | undefined;
  prediction: Prediction;
}

function runPart(salt: TestedSalt, part: Part, solve: Solver, hand: (index: number) => Hand): TestRun[] {
  const tube: BenchTube = emptyTube();
  const portion: Portion = { salt, cm3: 0, dry: undefined };
  const brought: TestTrace["together"] = new Map();
  let known = true;
  return part.tests.map((test, index) => {
    if (!known) return { trace: undefined, prediction: NO_OPINION };
    const trace = carryOutTest(test, tube, portion, brought, solve, hand(index));
    known = !trace.unknown;
    return { trace, prediction: known ? observe(trace) : NO_OPINION };
  });
}

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
