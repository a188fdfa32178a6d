/** The bench a page starts from: the usual sizes of tube, and longer or wider test-tubes where a test would fill those more than half. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { TEST_TUBES } from "../constants/glassware.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { brimCapacity } from "./geometry.ts";
import { type Planned, planBench } from "./plan-bench.ts";

/**
 * One size of test-tube for the whole bench, as a school has them: the first from the usual one up in which every cold test can be shaken.
 * Where none is wide enough the usual size stays, and the plan warns.
 *
 * @param usual ids of tube sizes, as planBench takes them
 * @throws RangeError as planBench
 */
export function planUsualBench(
  planned: Planned,
  table: PredictionTable,
  usual: { testTube: string; boilingTube: string },
): BenchPlan {
  const plan = planBench(planned, table, usual);
  const cold = plan.tubes.filter(({ size }) => size.id === usual.testTube);
  const most = Math.max(0, ...cold.flatMap(({ marks }) => marks.map(({ cm3 }) => cm3)));
  const from = TEST_TUBES.findIndex(({ id }) => id === usual.testTube);
  const size = TEST_TUBES.slice(from).find((one) => brimCapacity(one) * BENCH_PRACTICE.shakenFill.value >= most);
  if (size === undefined || size.id === usual.testTube) return plan;
  return planBench(planned, table, { ...usual, testTube: size.id });
}
