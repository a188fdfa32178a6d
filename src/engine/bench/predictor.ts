/** Predictions that are remembered: what has been worked out for a salt and a part is not worked out again. */
import { remembering } from "../equilibrium/remembering.ts";
import type { Solver } from "../equilibrium/solve.ts";
import type { Part, Procedure } from "../practical.ts";
import type { Form } from "./allowed-salts.ts";
import { type Borderline, borderline } from "./borderline.ts";
import { predictSights } from "./predict.ts";
import type { Prediction } from "./prediction.ts";
import type { Content } from "./salt.ts";
import type { TestedSalt } from "./sample.ts";

export interface Predictor {
  solve: Solver;
  /** As `predictSalt`; without equations unless the predictor was made with it. */
  predict(salt: TestedSalt, parts: Procedure): Map<string, Prediction>;
  /** As `borderline`. */
  border(salt: Content, form: Form, parts: Procedure): Map<string, Borderline>;
}

/** Where results are kept: by what is done in a part, and by what is in the tube. */
export interface Memory<T> {
  get(part: string, sample: string): T | undefined;
  set(part: string, sample: string, value: T): void;
}

/** The two memories of a predictor. */
export interface Memories {
  predicted: Memory<Map<string, Prediction>>;
  bordered: Memory<Map<string, Borderline>>;
}

/** Parts kept in mind, each with one salt; those of the part met first are forgotten first. A practical has some hundred. */
const MOST = 20_000;

/** A memory that ends with the run: by part and then by sample, for to put the two texts together takes longer than to look for both. */
function inMind<T>(): Memory<T> {
  const memory = new Map<string, Map<string, T>>();
  let kept = 0;
  return {
    get: (part, sample) => memory.get(part)?.get(sample),
    set: (part, sample, value) => {
      const ofPart = memory.get(part) ?? new Map<string, T>();
      memory.set(part, ofPart.set(sample, value));
      kept += 1;
      for (const [oldest, { size }] of memory) {
        if (kept <= MOST || oldest === part) break;
        memory.delete(oldest);
        kept -= size;
      }
    },
  };
}

/**
 * A predictor over a solver. Salts and parts are known again by what they say, not by which object they are; what is returned is shared and
 * must not be changed. Throws what `predictSalt` throws.
 *
 * @param memories where to keep what has been worked out
 * @param predictSalt what predicts; where equations are read, the function of that name
 */
export function createPredictor(
  solve: Solver,
  { predicted, bordered }: Memories = { predicted: inMind(), bordered: inMind() },
  predictSalt = predictSights,
): Predictor {
  const remembered = remembering(solve);
  return {
    solve,
    predict: (salt, parts) => {
      const sample = contentOf(salt);
      return together(parts, (part, content) =>
        recall(predicted, content, sample, () => predictSalt(salt, [part], remembered)),
      );
    },
    border: (salt, form, parts) => {
      const sample = contentOf({ ions: salt.ions, given: form.given, concentration: form.concentration });
      return together(parts, (part, content) =>
        recall(bordered, content, sample, () => borderline(salt, form, [part], remembered)),
      );
    },
  };
}

const contentOf = (value: unknown): string => JSON.stringify(value);

const partContents = new WeakMap<Part, string>();

/** What is done in a part and how it is numbered, not its title nor how the paper words it; a part that was read is not written out again. */
function contentOfPart(part: Part): string {
  const before =
    partContents.get(part) ?? contentOf([part.label, part.tests.map(({ label, steps }) => [label, steps])]);
  partContents.set(part, before);
  return before;
}

/** The cells of every part, each part with its content. */
function together<T>(parts: Procedure, each: (part: Part, content: string) => Map<string, T>): Map<string, T> {
  const cells = new Map<string, T>();
  for (const part of parts) for (const [id, cell] of each(part, contentOfPart(part))) cells.set(id, cell);
  return cells;
}

function recall<T>(memory: Memory<T>, part: string, sample: string, make: () => T): T {
  const before = memory.get(part, sample);
  if (before !== undefined) return before;
  const made = make();
  memory.set(part, sample, made);
  return made;
}
