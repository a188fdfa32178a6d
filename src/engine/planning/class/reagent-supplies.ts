/** The reagents of a class: those the steps add, and the liquids that stand beside them, one bottle for each strength. */
import { forIt, saidOnSheet, THIS_PAPER } from "#words/class-recipes.ts";
import { reagentName } from "#words/steps.ts";
import { makings, type SourcedNote } from "../../constants/preparation.ts";
import { type Reagent, reagents } from "../../constants/reagents.ts";
import type { Solver } from "../../equilibrium/solve.ts";
import type { BenchPlan } from "../bench-plan.ts";
import { tidy } from "../portions.ts";
import { reagentOf } from "../reagent-plan.ts";
import { reagentTooStrong } from "./can-dissolve.ts";
import { reagentRecipe } from "./recipe.ts";
import type { Supply } from "./supply.ts";

/** A reagent at a strength, with what one group uses of it, cm3. */
interface Use {
  id: string;
  molPerDm3: number | null;
  cm3: number;
  /** Of that, what stands in waste bottles before the first tube, cm3. */
  apart: number;
  /** What it is for, where no step adds it: "limewater, to lead a gas through: asked for in a (0.01 mol/dm3)". */
  besides: string[];
}

const REAGENT_LIST = "reagent list, from memory";

const isReagent = (id: string): boolean => reagents.some((one) => one.id === id);

/** Every bottle of a reagent, in the order of first use; what is used of one bottle in two ways is added up. */
export function reagentUses(plan: Pick<BenchPlan, "reagents" | "besides">): Use[] {
  const uses: Use[] = [
    ...plan.reagents
      .filter(({ neededCm3 }) => neededCm3 > 0)
      .map(({ id, molPerDm3, neededCm3 }) => ({
        id,
        molPerDm3: molPerDm3 ?? null,
        cm3: neededCm3,
        apart: 0,
        besides: [],
      })),
    ...plan.besides
      .filter(({ id }) => isReagent(id))
      .map(({ id, what, because, neededCm3, into }) => ({
        id,
        molPerDm3: reagentOf(id).concentration,
        cm3: neededCm3,
        apart: into === undefined ? 0 : neededCm3,
        besides: [`${what}: ${because}`],
      })),
  ];
  const bottles = new Map<string, Use>();
  for (const use of uses) {
    const key = `${use.id} ${use.molPerDm3}`;
    const before = bottles.get(key);
    bottles.set(key, before ? added(before, use) : use);
  }
  return [...bottles.values()];
}

const added = (one: Use, other: Use): Use => ({
  ...one,
  cm3: tidy(one.cm3 + other.cm3),
  apart: tidy(one.apart + other.apart),
  besides: [...one.besides, ...other.besides],
});

/** What is used as bought and stays with the teacher: concentrated acid and ammonia for a rod. */
export const withTeacher = (plan: Pick<BenchPlan, "besides">): string[] =>
  plan.besides.filter(({ id }) => !isReagent(id)).map(({ what, because }) => `${what} (${because})`);

/** "aqueous silver nitrate, 0.05 mol/dm3"; the name alone where strength has no meaning or is that of a saturated solution. */
export function bottleLabel({ id, name, concentration }: Reagent, molPerDm3: number | null): string {
  const called = reagentName(id, name);
  const plain = molPerDm3 === null || (makings[id]?.grams && molPerDm3 === concentration);
  return plain ? called : `${called}, ${molPerDm3} mol/dm3`;
}

export function reagentSupplies(
  plan: Pick<BenchPlan, "reagents" | "besides">,
  solve: Solver,
): { supplies: Supply[]; faults: string[] } {
  const faults: string[] = [];
  const supplies = reagentUses(plan).map(({ id, molPerDm3, cm3, apart, besides }): Supply => {
    const reagent = reagentOf(id);
    const fault = reagentTooStrong(reagent, molPerDm3, solve);
    if (fault) faults.push(`Reagent ${reagent.name}: ${fault}. Take a weaker solution.`);
    const notes: SourcedNote[] = [
      ...besides.map((text) => ({ text: forIt(text), source: THIS_PAPER })),
      ...(reagent.notes ?? []).map((text) => ({ text: saidOnSheet(text), source: saidOnSheet(REAGENT_LIST) })),
    ];
    const label = bottleLabel(reagent, molPerDm3);
    return {
      kind: "reagent",
      label,
      content: label,
      of: "solution",
      used: cm3,
      ...(apart > 0 && { apart }),
      recipe: reagentRecipe(reagent, molPerDm3),
      notes,
    };
  });
  return { supplies, faults };
}
