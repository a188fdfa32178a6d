/** The curve a reader asks for: of another salt, or with another strength of the sample or of the reagent. */
import type { Solver } from "../equilibrium/solve.ts";
import { ionName } from "../formula/ion-name.ts";
import { parseFormula } from "../formula/parse.ts";
import type { Part, Sample } from "../practical.ts";
import { cannotBe, type Form, nameOf } from "./allowed-salts.ts";
import { asSample } from "./as-sample.ts";
import { contentNamed } from "./contents.ts";
import { additionOf, hasNoSolid } from "./curve.ts";
import { type NamedCurve, namedCurve } from "./named-curve.ts";
import { NoEquilibrium } from "./tube.ts";

/** Where a curve stands in its practical. */
export interface CurveSource {
  /** Letter of the sample. */
  sample: string;
  given: Sample["given"];
  part: Part;
  /** Place in the part of the test in which the curve ends. */
  test: number;
  /** The ion that the paper's own curve follows. */
  ion?: string;
}

/** What a reader may choose. */
export interface CurveChange {
  /** One cation and one anion, mhchem, without water of crystallisation. */
  salt: string;
  /** Strength of the sample solution, mol/dm3; absent when a solid is taken. */
  molPerDm3?: number;
  /** Strength of the reagent, mol/dm3; absent where it has none, as water. */
  reagentMolPerDm3?: number;
}

/** The curve, or why there is none: half a sentence with the engine's figure, formulas in mhchem notation. */
export type ChangedCurve = { curve: NamedCurve } | { refused: string };

/**
 * Draws the curve anew. A salt that cannot be such a sample, a test the engine cannot follow and a mixture it cannot solve are refused.
 * @throws RangeError when what it holds is not made of ions the engine knows
 */
export function changedCurve(source: CurveSource, change: CurveChange, solve: Solver): ChangedCurve {
  const salt = contentNamed(change.salt);
  if (!salt) throw new RangeError(`found the salt "${change.salt}", expected salts of known ions`);
  const form: Form = {
    given: source.given,
    ...(change.molPerDm3 !== undefined && { concentration: { molPerDm3: change.molPerDm3 } }),
  };
  const name = nameOf(salt);
  try {
    const reason = cannotBe(salt, form, solve);
    if (reason !== undefined) return { refused: reason };
    const part = withReagentAt(source.part, source.test, change.reagentMolPerDm3);
    const found = namedCurve(
      { sample: source.sample, salt: asSample(salt, form) },
      part,
      source.test,
      solve,
      undefined,
      source.ion,
    );
    if (!found) return { refused: `the engine cannot follow ${name} through this test` };
    const { ion } = source;
    // An anion is what the test asks for; another cation is the other salt's own, and is followed.
    if (ion !== undefined && found.ion !== ion && parseFormula(ion).charge < 0 && hasNoSolid(found)) {
      return { refused: `${name} holds no ${ionName(ion)}, so nothing precipitates here` };
    }
    return { curve: found };
  } catch (error) {
    if (!(error instanceof NoEquilibrium)) throw error;
    return { refused: `the engine finds no equilibrium for ${name} in this mixture` };
  }
}

/** The part with another strength in the bottle that the test's last liquid comes from; the part itself when none is given. */
function withReagentAt(part: Part, test: number, molPerDm3: number | undefined): Part {
  const own = additionOf(part, test);
  if (!own || molPerDm3 === undefined) return part;
  return {
    ...part,
    tests: part.tests.map((one) => ({
      ...one,
      steps: one.steps.map((step) =>
        step.do === "add" && step.reagent === own.reagent && step.at?.molPerDm3 === own.at?.molPerDm3
          ? { ...step, at: { molPerDm3 } }
          : step,
      ),
    })),
  };
}
