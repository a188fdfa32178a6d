/** Predictions that are remembered: what has been worked out for a salt and a part is not worked out again. */
import { remembering } from "../equilibrium/remembering.ts";
import type { Solver } from "../equilibrium/solve.ts";
import type { Part, Procedure } from "../practical.ts";
import type { Form } from "./allowed-salts.ts";
import { type Borderline, borderline } from "./borderline.ts";
import { predictSalt } from "./predict.ts";
import type { Prediction } from "./prediction.ts";
import type { Content } from "./salt.ts";
import type { TestedSalt } from "./sample.ts";

export interface Predictor {
  solve: Solver;
  /** As `predictSalt`. */
  predict(salt: TestedSalt, parts: Procedure): Map<string, Prediction>;
  /** As `borderline`. */
  border(salt: Content, form: Form, parts: Procedure): Map<string, Borderline>;
}

/** Parts kept in mind, each with one salt; the oldest are forgotten first. A practical has some hundred. */
const MOST = 20_000;

/**
 * A predictor over a solver. Salts and parts are known again by what they say, not by which object they are; what is returned is shared and
 * must not be changed. Throws what `predictSalt` throws.
 */
export function createPredictor(solve: Solver): Predictor {
  const predicted = new Map<string, Map<string, Prediction>>();
  const bordered = new Map<string, Map<string, Borderline>>();
  const remembered = remembering(solve);
  return {
    solve,
    predict: (salt, parts) => {
      const sample = contentOf(salt);
      return together(parts, (part, content) =>
        recall(predicted, sample + content, () => predictSalt(salt, [part], remembered)),
      );
    },
    border: (salt, form, parts) => {
      const sample = contentOf({ ions: salt.ions, given: form.given, concentration: form.concentration });
      return together(parts, (part, content) =>
        recall(bordered, sample + content, () => borderline(salt, form, [part], remembered)),
      );
    },
  };
}

const contentOf = (value: unknown): string => JSON.stringify(value);

/** The cells of every part, each part with its content: what is done and how it is numbered, not its title nor how the paper words it. */
const together = <T>(parts: Procedure, each: (part: Part, content: string) => Map<string, T>): Map<string, T> =>
  new Map(
    parts.flatMap((part) => [
      ...each(part, contentOf([part.label, part.tests.map(({ label, steps }) => [label, steps])])),
    ]),
  );

function recall<T>(memory: Map<string, T>, key: string, make: () => T): T {
  const before = memory.get(key);
  if (before !== undefined) return before;
  const made = make();
  memory.set(key, made);
  if (memory.size > MOST) memory.delete(memory.keys().next().value as string);
  return made;
}
