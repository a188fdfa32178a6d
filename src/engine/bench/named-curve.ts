/** A curve with all it takes to tell it: the sample's letter, the tests it runs through, and the equations of its solids. */
import type { Solver } from "../equilibrium/solve.ts";
import { ionName } from "../formula/ion-name.ts";
import { ionNames } from "../formula/ions.ts";
import { cellsOf } from "../practical/cells.ts";
import type { Part } from "../practical.ts";
import { type Curve, curve } from "./curve.ts";
import { predictSalt } from "./predict.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";
import type { TestedSalt } from "./sample.ts";

export interface NamedCurve extends Curve {
  /** Letter of the sample. */
  sample: string;
  /** Name of the ion that is followed: "zinc"; its formula when the table has no name for it. */
  ionName: string;
  /** Tests that end along the curve, as the record names them. */
  cells: string[];
  /** Net ionic equations by solid id: how it forms, how it dissolves. */
  forms: Record<string, string>;
  dissolves: Record<string, string>;
}

/** A salt under the letter of its sample. */
export interface LabelledSalt {
  sample: string;
  salt: TestedSalt;
}

/**
 * The curve of the last liquid added in a test. `predicted` is what the salt shows in the part, by cell id.
 *
 * Undefined where the engine has no opinion on the test, or nothing to follow in it.
 * @throws what `curve` and `predictSalt` throw
 */
export function namedCurve(
  { sample, salt }: LabelledSalt,
  part: Part,
  testIndex: number,
  solve: Solver,
  predicted: ReadonlyMap<string, Prediction> = predictSalt(salt, [part], solve),
): NamedCurve | undefined {
  const cells = cellsOf([part]).map(({ id }) => id);
  if (!predicted.get(cells[testIndex])?.readings.length) return undefined;
  const one = curve(salt, part, testIndex, solve);
  if (!one) return undefined;
  const along = one.ends.map(({ test }) => cells[test]);
  const events = along.flatMap((id) => predicted.get(id)?.events ?? []);
  return {
    ...one,
    sample,
    ionName: Object.hasOwn(ionNames, one.ion) ? ionName(one.ion) : one.ion,
    cells: along,
    forms: equations(events, "precipitate forms"),
    dissolves: equations(events, "precipitate dissolves"),
  };
}

const equations = (events: readonly BenchEvent[], kind: BenchEvent["kind"]): Record<string, string> =>
  Object.fromEntries(
    events.flatMap((event) =>
      event.kind === kind && !event.where && event.phase && event.equation ? [[event.phase, event.equation]] : [],
    ),
  );
