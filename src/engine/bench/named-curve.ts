/** A curve with all it takes to tell it: the sample's letter, the tests it runs through, and the equations of its solids. */

import { ionNames } from "#words/ion-names.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { ionName } from "../formula/ion-name.ts";
import { parseFormula } from "../formula/parse.ts";
import { cellsOf } from "../practical/cells.ts";
import type { Part } from "../practical.ts";
import { type Curve, curve, hasNoSolid } from "./curve.ts";
import { netIonicEquation } from "./net-ionic.ts";
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
 * The curve of the last liquid added in a test. `predicted` is what the salt shows in the part, by cell id. `asked` is the
 * ion to follow where nothing precipitates, if the tube holds it.
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
  asked?: string,
): NamedCurve | undefined {
  const cells = cellsOf([part]).map(({ id }) => id);
  if (!predicted.get(cells[testIndex])?.readings.length) return undefined;
  const found = curve(salt, part, testIndex, solve);
  if (!found) return undefined;
  const kept = asked !== undefined && hasNoSolid(found) ? curve(salt, part, testIndex, solve, asked) : undefined;
  const one = kept?.total.some((mol) => mol > 0) ? kept : found;
  const along = one.ends.map(({ test }) => cells[test]);
  const events = along.flatMap((id) => predicted.get(id)?.events ?? []);
  return {
    ...one,
    sample,
    ionName: Object.hasOwn(ionNames, one.ion) ? ionName(one.ion) : one.ion,
    cells: along,
    forms: Object.fromEntries(
      Object.entries(equations(events, "precipitate forms")).map(([solid, equation]) => [
        solid,
        fromSimpleIon(equation, solid, one),
      ]),
    ),
    dissolves: equations(events, "precipitate dissolves"),
  };
}

/**
 * The equation by which a solid forms, from the simple ion where it is written from one of its hydroxo ions ("[Fe2(OH)2]^4+") and that one
 * does not hold most of the ion at the start: a reader of the curve would look for it in vain.
 */
function fromSimpleIon(equation: string, solid: string, { ion, series }: Curve): string {
  const main = series.filter(({ kind }) => kind === "dissolved").toSorted((a, b) => b.mol[0] - a.mol[0])[0]?.id;
  const [left, right] = equation.split(" -> ").map((side) => side.split(" + ").map(termOf));
  const hidden = left.find(({ id }) => isHydroxoIonOf(ion, id) && id !== main);
  if (!hidden) return equation;
  const before = new Map(left.map(({ id, count }) => [id === hidden.id ? ion : id, count]));
  const after = new Map(right.map(({ id, count }) => [id, count]));
  return netIonicEquation(solid, true, before, after) ?? equation;
}

/** "4 OH-(aq)": four of OH-. */
function termOf(term: string): { id: string; count: number } {
  const [, count = "1", id] = /^(?:(\d+) )?(.+?)(?:\((?:aq|l)\))?$/.exec(term) ?? [];
  return { id, count: Number(count) };
}

function isHydroxoIonOf(ion: string, id: string): boolean {
  if (!id.includes("(OH)")) return false;
  const { elements, charge } = parseFormula(id);
  return charge > 0 && Object.keys(parseFormula(ion).elements).every((metal) => Object.hasOwn(elements, metal));
}

const equations = (events: readonly BenchEvent[], kind: BenchEvent["kind"]): Record<string, string> =>
  Object.fromEntries(
    events.flatMap((event) =>
      event.kind === kind && !event.where && event.phase && event.equation ? [[event.phase, event.equation]] : [],
    ),
  );
