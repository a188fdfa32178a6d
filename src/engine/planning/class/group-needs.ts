/** What one group needs of everything, worked out once at build with the engine at hand. */
import { tubeSize } from "#words/bench-plan.ts";
import { smallPieceOf } from "#words/class-recipes.ts";
import { BENCH_PRACTICE } from "../../constants/bench-practice.ts";
import type { Solver } from "../../equilibrium/solve.ts";
import type { Practical } from "../../practical.ts";
import type { BenchPlan } from "../bench-plan.ts";
import { wasteNeeds } from "./class-waste.ts";
import { reagentSupplies, withTeacher } from "./reagent-supplies.ts";
import { sampleSupplies } from "./sample-supplies.ts";
import type { Counted, GroupNeeds } from "./supply.ts";

/** Tubes by size, in the order of first use. */
function tubesOf({ tubes }: Pick<BenchPlan, "tubes">): Counted[] {
  const names = [...new Set(tubes.map(({ size }) => size.name))];
  return names.map((name) => ({
    what: tubeSize(name),
    perGroup: tubes.filter(({ size }) => size.name === name).length,
  }));
}

/** Foil and granules, the bench plan's spare included. */
const piecesOf = ({ reagents }: Pick<BenchPlan, "reagents">): Counted[] =>
  reagents.flatMap(({ name, pieces }) =>
    pieces === undefined ? [] : [{ what: smallPieceOf(name), perGroup: pieces, gEach: BENCH_PRACTICE.piece.value }],
  );

const kitOf = ({ extras }: Pick<BenchPlan, "extras">): Counted[] =>
  extras
    .filter(({ countedApart }) => !countedApart)
    .map(({ what, count, grams, because }) => ({
      what,
      perGroup: count,
      ...(grams && { gEach: grams }),
      note: because,
    }));

/**
 * @param practical the samples with the author's salts, and the procedure
 * @param plan the bench plan of the same practical
 * @returns the needs, and in sentences what cannot be made up
 */
export function groupNeeds(
  practical: Pick<Practical, "samples" | "parts">,
  plan: BenchPlan,
  solve: Solver,
): { needs: GroupNeeds; faults: string[] } {
  const samples = sampleSupplies(practical.samples, plan, solve);
  const reagents = reagentSupplies(plan, solve);
  return {
    needs: {
      supplies: [...samples.supplies, ...reagents.supplies],
      counted: [...tubesOf(plan), ...piecesOf(plan), ...kitOf(plan)],
      withTeacher: withTeacher(plan),
      waste: wasteNeeds(practical, plan),
    },
    faults: [...samples.faults, ...reagents.faults],
  };
}
