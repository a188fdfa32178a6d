/** All that the preparation sheet of one practical shows, worked out at build for the usual class. */
import type { Solver } from "../engine/equilibrium/solve.ts";
import { type ClassHazard, classHazards } from "../engine/planning/class/class-hazards.ts";
import type { ClassSize } from "../engine/planning/class/class-size.ts";
import { groupNeeds } from "../engine/planning/class/group-needs.ts";
import { sameForAll } from "../engine/planning/class/sample-supplies.ts";
import type { GroupNeeds } from "../engine/planning/class/supply.ts";
import type { Practical } from "../engine/practical.ts";
import { department } from "./department/department.ts";
import { walkthrough } from "./walkthrough.ts";

export interface ClassPage {
  needs: GroupNeeds;
  hazards: ClassHazard[];
  /** What cannot be made up, in sentences. */
  faults: string[];
  /** The class the page is built for. */
  own: ClassSize;
}

/** @throws what the engine throws for a procedure it cannot carry out */
export function classPage(practical: Practical, solve: Solver): ClassPage {
  const { plan } = walkthrough(practical);
  const sampleCm3 = sameForAll(plan, "solution");
  const sampleG = sameForAll(plan, "solid");
  return {
    ...groupNeeds(practical, plan, solve),
    hazards: classHazards(practical.samples, plan),
    own: {
      ...department().class,
      ...(sampleCm3 !== undefined && { sampleCm3 }),
      ...(sampleG !== undefined && { sampleG }),
    },
  };
}
