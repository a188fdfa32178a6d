/** The curves of a practical that tell something: for every true salt, where a precipitate comes or goes as a liquid is added. */
import { asSample } from "../engine/bench/as-sample.ts";
import { contentNamed } from "../engine/bench/contents.ts";
import type { Curve } from "../engine/bench/curve.ts";
import { type NamedCurve, namedCurve } from "../engine/bench/named-curve.ts";
import { predictSalt } from "../engine/bench/predict.ts";
import type { Solver } from "../engine/equilibrium/solve.ts";
import { cellsOf, type Practical, type Procedure, type Sample } from "../engine/practical.ts";

/** Part of the ion by which what is solid must change, for the curve to be worth a picture. */
const TELLING = 0.05;

/**
 * In the order of the paper, part by part.
 * @throws what the engine throws for a procedure it cannot carry out
 */
export function curvesOf({ parts, samples }: Practical, solve: Solver): NamedCurve[] {
  const order = cellsOf(parts).map(({ id }) => id);
  const place = ({ cells }: NamedCurve) => order.indexOf(cells[0]);
  return samples.flatMap((sample) => curvesOfSample(sample, parts, solve)).sort((a, b) => place(a) - place(b));
}

function curvesOfSample(sample: Sample, parts: Procedure, solve: Solver): NamedCurve[] {
  const content = contentNamed(sample.salt);
  if (!content) return [];
  const salt = asSample(content, sample);
  const mine = parts.filter((part) => part.samples?.includes(sample.label) ?? true);
  const predicted = predictSalt(salt, mine, solve);
  const drawn = cellsOf(mine).flatMap(({ part, index }) => {
    const one = namedCurve({ sample: sample.label, salt }, part, index, solve, predicted);
    return one && isTelling(one) ? [one] : [];
  });
  // A curve that goes on in a later test is drawn once, with that test.
  return drawn.filter((one) => !drawn.some((more) => more !== one && more.cells.includes(one.cells.at(-1) ?? "")));
}

/** Whether what is solid changes enough for the curve to be worth a picture. */
export function isTelling({ series, total }: Curve): boolean {
  const solids = series.filter(({ kind }) => kind === "solid");
  return solids.some(({ mol }) => {
    const shares = mol.map((held, n) => (total[n] > 0 ? held / total[n] : 0));
    return Math.max(...shares) - Math.min(...shares) >= TELLING;
  });
}
