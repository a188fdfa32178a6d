/** Holds a practical against the engine: what the author states must be what the engine finds, and the tests must decide the answer. */

import type { ContentFault } from "../authoring/faults.ts";
import { UnknownReagent } from "../engine/bench/operations.ts";
import { TooManyReadings } from "../engine/bench/tabulate.ts";
import { NoEquilibrium } from "../engine/bench/tube.ts";
import { TooMuchWork } from "../engine/deduction/work.ts";
import { createSolver } from "../engine/equilibrium/solve.ts";
import { cellsOf, type Practical } from "../engine/practical.ts";
import { wrongAnswers } from "./check/answers.ts";
import { ledAstray } from "./check/led-astray.ts";
import { faultsIn, type MakeFault } from "./check/make-fault.ts";
import { wrongObservations } from "./check/observations.ts";
import { undecidedSamples } from "./check/separation.ts";
import { wrongSteps } from "./check/steps.ts";
import type { PracticalFile } from "./practical-files.ts";
import { walkthrough } from "./walkthrough.ts";

const solve = createSolver();

/** All faults of one practical that reads well but is wrong; empty when it may be published. */
export function checkPractical({ source, practical }: PracticalFile): ContentFault[] {
  const fault = faultsIn(source);
  try {
    return faultsOf(practical, fault);
  } catch (error) {
    if (error instanceof TooManyReadings) return [tooMuchToTell(error, practical, fault)];
    if (error instanceof TooMuchWork)
      return [
        fault(["paper"], {
          what: "the paper says too much to follow",
          found: error.message,
          advice: "leave some statements out, or offer fewer ions",
        }),
      ];
    if (!(error instanceof NoEquilibrium || error instanceof UnknownReagent || error instanceof RangeError))
      throw error;
    return [
      fault(["parts"], {
        what: "the engine cannot carry out this procedure",
        found: error.message,
        advice: "look at the concentrations and volumes; keep samples at 1 mol/dm3 or below",
      }),
    ];
  }
}

/** The line of the record on which the salts of a long list show too many different things. */
function tooMuchToTell({ cell, message }: TooManyReadings, { parts }: Practical, fault: MakeFault): ContentFault {
  const at = cellsOf(parts).find(({ id }) => id === cell);
  const place = at ? [parts.indexOf(at.part), "tests", at.index] : [];
  return fault(["parts", ...place], {
    what: `test ${cell}: too much to tell apart`,
    found: message,
    advice: "offer fewer ions under paper, or give some steps of this test a test of their own",
  });
}

function faultsOf(practical: Practical, fault: MakeFault): ContentFault[] {
  const early = [...wrongSteps(practical, fault), ...wrongAnswers(practical, solve, fault)];
  // Without possible steps and answers nothing can be predicted; what follows would only repeat these faults.
  if (early.length > 0) return early;
  const computed = walkthrough(practical);
  const observed = wrongObservations(practical, computed, fault);
  const astray = observed.length > 0 ? [] : ledAstray(practical, computed, fault);
  return [...observed, ...astray, ...undecidedSamples(practical, computed, fault)];
}
