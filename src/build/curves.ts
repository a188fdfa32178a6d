/** The curves of a practical that tell something: for every true salt, where a precipitate comes or goes as a liquid is added. */
import { solidForm } from "../engine/bench/allowed-salts.ts";
import { type Curve, curve } from "../engine/bench/curve.ts";
import { predictSalt } from "../engine/bench/predict.ts";
import type { BenchEvent } from "../engine/bench/prediction.ts";
import { ionsOf } from "../engine/bench/salt.ts";
import type { TestedSalt } from "../engine/bench/sample.ts";
import type { Solver } from "../engine/equilibrium/solve.ts";
import { cellsOf, type Practical, type Procedure, type Sample } from "../engine/practical.ts";

export interface NamedCurve extends Curve {
  /** Letter of the sample. */
  sample: string;
  /** Tests that end along the curve, as the record names them. */
  cells: string[];
  /** Net ionic equations by solid id: how it forms, how it dissolves. */
  forms: Record<string, string>;
  dissolves: Record<string, string>;
}

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
  const salt = testedSalt(sample);
  if (!salt) return [];
  const mine = parts.filter((part) => part.samples?.includes(sample.label) ?? true);
  const predicted = predictSalt(salt, mine, solve);
  const cells = cellsOf(mine);
  const drawn = cells.flatMap(({ part, index, id }) => {
    if (!predicted.get(id)?.readings.length) return [];
    const one = curve(salt, part, index, solve);
    if (!one || !isTelling(one)) return [];
    const along = one.ends.flatMap(({ test }) => cells.find((cell) => cell.part === part && cell.index === test) ?? []);
    const events = along.flatMap((cell) => predicted.get(cell.id)?.events ?? []);
    return [
      {
        ...one,
        sample: sample.label,
        cells: along.map((cell) => cell.id),
        forms: equations(events, "precipitate forms"),
        dissolves: equations(events, "precipitate dissolves"),
      },
    ];
  });
  // A curve that goes on in a later test is drawn once, with that test.
  return drawn.filter((one) => !drawn.some((more) => more !== one && more.cells.includes(one.cells.at(-1) ?? "")));
}

function testedSalt({ salt, given, concentration }: Sample): TestedSalt | undefined {
  const simple = ionsOf(salt);
  return (
    simple && {
      ions: simple.ions,
      ...(concentration && { molPerDm3: concentration.molPerDm3 }),
      ...(given !== "solution" && { solid: solidForm(simple) }),
    }
  );
}

const equations = (events: readonly BenchEvent[], kind: BenchEvent["kind"]): Record<string, string> =>
  Object.fromEntries(
    events.flatMap((event) =>
      event.kind === kind && !event.where && event.phase && event.equation ? [[event.phase, event.equation]] : [],
    ),
  );

function isTelling({ series, total }: Curve): boolean {
  const solids = series.filter(({ kind }) => kind === "solid");
  return solids.some(({ mol }) => {
    const shares = mol.map((held, n) => (total[n] > 0 ? held / total[n] : 0));
    return Math.max(...shares) - Math.min(...shares) >= TELLING;
  });
}
