/** The bottles for waste that must not go into the sink. */
import { SAMPLE_CAUTIONS } from "../constants/bench-cautions.ts";
import { type Waste, wastes } from "../constants/reagents.ts";
import type { Statement } from "../practical.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { reagentOf } from "./reagent-plan.ts";
import type { ReagentUse } from "./tube-plan.ts";

/** Kinds of waste that are collected, in the order in which the bottles stand. */
const COLLECTED: readonly Waste[] = ["lead", "chromium(VI)", "silver", "barium", "heavy metal"];

/** One bottle for each kind of waste that the reagents, or the ions the samples may hold, leave behind. */
export function wasteBottles(
  uses: readonly Pick<ReagentUse, "id">[],
  paper: Pick<Statement, "cations">,
): BenchPlan["extras"] {
  return COLLECTED.flatMap((waste) => {
    const reagents = uses.map(({ id }) => reagentOf(id)).filter((reagent) => reagent.waste === waste);
    const held = paper.cations.some((ion) => SAMPLE_CAUTIONS[ion]?.waste === waste);
    const because = [...new Set(reagents.map(({ name }) => name)), ...(held ? ["what the samples may hold"] : [])];
    if (because.length === 0) return [];
    return [{ what: `${waste} waste bottle`, count: 1, prepare: wastes[waste], because: because.join("; ") }];
  });
}
