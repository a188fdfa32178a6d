/** Holds a practical against the engine: what the author states must be what the engine finds, and the tests must decide the answer. */
import { createSolver } from "../engine/equilibrium/solve.ts";
import { wrongAnswers } from "./check/answers.ts";
import { faultsIn } from "./check/make-fault.ts";
import { wrongObservations } from "./check/observations.ts";
import { undecidedSamples } from "./check/separation.ts";
import { impossibleSteps } from "./check/steps.ts";
import type { ContentFault } from "./faults.ts";
import type { PracticalFile } from "./practical-files.ts";
import { walkthrough } from "./walkthrough.ts";

const solve = createSolver();

/** All faults of one practical that reads well but is wrong; empty when it may be published. */
export function checkPractical({ source, practical }: PracticalFile): ContentFault[] {
  const fault = faultsIn(source);
  const early = [...impossibleSteps(practical, fault), ...wrongAnswers(practical, solve, fault)];
  // Without possible steps and answers nothing can be predicted; what follows would only repeat these faults.
  if (early.length > 0) return early;
  const computed = walkthrough(practical);
  return [...wrongObservations(practical, computed, fault), ...undecidedSamples(practical, computed, fault)];
}
