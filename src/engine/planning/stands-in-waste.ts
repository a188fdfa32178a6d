/** What stands in a waste bottle before the first tube is emptied into it: acid for ammonia beside silver, a sulfate for barium. */
import * as say from "#words/emptying.ts";
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import type { Emptied } from "./emptied.ts";
import { tidy } from "./portions.ts";
import { reagentOf } from "./reagent-plan.ts";
import { bottleOf } from "./waste-plan.ts";

export interface StandsInWaste {
  /** The bottle, as the waste list names it. */
  into: string;
  id: string;
  cm3: number;
  because: string;
}

/** Acid that leaves silver and lead dissolved, and the sulfate of the reagent list that is least harmful. */
const NITRIC = "HNO3(aq)";
const SULFATE = "MgSO4(aq)";

/** For each bottle: acid for all ammonia that meets silver there, sulfate for all barium that may come. */
export function standsInWaste(groups: readonly Emptied[]): StandsInWaste[] {
  const bottles = Map.groupBy(
    groups.filter(({ kinds: [first] }) => first && first !== "solid"),
    bottleOf,
  );
  return [...bottles].flatMap(([into, those]) => {
    const stands = (id: string, mmol: number, because: string): StandsInWaste => {
      const strength = reagentOf(id).concentration ?? 1;
      return { into, id, cm3: tidy((BENCH_PRACTICE.standsInWaste.value * mmol) / strength), because };
    };
    const ammonia = sum(those.map((one) => one.ammonia ?? 0));
    const barium = sum(those.map((one) => one.barium));
    return [
      ...(ammonia > 0 ? [stands(NITRIC, ammonia, say.FOR_AMMONIA)] : []),
      ...(barium > 0 ? [stands(SULFATE, barium, say.FOR_BARIUM)] : []),
    ];
  });
}

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);
