/** The preparation sheet: what a technician makes ready for a class, and what it can do to people. */
import type { Solver } from "../../equilibrium/solve.ts";
import type { Practical } from "../../practical.ts";
import type { BenchPlan } from "../bench-plan.ts";
import { type ClassHazard, classHazards } from "./class-hazards.ts";
import { type ClassSheet, classSheet } from "./class-sheet.ts";
import type { ClassSize } from "./class-size.ts";
import { groupNeeds } from "./group-needs.ts";

export interface PreparedClass extends ClassSheet {
  hazards: ClassHazard[];
  /** Solutions that cannot be made up at their strength, each with the engine's figure. */
  faults: string[];
}

/**
 * Everything for so many groups: solutions with masses (g) and volumes (cm3), bottles and labels, what the store gives out, waste, hazards
 * at each strength. What a change of class size changes is `classSheet` alone.
 *
 * @param practical the samples with the author's salts, and the procedure
 * @param plan the bench plan of one group of the same practical
 * @throws RangeError for a class that cannot be, a reagent that does not exist, or one asked for stronger than its stock
 */
export function prepareClass(
  practical: Pick<Practical, "samples" | "parts">,
  plan: BenchPlan,
  size: ClassSize,
  solve: Solver,
): PreparedClass {
  const { needs, faults } = groupNeeds(practical, plan, solve);
  return { ...classSheet(needs, size), hazards: classHazards(practical.samples, plan), faults };
}
