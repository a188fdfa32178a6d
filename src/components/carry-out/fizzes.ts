import type { BenchPlan } from "../../engine/planning/bench-plan.ts";
import type { Step } from "../../engine/practical.ts";

/** Bubbles may come at this line of the record, and not only from warming. */
export const fizzes = ({ gases }: Pick<BenchPlan, "gases">, cell: string, steps: readonly Step[]): boolean =>
  gases.some((one) => one.cell === cell) && !steps.some(({ do: verb }) => verb === "warm" || verb === "boil");
