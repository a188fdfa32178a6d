/** The worked calculations of tests/reference/worked-examples.json: what they ask, and when a figure of ours is theirs. */
import type { Comparison } from "../comparison.ts";
import { reasonFor, reference } from "../reference.ts";

export interface WorkedExample {
  id: string;
  topic: string;
  question: string;
  /** The constants and amounts the example prints, under its own names. */
  given: Record<string, number | string>;
  answer: number;
  unit: string;
  tolerance: string;
}

export const workedExamples = reference<{ examples: WorkedExample[] }>("worked-examples.json").examples;

/** The example with this id. Throws a RangeError when there is none. */
export function workedExample(id: string): WorkedExample {
  const found = workedExamples.find((one) => one.id === id);
  if (!found) throw new RangeError(`${id} is no worked example of tests/reference/worked-examples.json`);
  return found;
}

/** A printed constant of an example. Throws a RangeError when it prints none of that name. */
export function given(id: string, name: string): number {
  const figure = workedExample(id).given[name];
  if (typeof figure === "number") return figure;
  throw new RangeError(`${id} prints no figure "${name}", only ${Object.keys(workedExample(id).given).join(", ")}`);
}

/** Rounding of binary fractions, as a part of the figure: all that "exact" allows. */
const ROUNDING = 1e-9;

/**
 * Whether a figure is the example's, by the tolerance the example itself states: "relative 3 %", "absolute 0.02", "exact", "factor 3" or
 * "order of magnitude", the last with the side of 1 on which it "must be" where a precipitate hangs on it.
 */
export function isAnswer({ id, answer, tolerance }: WorkedExample, found: number): boolean {
  if (tolerance.includes("must be > 1") && !(found > 1)) return false;
  if (/(must be|;) <+ 1/.test(tolerance) && !(found < 1)) return false;
  const [, kind, size] = /^(relative|absolute|factor|exact|order of magnitude) ?([\d.]+)?/.exec(tolerance) ?? [];
  if (kind === "relative") return Math.abs(found - answer) <= (Number(size) / 100) * answer;
  if (kind === "absolute") return Math.abs(found - answer) <= Number(size) + ROUNDING * answer;
  if (kind === "exact") return Math.abs(found - answer) <= ROUNDING * answer;
  if (kind === undefined) throw new RangeError(`${id}: the tolerance "${tolerance}" cannot be read`);
  return Math.abs(Math.log10(found / answer)) <= Math.log10(kind === "factor" ? Number(size) : 10);
}

/** Counts one example into a comparison. */
export function holdAgainst(result: Comparison, example: WorkedExample, found: number): void {
  result.compared++;
  if (isAnswer(example, found)) result.agreed++;
  else {
    const difference = `${found.toPrecision(3)} ${example.unit} where the reference has ${example.answer} (${example.tolerance}): ${example.question}`;
    result.misses.push({ id: example.id, difference, reason: reasonFor(example.id) });
  }
}

/** Counts a row that is not compared, under its cause. */
export function leaveOut(result: Comparison, cause: string): void {
  result.left[cause] = (result.left[cause] ?? 0) + 1;
}
