/** All that the preparation sheet of one practical shows, worked out at build for the usual class. */
import { said } from "#words/constants.ts";
import { GAS_SAFETY } from "../engine/constants/gas-safety.ts";
import type { Solver } from "../engine/equilibrium/solve.ts";
import type { BenchPlan } from "../engine/planning/bench-plan.ts";
import { type ClassHazard, classHazards } from "../engine/planning/class/class-hazards.ts";
import type { ClassSize } from "../engine/planning/class/class-size.ts";
import { groupNeeds } from "../engine/planning/class/group-needs.ts";
import { sameForAll } from "../engine/planning/class/sample-supplies.ts";
import type { GroupNeeds } from "../engine/planning/class/supply.ts";
import type { GivenOff, Practical } from "../engine/practical.ts";
import { department } from "./department/department.ts";
import { walkthrough } from "./walkthrough.ts";

/** A gas some allowed salt may give off in the practical, and the tests in which it may come. */
export interface ClassGas {
  gas: GivenOff;
  tests: string[];
  /** What to have ready for it, and what it can do. */
  have: string;
  hazard: string;
}

export interface ClassPage {
  needs: GroupNeeds;
  hazards: ClassHazard[];
  /** The most harmful first. */
  gases: ClassGas[];
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
    gases: gasesOf(plan),
    own: {
      ...department().class,
      ...(sampleCm3 !== undefined && { sampleCm3 }),
      ...(sampleG !== undefined && { sampleG }),
    },
  };
}

function gasesOf({ gases }: BenchPlan): ClassGas[] {
  const tests = new Map<GivenOff, string[]>();
  for (const { gas, cell } of gases) tests.set(gas, [...new Set([...(tests.get(gas) ?? []), cell])]);
  return [...tests]
    .map(([gas, cells]): ClassGas => {
      const { have, hazard } = GAS_SAFETY[gas];
      return { gas, tests: cells, have: said(have), hazard: said(hazard) };
    })
    .toSorted((a, b) => GAS_SAFETY[a.gas].rank - GAS_SAFETY[b.gas].rank);
}
